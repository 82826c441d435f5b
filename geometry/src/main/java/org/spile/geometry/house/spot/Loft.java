package org.spile.geometry.house.spot;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * A convex body between two rings of equally many spots, such as a box, a slab, a leg of a duct.
 *
 * <p>A point moves as the tetrahedron of the middle and three corners that it lies in: exact at the corners and wherever
 * the whole moves affinely, so for every box whose faces shift.
 */
public final class Loft implements Give {
    private static final double SQUARE_MM = 1e-9;
    private static final double TOUCH_MM = 1e-6;
    private static final double FLAT_MM2 = 1e-9;

    private final List<Spot> corners;
    private final List<Vector3D> at;
    private final List<int[]> triangles;
    private final Vector3D middle;
    private final Spot middleSpot;
    private final Vector3D[] outward;
    private final Vector3D[] across;
    private final double[] volumes;

    private Loft(List<Spot> near, List<Spot> far) {
        List<Spot> all = new ArrayList<>(near);
        all.addAll(far);
        this.corners = List.copyOf(all);
        this.at = all.stream().map(Spot::at).toList();
        this.triangles = triangles(near.size());
        Vector3D sum = Vector3D.ZERO;
        Spot spots = Spot.ORIGIN;
        for (int i = 0; i < at.size(); i++) {
            sum = sum.add(at.get(i));
            spots = spots.plus(corners.get(i));
        }
        this.middle = sum.multiply(1.0 / at.size());
        this.middleSpot = spots.times(1.0 / at.size());
        this.outward = new Vector3D[triangles.size()];
        for (int i = 0; i < outward.length; i++) {
            outward[i] = outward(triangles.get(i));
        }
        this.volumes = new double[triangles.size()];
        this.across = across(volumes);
    }

    /** For each triangle the three vectors whose products with a point, taken from the middle, are its corners' shares of the volume. */
    private Vector3D[] across(double[] volume) {
        Vector3D[] all = new Vector3D[3 * triangles.size()];
        for (int i = 0; i < triangles.size(); i++) {
            int[] triangle = triangles.get(i);
            Vector3D a = at.get(triangle[0]).subtract(middle);
            Vector3D b = at.get(triangle[1]).subtract(middle);
            Vector3D c = at.get(triangle[2]).subtract(middle);
            all[3 * i] = b.cross(c);
            all[3 * i + 1] = c.cross(a);
            all[3 * i + 2] = a.cross(b);
            volume[i] = a.dot(all[3 * i]);
        }
        return all;
    }

    /**
     * The body between two rings; corner i of one belongs to corner i of the other.
     *
     * @param near one ring, three spots or more
     * @param far the other, as many
     * @throws IllegalArgumentException if the rings differ in number or the body is flat
     */
    public static Shape between(List<Spot> near, List<Spot> far) {
        if (near.size() != far.size() || near.size() < 3) {
            throw new IllegalArgumentException("rings of " + near.size() + " and " + far.size() + " corners");
        }
        Loft loft = new Loft(near, far);
        return new Shape(Body.of(solid(loft.at)), loft);
    }

    /** An upright box. */
    public static Shape box(Span x, Span y, Span z) {
        List<Spot> bottom = List.of(
                new Spot(x.low(), y.low(), z.low()),
                new Spot(x.high(), y.low(), z.low()),
                new Spot(x.high(), y.high(), z.low()),
                new Spot(x.low(), y.high(), z.low()));
        return between(
                bottom, bottom.stream().map(spot -> spot.with(Axis.Z, z.high())).toList());
    }

    private static Solid solid(List<Vector3D> points) {
        Vector3D least = Vector3D.of(least(points, Axis.X), least(points, Axis.Y), least(points, Axis.Z));
        Vector3D most = Vector3D.of(most(points, Axis.X), most(points, Axis.Y), most(points, Axis.Z));
        return points.size() == 8 && isBox(points, least, most)
                ? Prism.box(least.getX(), least.getY(), least.getZ(), most.getX(), most.getY(), most.getZ())
                : ConvexPolyhedron.hull(points);
    }

