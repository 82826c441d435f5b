package org.spile.analysis.finding;

/** A number with its unit, as shown: 9 mm, 30 Pa. */
public record Quantity(double number, String unit) {
    /** Refuses what isn't a number; turns -0 into 0. */
    public Quantity {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("not a finite number: " + number + " " + unit);
        }
        number = number + 0.0;
    }

    /** A length. */
    public static Quantity mm(double number) {
        return new Quantity(number, "mm");
    }
}
