package org.spile.analysis.duct;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/** Where a steadily falling or rising function crosses nothing, to the last digits that count. */
final class Roots {
    private static final double RELATIVE = 1e-14;
    private static final double ABSOLUTE = 1e-12;
    private static final double VALUE = 1e-15;

    private Roots() {}

    /**
     * The root between two bounds.
     *
     * @throws IllegalArgumentException if the function has the same sign at both
     */
    static double between(double low, double high, DoubleUnaryOperator function) {
        return new BrentSolver(RELATIVE, ABSOLUTE, VALUE).findRoot(function, low, high);
    }
}
