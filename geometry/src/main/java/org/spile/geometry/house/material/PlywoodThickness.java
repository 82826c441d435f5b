package org.spile.geometry.house.material;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Tolerance;

/**
 * How exact plywood's thickness is, by EN 315.
 *
 * <p>Sanded: +(0.2 + 0.03 t) / -(0.4 + 0.03 t); unsanded: +(0.8 + 0.03 t) / -(0.4 + 0.03 t), t and result in mm, at 10 ±
 * 2 % moisture.
 */
public final class PlywoodThickness {
    /** Where the rule comes from. */
    public static final String SOURCE =
            "EN 315:2000, from memory; one mill's printed sanded 12 and 18 mm agree within rounding";

    /** The rule is for boards of this thickness or more (mm); our own bound, no source. */
    public static final double LEAST_MM = 3;

    /** The rule is for boards of this thickness or less (mm); our own bound, no source. */
    public static final double MOST_MM = 50;

    private PlywoodThickness() {}

    /** For a sanded board of so many mm; nothing outside {@link #LEAST_MM} to {@link #MOST_MM}. */
    public static Optional<Tolerance> sanded(double thickMm) {
        return by(thickMm, 0.2);
    }

    /** For an unsanded board of so many mm; nothing outside {@link #LEAST_MM} to {@link #MOST_MM}. */
    public static Optional<Tolerance> unsanded(double thickMm) {
        return by(thickMm, 0.8);
    }

    private static Optional<Tolerance> by(double thickMm, double plusMm) {
        double thick = TableSize.of(thickMm);
        if (!(thick >= LEAST_MM && thick <= MOST_MM)) {
            return Optional.empty();
        }
        return Optional.of(new Tolerance(plusMm + 0.03 * thickMm, 0.4 + 0.03 * thickMm));
    }
}
