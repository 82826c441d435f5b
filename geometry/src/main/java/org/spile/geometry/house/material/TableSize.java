package org.spile.geometry.house.material;

/** A size as a table's bounds meet it: 0.6 mm typed in inches is 0.6 mm, on whichever side of it the last bit falls. */
final class TableSize {
    private static final double STEPS_A_MM = 1e6;

    private TableSize() {}

    /** To the nearest millionth of a millimetre. */
    static double of(double sizeMm) {
        return Math.rint(sizeMm * STEPS_A_MM) / STEPS_A_MM;
    }
}
