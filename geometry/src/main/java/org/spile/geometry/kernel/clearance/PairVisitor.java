package org.spile.geometry.kernel.clearance;

/** Receives pairs of things by their indices. */
@FunctionalInterface
public interface PairVisitor {
    /**
     * Takes one pair.
     *
     * @param first the lesser index
     * @param second the greater index
     */
    void pair(int first, int second);
}
