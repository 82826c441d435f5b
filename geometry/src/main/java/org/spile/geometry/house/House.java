package org.spile.geometry.house;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A house worked out.
 *
 * <p>Immutable. A what-if is another house: {@link #with} works the same told house out again with other values at some
 * paths; nothing is written back anywhere.
 */
public interface House {
    /** Id of the trailer that is assumed round a house that names none. */
    String ASSUMED_TRAILER = "assumed-trailer";

    /** The stance of a house that names none. */
    String AS_BUILT = "as-built";

    /**
     * Works a told house out.
     *
     * @return the house, or everything that is wrong with it
     */
    static Resolved of(ToldHouse told) {
        return HouseBuilder.build(told, Map.of(), List.of());
    }

    /** What it was made from, as told: a what-if's values are not in it (see {@link #now}). */
    ToldHouse told();

    /** What its layers are made of. */
    Materials materials();

    /** A told reading as it counts in this house: with the what-if's value, if it has one there. */
    Reading now(Reading told);

    /** Every reading that the geometry rests on, by path, in the order of first use. */
    Map<String, Reading> readings();

    /** The stances' ids, home first; {@link #AS_BUILT} alone if the file names none. */
    List<String> stances();

    /**
     * The house in a stance.
     *
     * @throws IllegalArgumentException if it has no such stance
     */
    Scene scene(String stance);

    /** What moves, and the house with movers on their way. */
    Travels travels();

    /** The resolved runs, in the order of the file. */
    List<DuctRun> runs();

    /** Every known load, in the order of the file: masses, then whatever says its mass. */
    List<MassPoint> masses();

    /**
     * The same house with other values of some readings (base units), tolerances and origins kept.
     *
     * @param values by path, added to those this house already has
     * @throws IllegalArgumentException for a path that no reading of its geometry has
     */
    Resolved with(Map<String, Double> values);

    /**
     * A unit freed to be put elsewhere.
     *
     * @param unit its id
     * @return the unit, or nothing if it has no place of its own because it joins another or sits in a duct, or if the
     *     house doesn't add up without what joins it
     * @throws IllegalArgumentException if there is no such unit
     */
    Optional<FreeUnit> freed(String unit);
}
