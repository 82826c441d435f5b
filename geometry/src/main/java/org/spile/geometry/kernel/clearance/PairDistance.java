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
 * for; the same as plain numbers are {@link #onA}, {@link #onB} and {@link #direction}.
 *
 * <p>Two upright prisms go by the prism rule ({@link PrismPair}); all else by their convex cores ({@link
 * ConvexDistance} apart, {@link ConvexDepth} overlapping). Lengths in mm.
 */
public final class PairDistance {
    private final PrismPair prisms = new PrismPair();
    private final CorePair cores = new CorePair();

    private final Witness witness = new Witness();

    private Solid a;
    private Solid b;
    private boolean upright;
    private boolean measured;
    private boolean located;
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
        measure(first, second, false);
    }

    /**
     * Measures a pair of which one or both have moved a little since this workspace measured them last: the search goes on
     * from the corners that were nearest then, which takes about half the time.
     *
     * <p>The bounds are certified as by {@link #measure}, whatever was measured before and however far the solids have moved:
     * only the time differs. Upright prisms and solids that aren't convex
     * have nothing to go on from and are measured as by {@link #measure}.
     *
     * @param first first solid where it now is
     * @param second second solid where it now is
     */
    public void measureAgain(Solid first, Solid second) {
        measure(first, second, measured && !upright);
    }

    private void measure(Solid first, Solid second, boolean again) {
        a = first;
        b = second;
        measured = true;
        located = false;
        upright = first instanceof Prism && second instanceof Prism;
        if (upright) {
            prisms.measure((Prism) first, (Prism) second);
            lowerMm = prisms.lowerMm();
            upperMm = prisms.upperMm();
        } else if (first.isConvex() && second.isConvex()) {
            measureConvex(first.cores().get(0), second.cores().get(0), again);
        } else {
            measureCores();
        }
    }

    private void measureConvex(ConvexCore first, ConvexCore second, boolean again) {
        if (again) {
            cores.measureAgain(first, second);
        } else {
            cores.measure(first, second);
        }
        lowerMm = cores.lower;
        upperMm = cores.upper;
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
        cores.measure(coresA.get(coreA), coresB.get(coreB));
        if (upperMm < -GeometryTolerance.ARITHMETIC_MM) {
            lowerMm = Math.min(lowerMm, -escapeMm());
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
     * The witness point on the first solid: where it is nearest to the second, or deepest in it.
     *
     * @param axis 0 for x, 1 for y, 2 for z
     * @return coordinate in mm
     * @throws IllegalArgumentException if there is no such axis
     * @throws IllegalStateException if nothing has been measured
     */
    public double onA(int axis) {
        locate();
        return Witness.coordinate(axis, witness.ax, witness.ay, witness.az);
    }

    /**
     * The witness point on the second solid: where it is nearest to the first, or deepest in it.
     *
     * @param axis 0 for x, 1 for y, 2 for z
     * @return coordinate in mm
     * @throws IllegalArgumentException if there is no such axis
     * @throws IllegalStateException if nothing has been measured
     */
    public double onB(int axis) {
        locate();
        return Witness.coordinate(axis, witness.bx, witness.by, witness.bz);
    }

    /**
     * The unit vector from the first solid to the second, along which the second gets away.
     *
     * @param axis 0 for x, 1 for y, 2 for z
     * @return its coordinate
     * @throws IllegalArgumentException if there is no such axis
     * @throws IllegalStateException if nothing has been measured
     */
    public double direction(int axis) {
        locate();
        return Witness.coordinate(axis, witness.nx, witness.ny, witness.nz);
    }

    /**
     * The pair last measured, with witness points and direction.
     *
     * @return the gap, with piece indices 0
     * @throws IllegalStateException if nothing has been measured
     */
    public Gap gap() {
        locate();
        return witness.gap(lowerMm, upperMm);
    }

    /** Finds the witnesses once, when they are first asked for. */
    private void locate() {
        if (!measured) {
            throw new IllegalStateException("no pair has been measured yet");
        }
        if (!located) {
            if (upright) {
                prisms.locate(witness);
            } else {
                cores.locate(witness);
            }
            located = true;
        }
    }
}