    private static double least(List<Vector3D> points, Axis axis) {
        return points.stream().mapToDouble(axis::of).min().orElseThrow();
    }

    private static double most(List<Vector3D> points, Axis axis) {
        return points.stream().mapToDouble(axis::of).max().orElseThrow();
    }

    /** Each point must lie in a corner of the bounds, and no corner may be without one. */
    private static boolean isBox(List<Vector3D> points, Vector3D least, Vector3D most) {
        for (double x : List.of(least.getX(), most.getX())) {
            for (double y : List.of(least.getY(), most.getY())) {
                for (double z : List.of(least.getZ(), most.getZ())) {
                    Vector3D corner = Vector3D.of(x, y, z);
                    if (points.stream().noneMatch(point -> point.distance(corner) <= SQUARE_MM)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private static List<int[]> triangles(int n) {
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            all.add(new int[] {i, next, n + next});
            all.add(new int[] {i, n + next, n + i});
            if (i > 0 && i + 1 < n) {
                all.add(new int[] {0, i, i + 1});
                all.add(new int[] {n, n + i, n + i + 1});
            }
        }
        return all;
    }

    @Override
    public Spot at(Vector3D point) {
        Vector3D from = point.subtract(middle);
        double[] shares = new double[4];
        double[] best = null;
        int[] in = null;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < triangles.size(); i++) {
            share(from, i, shares);
            double least = Math.min(Math.min(shares[0], shares[1]), Math.min(shares[2], shares[3]));
            if (least > most) {
                most = least;
                best = shares.clone();
                in = triangles.get(i);
            }
        }
        if (best == null || in == null) {
            throw new IllegalStateException("a body without a tetrahedron at " + point);
        }
        Spot spot = middleSpot.times(best[0]);
        for (int k = 0; k < 3; k++) {
            if (best[k + 1] != 0) {
                spot = spot.plus(corners.get(in[k]).times(best[k + 1]));
            }
        }
        return spot.exactly(point);
    }

    /** Shares of the middle and the three corners that make up the point; not a number in a flat tetrahedron. */
    private void share(Vector3D from, int triangle, double[] shares) {
        shares[0] = 1;
        for (int k = 0; k < 3; k++) {
            shares[k + 1] = from.dot(across[3 * triangle + k]) / volumes[triangle];
            shares[0] -= shares[k + 1];
        }
    }

    @Override
    public double outsideMm(Vector3D point) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < outward.length; i++) {
            Vector3D normal = outward[i];
            if (normal != null) {
                most = Math.max(most, normal.dot(point.subtract(at.get(triangles.get(i)[0]))));
            }
        }
        return most;
    }

    /** Clips the line by the planes of all faces. */
    @Override
    public boolean meets(Vector3D from, Vector3D to) {
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < outward.length; i++) {
            Vector3D normal = outward[i];
            if (normal != null) {
                Vector3D corner = at.get(triangles.get(i)[0]);
                double a = normal.dot(from.subtract(corner));
                double b = normal.dot(to.subtract(corner));
                if (a > TOUCH_MM && b > TOUCH_MM) {
                    return false;
                }
                if (a > TOUCH_MM) {
                    enter = Math.max(enter, (a - TOUCH_MM) / (a - b));
                } else if (b > TOUCH_MM) {
                    leave = Math.min(leave, (TOUCH_MM - a) / (b - a));
                }
            }
        }
        return enter <= leave;
    }

    /** The unit normal of a triangle of the surface, away from the middle; null if it has no area. */
    private Vector3D outward(int[] triangle) {
        Vector3D a = at.get(triangle[0]);
        Vector3D normal =
                at.get(triangle[1]).subtract(a).cross(at.get(triangle[2]).subtract(a));
        if (!(normal.norm() > FLAT_MM2)) {
            return null;
        }
        Vector3D unit = normal.normalize();
        return unit.dot(a.subtract(middle)) < 0 ? unit.negate() : unit;
    }
}
