package org.spile.geometry.kernel.clearance;

/** The clearance demanded between a moving and a fixed body. */
@FunctionalInterface
public interface PairMargin {
    /**
     * The demand for one pair.
     *
     * @param moving index of the moving body
     * @param fixed index of the fixed body
     * @return clearance in mm, not negative; {@link Double#NEGATIVE_INFINITY} leaves the pair out
     */
    double demandedMm(int moving, int fixed);
}
