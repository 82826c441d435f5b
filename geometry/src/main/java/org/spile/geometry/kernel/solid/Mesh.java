package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * A body or surface of triangles, such as a drawing file gives, under a tree of bounding boxes.
 *
 * <p>A mesh that is closed, faces outwards everywhere and does not cross itself bounds a space: it has an inside, a
 * volume and sections with an area. Any other is a surface: one can measure to it, but what is inside is not known and
 * {@link #flaws()} says why. Corners are joined only if their coordinates are equal. It is no {@link Solid}, as it has
 * no convex cores that fill it. Lengths in mm. Immutable.
 */
public final class Mesh {
    private final double[] triangles;
    private final int[] corners;
    private final TriangleTree tree;
    private final List<ConvexCore> cores;
    private final List<MeshFlaw> flaws;
    private final int[] shellFirsts;
    private final Box3 bounds;

    private Mesh(double[] triangles, int[] corners, TriangleTree tree, List<MeshFlaw> flaws, int[] shellFirsts) {
        this.triangles = triangles;
        this.corners = corners;
        this.tree = tree;
        this.flaws = flaws;
        this.shellFirsts = shellFirsts;
        this.bounds = tree.bounds();
        List<ConvexCore> made = new ArrayList<>(corners.length / 3);
        for (int t = 0; t < corners.length / 3; t++) {
            made.add(core(corner(t, 0), corner(t, 1), corner(t, 2)));
        }
        this.cores = List.copyOf(made);
    }

    /** The axes that decide about a flat triangle: its normal, and those of its sides within its plane. */
    private static ConvexCore core(Vector3D a, Vector3D b, Vector3D c) {
        List<Vector3D> sides = List.of(b.subtract(a), c.subtract(b), a.subtract(c));
        Vector3D normal = sides.get(0).cross(sides.get(1)).normalize();
        List<Vector3D> normals = new ArrayList<>(List.of(normal));
        sides.forEach(side -> normals.add(side.cross(normal)));
        return ConvexCore.sharp(List.of(a, b, c), normals, sides, 0);
    }

    /**
     * Makes a mesh, or says why not.
     *
     * @param points the coordinates x, y, z of each point in turn, in mm
     * @param corners three points by index a triangle, counter-clockwise seen from outside
     * @return the mesh with what keeps it from being closed; or every fault that makes it useless
     * @throws IllegalArgumentException if a list's length isn't a multiple of three
     */
    public static MeshResult of(double[] points, int[] corners) {
        if (points.length % 3 != 0 || corners.length % 3 != 0) {
            throw new IllegalArgumentException("a mesh takes coordinates and corners three by three and got "
                    + points.length + " and " + corners.length);
        }
        MeshPoints given = new MeshPoints(points, corners);
        if (!given.flaws().isEmpty()) {
            return new MeshResult.Refused(given.flaws());
        }
        TriangleTree tree = new TriangleTree(given.triangles());
        MeshSurvey survey = new MeshSurvey(given.triangles(), given.joined(), tree);
        return new MeshResult.Sound(
                new Mesh(given.triangles(), given.joined(), tree, survey.flaws(), survey.shellFirsts()));
    }

    /**
     * What keeps the mesh from bounding a space.
     *
     * @return each flaw with its place; empty if the mesh is closed, outward and free of crossings
     */
    public List<MeshFlaw> flaws() {
        return flaws;
    }

    /**
     * Whether the mesh bounds a space.
     *
     * @return true if it is closed, faces outwards and does not cross itself
     */
    public boolean isClosed() {
        return flaws.isEmpty();
    }

    /**
     * How many triangles.
     *
     * @return the count
     */
    public int count() {
        return corners.length / 3;
    }

    /**
     * A corner of a triangle.
     *
     * @param triangle index from 0
     * @param corner 0, 1 or 2
     * @return point in mm
     */
    public Vector3D corner(int triangle, int corner) {
        int at = 9 * triangle + 3 * corner;
        return Vector3D.of(triangles[at], triangles[at + 1], triangles[at + 2]);
    }

    /**
     * Which point a corner is; corners at one place have one number.
     *
     * @param triangle index from 0
     * @param corner 0, 1 or 2
     * @return number of the point, from 0
     */
    public int point(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }

    /**
     * One triangle of each connected shell.
     *
     * @return indices, ascending
     */
    public int[] shellFirsts() {
        return shellFirsts.clone();
    }

    /**
     * The tree over the triangles.
     *
     * @return the tree
     */
    public TriangleTree tree() {
        return tree;
    }

    /**
     * A triangle as a flat convex core.
     *
     * @param triangle index from 0
     * @return the core
     */
    public ConvexCore core(int triangle) {
        return cores.get(triangle);
    }

    /**
     * The smallest axis-parallel box round the mesh.
     *
     * @return the bounds
     */
    public Box3 bounds() {
        return bounds;
    }

    /**
     * On which side a point lies, by the winding number; within the contact tolerance of the surface it may count as
     * either.
     *
     * @param point in mm
     * @return the side, not known if the mesh isn't closed
     */
    public Side side(Vector3D point) {
        if (!isClosed()) {
            return Side.NOT_KNOWN;
        }
        double winding = 0;
        for (int t = 0; t < count(); t++) {
            winding += WindingNumber.of(triangles, t, point.getX(), point.getY(), point.getZ());
        }
        return winding > 0.5 ? Side.INSIDE : Side.OUTSIDE;
    }

    /**
     * The volume of the space that the mesh bounds, by the divergence theorem.
     *
     * @return mm³; empty if the mesh isn't closed
     */
    public OptionalDouble volumeMm3() {
        if (!isClosed()) {
            return OptionalDouble.empty();
        }
        Vector3D origin = bounds.middle();
        double volume = 0;
        for (int t = 0; t < count(); t++) {
            Vector3D a = corner(t, 0).subtract(origin);
            Vector3D b = corner(t, 1).subtract(origin);
            Vector3D c = corner(t, 2).subtract(origin);
            volume += a.dot(b.cross(c)) / 6;
        }
        return OptionalDouble.of(volume);
    }

    /**
     * The mesh after a rigid motion, its tree fitted anew.
     *
     * @param move the motion
     * @return the moved mesh
     * @throws IllegalArgumentException if the place is out of range
     */
    public Mesh moved(Move move) {
        double[] moved = new double[triangles.length];
        for (int i = 0; i < moved.length; i += 3) {
            Vector3D at = move.apply(Vector3D.of(triangles[i], triangles[i + 1], triangles[i + 2]));
            moved[i] = GeometryTolerance.inRange("x", at.getX());
            moved[i + 1] = GeometryTolerance.inRange("y", at.getY());
            moved[i + 2] = GeometryTolerance.inRange("z", at.getZ());
        }
        List<MeshFlaw> there = flaws.stream()
                .map(flaw -> new MeshFlaw(flaw.kind(), flaw.triangles(), move.apply(flaw.at())))
                .toList();
        return new Mesh(moved, corners, tree.over(moved), there, shellFirsts);
    }

    @Override
    public String toString() {
        return "Mesh[" + count() + " triangles in " + bounds + (isClosed() ? ", closed]" : ", a surface]");
    }
}
