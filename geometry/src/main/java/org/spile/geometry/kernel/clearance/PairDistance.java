package org.spile.geometry.kernel.clearance;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Measures pairs of solids one after the other: one object per thread, no allocation until a {@link #gap()} is asked
 * for.
 *
 * <p>Two upright prisms go by the prism rule ({@link PrismPair}); all else by their convex cores ({@link
 * ConvexDistance} apart, {@link ConvexDepth} overlapping). Lengths in mm.
 */
public final class PairDistance {
    private final PrismPair prisms = new PrismPair();
    private final CorePair cores = new CorePair();

    private Solid a;
    private Solid b;
    private boolean upright;
    private double lowerMm;
    private double upperMm;
    private int coreA;
    private int coreB;

    /** Makes a workspace that has measured nothing yet. */
    public PairDistance() {}

    /**
     * Measures a pair.
     *
     * @param first first solid
     * @param second second solid
     */
    public void measure(Solid first, Solid second) {
        a = first;
        b = second;
        upright = first instanceof Prism && second instanceof Prism;
        if (upright) {
            prisms.measure((Prism) first, (Prism) second);
            lowerMm = prisms.lowerMm();
            upperMm = prisms.upperMm();
        } else {
            measureCores();
        }
    }

    private void measureCores() {
        List<ConvexCore> coresA = a.cores();
        List<ConvexCore> coresB = b.cores();
        lowerMm = Double.POSITIVE_INFINITY;
        upperMm = Double.POSITIVE_INFINITY;
        for (int i = 0; i < coresA.size(); i++) {
            for (int j = 0; j < coresB.size(); j++) {
                cores.measure(coresA.get(i), coresB.get(j));
                lowerMm = Math.min(lowerMm, cores.lower);
                if (cores.upper < upperMm) {
                    upperMm = cores.upper;
                    coreA = i;
                    coreB = j;
                }
            }
        }
        if (coresA.size() > 1 || coresB.size() > 1) {
            cores.measure(coresA.get(coreA), coresB.get(coreB));
            if (upperMm < -GeometryTolerance.ARITHMETIC_MM) {
                lowerMm = Math.min(lowerMm, -escapeMm());
            }
        }
    }

    /** A shift that surely ends the overlap of a solid that is not convex: the deepest pair's, if it proves free. */
    private double escapeMm() {
        double depth = -cores.lower;
        Vector3D shift = Vector3D.of(cores.nx, cores.ny, cores.nz).multiply(depth);
        PairDistance after = new PairDistance();
        double least = Double.POSITIVE_INFINITY;
        for (ConvexCore first : a.cores()) {
            for (ConvexCore second : b.moved(Move.shift(shift)).cores()) {
                after.cores.measure(first, second);
                least = Math.min(least, after.cores.lower);
            }
        }
        return least > -GeometryTolerance.CONTACT_MM / 10 ? depth : Escape.pastBounds(a.bounds(), b.bounds());
    }

    /**
     * The lower bound of the signed distance last measured.
     *
     * @return mm, negative for a depth
     */
    public double lowerMm() {
        return lowerMm;
    }

    /**
     * The upper bound of the signed distance last measured.
     *
     * @return mm, negative for a depth
     */
    public double upperMm() {
        return upperMm;
    }

    /**
     * The pair last measured, with witness points and direction.
     *
     * @return the gap, with piece indices 0
     */
    public Gap gap() {
        return upright ? prisms.gap() : cores.gap(lowerMm, upperMm);
    }
}
