package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Where in a plane a thing must not stand: the places, in its configuration space (Lozano-Perez 1983), at which it comes
 * nearer to another than a distance.
 *
 * <p>For two convex cores these places are the cut of a plane through (fixed ⊕ −moving ⊕ ball). Every direction n gives a
 * straight bound of it: n·t ≥ gap(n) − distance for a shift t, where gap(n) is how far apart the two are along n when
 * unshifted. The face normals and edge crosses of both give every flat side exactly; what the ball and discs round off is
 * cut by tangents, each along the nearest points at the corner that stands out farthest, until no corner does by more than
 * {@link #SAGITTA_MM}. Two upright prisms on a level plane go by the prism rule: a ball at a gap in height is a smaller disc.
 *
 * <pre>
 *        ______________          moving at the dot: fixed, grown by the moving thing turned
 *      /                \        about its reference, and by the distance; all inside the
 *     |    +--------+    |       line is too near, the line itself is not
 *     |    | fixed  |    |
 *     |    +--------+    |
 *      \________________/ •
 * </pre>
 *
 * <p>What is too near is open: a distance that is just kept is kept. One object per thread.
 */
public final class TooNear {
    /** The most by which a rounded corner stands out from the true one, in mm; always on the safe side. */
    public static final double SAGITTA_MM = 0.01;

    private static final double SQUARE = 1e-12;
    private static final int MOST_CUTS = 4000;

    /** Of a corner: x, y, and whether it is known not to stand out. */
    private static final int SEEN = 2;

    private final DecidingAxes axes = new DecidingAxes();
    private final CorePair pair = new CorePair();
    private final List<double[]> ring = new ArrayList<>();
    private GlidePlane plane = GlidePlane.level(0);
    private double distanceMm;

    /** Makes a workspace. */
    public TooNear() {}

    /**
     * The places at which one solid is too near to another.
     *
     * @param moving as it stands at the place (0, 0), unlifted
     * @param fixed what it must keep away from
     * @param distanceMm how far; 0 if they may touch; negative if they may share room so deep
     * @param on the plane in which it is pushed
     * @return convex rings, counter-clockwise, whose insides are the places; none if it never comes too near
     */
    public List<List<Vector2D>> places(Solid moving, Solid fixed, double distanceMm, GlidePlane on) {
        List<List<Vector2D>> rings = new ArrayList<>();
        for (ConvexCore mine : moving.cores()) {
            for (ConvexCore other : fixed.cores()) {
                double roundMm = mine.roundMm() + other.roundMm();
                List<Vector2D> found = moving instanceof Prism a && fixed instanceof Prism b && on.isLevel()
                        ? prisms(a, b, mine, other, distanceMm + roundMm, on.atMm())
                        : cut(mine, other, distanceMm + roundMm, on, moving.bounds(), fixed.bounds());
                if (!found.isEmpty()) {
                    rings.add(found);
                }
            }
        }
        return rings;
    }

    /** At a gap in height of g a ball of radius r reaches sqrt(r² − g²) aside. */
    private List<Vector2D> prisms(Prism a, Prism b, ConvexCore mine, ConvexCore other, double reachMm, double liftMm) {
        double gap = Math.max(b.bottomMm() - a.topMm() - liftMm, a.bottomMm() + liftMm - b.topMm());
        if (gap >= reachMm - GeometryTolerance.CONTACT_MM) {
            return List.of();
        }
        double aside = gap > 0 ? Math.sqrt(reachMm * reachMm - gap * gap) : reachMm;
        double level = (b.bottomMm() + b.topMm() - a.bottomMm() - a.topMm()) / 2;
        return cut(mine, other, aside, GlidePlane.level(level), a.bounds(), b.bounds());
    }

    private List<Vector2D> cut(
            ConvexCore mine, ConvexCore other, double reachMm, GlidePlane on, Box3 moving, Box3 fixed) {
        plane = on;
        distanceMm = reachMm;
        double out = Math.max(0, reachMm) + GeometryTolerance.SHOWN_MM;
        start(
                fixed.minX() - moving.maxX() - out,
                fixed.minY() - moving.maxY() - out,
                fixed.maxX() - moving.minX() + out,
                fixed.maxY() - moving.minY() + out);
        axes.visit(mine, 0, 0, 0, other, this::bothWays);
        if (reachMm > 0 || mine.discMm() > 0 || other.discMm() > 0) {
            roundOff(mine, other);
        }
        return ring.size() < 3
                ? List.of()
                : ring.stream().map(p -> Vector2D.of(p[0], p[1])).toList();
    }

    private void start(double minX, double minY, double maxX, double maxY) {
        ring.clear();
        ring.add(new double[] {minX, minY, 0});
        ring.add(new double[] {maxX, minY, 0});
        ring.add(new double[] {maxX, maxY, 0});
        ring.add(new double[] {minX, maxY, 0});
    }

    private void bothWays(double x, double y, double z, double ahead, double behind) {
        bound(x, y, z, ahead);
        bound(-x, -y, -z, behind);
    }

    /** Keeps the places t with n·t > apart − distance, apart being how far apart the two are along n unshifted. */
    private void bound(double nx, double ny, double nz, double apart) {
        double mx = nx + nz * plane.perX();
        double my = ny + nz * plane.perY();
        double least = apart - distanceMm - nz * plane.atMm();
        if (mx * mx + my * my < SQUARE) {
            if (least > -GeometryTolerance.CONTACT_MM) {
                ring.clear();
            }
            return;
        }
        keep(mx, my, least);
    }

    private void keep(double mx, double my, double least) {
        List<double[]> kept = new ArrayList<>(ring.size() + 1);
        boolean cuts = false;
        for (int i = 0; i < ring.size(); i++) {
            double[] a = ring.get(i);
            double[] b = ring.get((i + 1) % ring.size());
            double ofA = mx * a[0] + my * a[1] - least;
            double ofB = mx * b[0] + my * b[1] - least;
            if (ofA >= 0) {
                kept.add(a);
            } else {
                cuts = true;
            }
            if (ofA < 0 != ofB < 0 && ofA != 0 && ofB != 0) {
                double part = ofA / (ofA - ofB);
                kept.add(new double[] {a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1]), 0});
            }
        }
        if (cuts) {
            ring.clear();
            ring.addAll(kept);
        }
    }

    /** Cuts off, one after the other, the corners that stand out from the rounded shape. */
    private void roundOff(ConvexCore mine, ConvexCore other) {
        int i = 0;
        for (int cuts = 0; cuts < MOST_CUTS && i < ring.size(); ) {
            double[] at = ring.get(i);
            if (at[SEEN] != 0 || !cutOff(mine, other, at)) {
                at[SEEN] = 1;
                i++;
            } else {
                cuts++;
                i = 0;
            }
        }
    }

    /** Bounds the places along the nearest points at a corner, if it stands out. */
    private boolean cutOff(ConvexCore mine, ConvexCore other, double[] at) {
        double lift = plane.at(at[0], at[1]);
        pair.measure(mine, at[0], at[1], lift, other);
        double apart = pair.lower + mine.roundMm() + other.roundMm();
        double aside = Math.hypot(pair.nx + pair.nz * plane.perX(), pair.ny + pair.nz * plane.perY());
        if (apart - distanceMm <= SAGITTA_MM * aside) {
            return false;
        }
        bound(pair.nx, pair.ny, pair.nz, apart + pair.nx * at[0] + pair.ny * at[1] + pair.nz * lift);
        return true;
    }
}
