package org.spile.geometry.house.material;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Tolerance;

/**
 * What a layer is made of. Each value is a reading at its path in the house file ({@code materials.pir.conducts}), typed
 * there or, with {@link Origin#DEFAULT}, shipped.
 *
 * @param id as layers name it
 * @param title what people call it
 * @param conducts thermal conductivity (W/mK)
 * @param vapour vapour resistance factor; absent where not known, and where {@code tight}
 * @param tight whether no vapour gets through, so that no factor holds
 * @param density kg/m3
 * @param rough absolute roughness of its face to the air (mm)
 * @param emits emissivity of its face, 0..1
 * @param thickness how exact its thickness is if the house doesn't say
 * @param tolerance how exact its thickness is, as the house's own words have it
 * @param movement how it gives and grows
 * @param source where the shipped values come from; empty if none is shipped
 */
public record Material(
        String id,
        String title,
        Optional<Reading> conducts,
        Optional<Reading> vapour,
        boolean tight,
        Optional<Reading> density,
        Optional<Reading> rough,
        Optional<Reading> emits,
        ThicknessRule thickness,
        Optional<Tolerance> tolerance,
        Movement movement,
        String source) {

    /** What conducts less than this (W/mK) is insulation; our own bound, no source: it parts foams from woods. */
    public static final double INSULATES_BELOW = 0.1;

    /** Whether it is insulation rather than something that holds a shape; what conducts unknown is not. */
    public boolean insulates() {
        return conducts.map(reading -> reading.value() < INSULATES_BELOW).orElse(false);
    }

    /**
     * The thickness as it should be reckoned with: a typed tolerance stays, else the house's own, else the rule's, else
     * none is claimed.
     *
     * @param typed a thickness (mm)
     */
    public Reading reckoned(Reading typed) {
        if (typed.toleranceTyped()) {
            return typed;
        }
        return tolerance
                .or(() -> thickness.of(typed.value()))
                .map(found -> typed.withTolerance(found.plus(), Math.min(found.minus(), typed.value())))
                .orElse(typed);
    }

    /**
     * How many of some layers, from the air outwards, lie within a size taken over the wall: up to the outermost one that
     * isn't insulation; all of them if all are.
     *
     * @param fromInside the layers' materials
     */
    public static int withinWall(List<Material> fromInside) {
        for (int i = fromInside.size(); i > 0; i--) {
            if (!fromInside.get(i - 1).insulates()) {
                return i;
            }
        }
        return fromInside.size();
    }
}
