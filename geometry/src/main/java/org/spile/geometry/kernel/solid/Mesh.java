package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * A body or surface of triangles, such as a drawing file gives, under a tree of bounding boxes.
 *
 * <p>A mesh that is closed, faces outwards everywhere and does not cross itself bounds a space: it has an inside, a
 * volume and sections with an area. Any other is a surface: one can measure to it, but what is inside is not known and
 * {@link #flaws()} says why. It is no {@link Solid}, as it has no convex cores that fill it. Lengths in mm. Immutable.
 */
public final class Mesh {
    /** The greatest distance within which points may be asked to be joined, in mm. */
    public static final double MOST_WELD_MM = 1;

    /** Up to so many triangles a mesh is looked at for being convex; more make its depth too dear. */
    private static final int MOST_CONVEX = 128;

    /** Thinner than this, a hull might count as flat. */
    private static final double LEAST_WIDTH_MM = 10 * GeometryTolerance.CONTACT_MM;

    private final double[] triangles;
    private final int[] corners;
    private final TriangleTree tree;
    private final List<MeshFlaw> flaws;
    private final int[] shellFirsts;
    private final int[] shellOf;
    private final boolean closed;
    private final Optional<ConvexPolyhedron> hull;
    private final Box3 bounds;

    Mesh(double[] triangles, int[] corners, TriangleTree tree, List<MeshFlaw> flaws, Collection<List<Integer>> shells) {
        this.triangles = triangles;
        this.corners = corners;
        this.tree = tree;
        this.flaws = flaws;
        this.shellFirsts = new int[shells.size()];
        this.shellOf = new int[corners.length / 3];
        int shell = 0;
        for (List<Integer> members : shells) {
            shellFirsts[shell] = members.get(0);
            for (int t : members) {
                shellOf[t] = shell;
            }
            shell++;
        }
        this.closed = flaws.stream().allMatch(flaw -> flaw.kind().effect() == MeshFlaw.Effect.NOTED);
        this.bounds = tree.bounds();
        this.hull = isConvex() ? Optional.of(ConvexPolyhedron.hull(points())) : Optional.empty();
    }

    private Mesh(Mesh from, double[] moved, List<MeshFlaw> flaws, Optional<ConvexPolyhedron> hull) {
        this.triangles = moved;
        this.corners = from.corners;
        this.tree = from.tree.over(moved);
        this.flaws = flaws;
        this.shellFirsts = from.shellFirsts;
        this.shellOf = from.shellOf;
        this.closed = from.closed;
        this.bounds = tree.bounds();
        this.hull = hull;
    }

    /**
     * Makes a mesh, or says why not. Points nearer each other than the contact tolerance are joined.
     *
     * @param points the coordinates x, y, z of each point in turn, in mm
     * @param corners three points by index a triangle, counter-clockwise seen from outside
     * @return the mesh with what keeps it from being closed; or every fault, if one makes it useless
     * @throws IllegalArgumentException if a list's length isn't a multiple of three
     */
    public static MeshResult of(double[] points, int[] corners) {
        return of(points, corners, GeometryTolerance.CONTACT_MM);
    }

    /**
     * Makes a mesh whose near points are joined, or says why not. A point within the joining distance of one read
     * before takes that one's place, so none moves farther than that.
     *
     * @param points the coordinates x, y, z of each point in turn, in mm
     * @param corners three points by index a triangle, counter-clockwise seen from outside
     * @param weldMm the joining distance, from 1e-9 to {@link #MOST_WELD_MM}, or 0 to join equal points only
     * @return the mesh with what keeps it from being closed; or every fault, if one makes it useless
     * @throws IllegalArgumentException if a list's length isn't a multiple of three or the distance out of its range
     */
    public static MeshResult of(double[] points, int[] corners, double weldMm) {
        if (points.length % 3 != 0 || corners.length % 3 != 0) {
            throw new IllegalArgumentException("a mesh takes coordinates and corners three by three and got "
                    + points.length + " and " + corners.length);
        }
        if (weldMm != 0 && !(weldMm >= GeometryTolerance.ARITHMETIC_MM && weldMm <= MOST_WELD_MM)) {
            throw new IllegalArgumentException("points are joined within 1e-9 to " + MOST_WELD_MM
                    + " mm, or 0 if they are equal, not within " + weldMm + " mm");
        }
        return MeshSurvey.of(points, corners, weldMm);
    }

    /**
     * What is wrong with the mesh: what keeps it from bounding a space, and what is worth a look.
     *
     * @return each flaw with its place: edges first, then points, crossings and shells
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
        return closed;
    }

    /**
     * The same body as a convex polyhedron, if it is one and has few enough triangles for that to be worth while.
     *
     * @return the hull; empty if the mesh isn't closed or convex, or has more than 128 triangles
     */
    public Optional<ConvexPolyhedron> convex() {
        return hull;
    }

    /** Closed, in one piece, not thin, and no corner beyond the plane of any triangle by more than rounding. */
    private boolean isConvex() {
        if (!closed || shellFirsts.length > 1 || count() > MOST_CONVEX) {
            return false;
        }
        TriangleCore lens = new TriangleCore();
        for (int t = 0; t < count(); t++) {
            lens.load(this, t);
            Vector3D normal = lens.normal();
            double beyond = reachMm(normal) - corner(t, 0).dot(normal);
            double width = reachMm(normal) + reachMm(normal.negate());
            if (beyond > GeometryTolerance.ARITHMETIC_MM || width < LEAST_WIDTH_MM) {
                return false;
            }
        }
        return true;
    }

    private List<Vector3D> points() {
        Map<Integer, Vector3D> points = new TreeMap<>();
        for (int k = 0; k < corners.length; k++) {
            points.put(corners[k], corner(k / 3, k % 3));
        }
        return List.copyOf(points.values());
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
        return Vector3D.of(
                coordinate(triangle, corner, 0), coordinate(triangle, corner, 1), coordinate(triangle, corner, 2));
    }

    /**
     * A coordinate of a corner of a triangle.
     *
     * @param triangle index from 0
     * @param corner 0, 1 or 2
     * @param axis 0 for x, 1 for y, 2 for z
     * @return mm
     */
    public double coordinate(int triangle, int corner, int axis) {
        return triangles[9 * triangle + 3 * corner + axis];
    }

    double middle(int triangle, int axis) {
        int at = 9 * triangle + axis;
        return (triangles[at] + triangles[at + 3] + triangles[at + 6]) / 3;
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
     * How many connected shells the mesh has.
     *
     * @return the count
     */
    public int shells() {
        return shellFirsts.length;
    }

    /**
     * A triangle of a shell.
     *
     * @param shell index from 0
     * @return index of its first triangle
     */
    public int shellFirst(int shell) {
        return shellFirsts[shell];
    }

    /**
     * The shell of a triangle.
     *
     * @param triangle index from 0
     * @return index of the shell, from 0
     */
    public int shellOf(int triangle) {
        return shellOf[triangle];
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
     * A triangle as a flat convex core. For many, use one {@link TriangleCore}.
     *
     * @param triangle index from 0
     * @return the core
     */
    public ConvexCore core(int triangle) {
        Vector3D a = corner(triangle, 0);
        Vector3D b = corner(triangle, 1);
        Vector3D c = corner(triangle, 2);
        List<Vector3D> sides = List.of(b.subtract(a), c.subtract(b), a.subtract(c));
        Vector3D normal = sides.get(0).cross(sides.get(1)).normalize();
        List<Vector3D> normals = new ArrayList<>(List.of(normal));
        sides.forEach(side -> normals.add(side.cross(normal)));
        return ConvexCore.sharp(List.of(a, b, c), normals, sides, 0);
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
     * How far the mesh reaches in a direction.
     *
     * @param direction unit vector
     * @return mm from the origin
     */
    public double reachMm(Vector3D direction) {
        return tree.reach(0, direction.getX(), direction.getY(), direction.getZ(), Double.NEGATIVE_INFINITY);
    }

    /**
     * The distance of a point to the surface, from either side.
     *
     * @param point in mm
     * @return mm
     */
    public double surfaceMm(Vector3D point) {
        return tree.distance(0, point.getX(), point.getY(), point.getZ(), Double.POSITIVE_INFINITY);
    }

    /**
     * On which side a point lies, by the winding number; within the contact tolerance of the surface it may count as
     * either.
     *
     * @param point in mm
     * @return the side, not known if the mesh isn't closed
     */
    public Side side(Vector3D point) {
        if (!closed) {
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
        if (!closed) {
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
        return new Mesh(this, moved, there, hull.map(body -> body.moved(move)));
    }

    @Override
    public String toString() {
        return "Mesh[" + count() + " triangles in " + bounds + (closed ? ", closed]" : ", a surface]");
    }
}
