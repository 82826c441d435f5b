package org.spile.geometry.house.material;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Tolerance;

/**
 * How exact the thickness and width of structural timber are, by EN 336, at 20 % moisture.
 *
 * <p>Class 1 (sawn): -1/+3 up to 100 mm, -2/+4 above; class 2 (planed): ±1 up to 100 mm, ±1.5 above.
 */
public final class SawnTimber {
    /** Where the rule comes from. */
    public static final String SOURCE = "EN 336, as told in a timber association's knowledge sheet on it";

    /** Larger sections than this (mm) are not sawn timber; our own bound, no source. */
    public static final double MOST_MM = 300;

    private static final double STEP_MM = 100;

    private SawnTimber() {}

    /** Tolerance class 1 for a size in mm; nothing for none or above {@link #MOST_MM}. */
    public static Optional<Tolerance> sawn(double sizeMm) {
        return by(sizeMm, new Tolerance(3, 1), new Tolerance(4, 2));
    }

    /** Tolerance class 2 for a size in mm; nothing for none or above {@link #MOST_MM}. */
    public static Optional<Tolerance> planed(double sizeMm) {
        return by(sizeMm, new Tolerance(1, 1), new Tolerance(1.5, 1.5));
    }

    private static Optional<Tolerance> by(double sizeMm, Tolerance small, Tolerance large) {
        double size = TableSize.of(sizeMm);
        if (!(size > 0 && size <= MOST_MM)) {
            return Optional.empty();
        }
        return Optional.of(size <= STEP_MM ? small : large);
    }
}
