package org.spile.geometry.house;

import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldHouse;

/**
 * A house worked out.
 *
 * <p>Immutable. A what-if is another house: {@link #with} works the same told house out again with other values at some
 * paths; nothing is written back anywhere.
 */
public interface House {
    /** What it was made from. */
    ToldHouse told();

    /** The stances' ids, home first; {@code as-built} alone if the file names none. */
    List<String> stances();

    /** The house in a stance. */
    Scene scene(String stance);

    /** The resolved runs, in the order of the file. */
    List<org.spile.geometry.house.duct.DuctRun> runs();

    /**
     * The same house with other values of some readings (base units), tolerances and origins kept.
     *
     * @param values by path; a path that no reading of this house has is refused
     * @throws IllegalArgumentException for an unknown path
     */
    Resolved with(Map<String, Double> values);
}
