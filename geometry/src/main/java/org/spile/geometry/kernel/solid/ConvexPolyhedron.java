package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.Footprint;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * A convex polyhedron with flat faces, each a loop of vertices counter-clockwise seen from outside.
 *
 * <p>Faces within the contact tolerance of one plane are one face. A rounding radius, if any, grows the whole. Lengths
 * in mm. Immutable.
 */
public final class ConvexPolyhedron implements Solid {
    private final List<Vector3D> vertices;
    private final List<List<Integer>> faces;
    private final double roundMm;
    private final ConvexCore core;
    private final Box3 bounds;

    private ConvexPolyhedron(List<Vector3D> vertices, List<List<Integer>> faces, ConvexCore core) {
        this.vertices = List.copyOf(vertices);
        this.faces = faces;
        this.roundMm = core.roundMm();
        this.core = core;
        this.bounds = new Box3(
                -reach(-1, 0, 0), -reach(0, -1, 0), -reach(0, 0, -1), reach(1, 0, 0), reach(0, 1, 0), reach(0, 0, 1));
    }

    private static ConvexPolyhedron of(List<Vector3D> vertices, List<List<Integer>> faces, double roundMm) {
        List<Vector3D> normals = new ArrayList<>();
        List<Vector3D> edges = new ArrayList<>();
        for (List<Integer> face : faces) {
            normals.add(areaVector(vertices, face));
            for (int i = 0; i < face.size(); i++) {
                int from = face.get(i);
                int to = face.get((i + 1) % face.size());
                if (from < to) {
                    edges.add(vertices.get(to).subtract(vertices.get(from)));
                }
            }
        }
        return new ConvexPolyhedron(vertices, faces, ConvexCore.sharp(vertices, normals, edges, roundMm));
    }

    private double reach(double dx, double dy, double dz) {
        return core.reach(dx, dy, dz) + roundMm;
    }

    /**
     * The convex hull of points; points within the contact tolerance of each other count as one.
     *
     * @param points any points in mm
     * @return the hull
     * @throws IllegalArgumentException if the points lie within the contact tolerance of a plane
     */
    public static ConvexPolyhedron hull(Collection<Vector3D> points) {
        CoplanarFaces hull = ConvexHull.of(points);
        return of(hull.vertices(), hull.faces(), 0);
    }

    /**
     * The hull of two plane sections, such as the ends of a duct piece.
     *
     * @param sectionA corners of one section in mm
     * @param sectionB corners of the other section in mm
     * @return the hull of both
     * @throws IllegalArgumentException if all points lie within the contact tolerance of a plane
     */
    public static ConvexPolyhedron loft(List<Vector3D> sectionA, List<Vector3D> sectionB) {
        List<Vector3D> points = new ArrayList<>(sectionA);
        points.addAll(sectionB);
        return hull(points);
    }

    /** A convex upright prism without plan radius, with its faces as they are. */
    static ConvexPolyhedron of(Prism prism) {
        Footprint plan = prism.footprint();
        int n = plan.cornerCount();
        List<Integer> bottom = new ArrayList<>();
        List<Integer> top = new ArrayList<>();
        List<List<Integer>> faces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            bottom.add(n - 1 - i);
            top.add(n + i);
            faces.add(List.of(i, next, n + next, n + i));
        }
        faces.add(List.copyOf(bottom));
        faces.add(List.copyOf(top));
        return of(Prism.corners(plan, prism.bottomMm(), prism.topMm()), List.copyOf(faces), prism.roundMm());
    }

    /**
     * The vertices.
     *
     * @return points in mm
     */
    public List<Vector3D> vertices() {
        return vertices;
    }

    /**
     * The faces as loops of vertex indices, counter-clockwise seen from outside.
     *
     * @return one list of indices a face
     */
    public List<List<Integer>> faces() {
        return faces;
    }

    /**
     * The outward normal of a face.
     *
     * @param face index from 0
     * @return unit vector
     */
    public Vector3D.Unit normal(int face) {
        return areaVector(vertices, faces.get(face)).normalize();
    }

    /**
     * The volume of the core, by the divergence theorem.
     *
     * @return mm³, rounding left out
     */
    public double volumeMm3() {
        Vector3D origin = vertices.get(0);
        double volume = 0;
        for (List<Integer> face : faces) {
            volume += areaVector(vertices, face).dot(vertices.get(face.get(0)).subtract(origin)) / 3;
        }
        return volume;
    }

    @Override
    public Box3 bounds() {
        return bounds;
    }

    @Override
    public double roundMm() {
        return roundMm;
    }

    @Override
    public ConvexPolyhedron rounded(double growthMm) {
        double radius = roundMm + GeometryTolerance.notNegative("growth", growthMm);
        return new ConvexPolyhedron(vertices, faces, core.withRound(GeometryTolerance.inRange("rounding", radius)));
    }

    @Override
    public ConvexPolyhedron grownSquare(double growthMm) {
        double growth = GeometryTolerance.notNegative("growth", growthMm);
        return growth == 0 ? this : hull(MovedPlanes.corners(this, growth)).rounded(roundMm);
    }

    @Override
    public boolean isConvex() {
        return true;
    }

    @Override
    public List<ConvexCore> cores() {
        return List.of(core);
    }

    @Override
    public ConvexPolyhedron moved(Move move) {
        List<Vector3D> moved = new ArrayList<>(vertices.size());
        vertices.forEach(vertex -> moved.add(move.apply(vertex)));
        return new ConvexPolyhedron(moved, faces, core.moved(move));
    }

    /** The face's area as a vector along its outward normal (Newell's sums, about the first corner). */
    private static Vector3D areaVector(List<Vector3D> vertices, List<Integer> face) {
        Vector3D first = vertices.get(face.get(0));
        Vector3D sum = Vector3D.ZERO;
        for (int i = 1; i + 1 < face.size(); i++) {
            Vector3D a = vertices.get(face.get(i)).subtract(first);
            Vector3D b = vertices.get(face.get(i + 1)).subtract(first);
            sum = sum.add(a.cross(b));
        }
        return sum.multiply(0.5);
    }

    @Override
    public String toString() {
        return "ConvexPolyhedron[" + vertices + ", rounded " + roundMm + " mm]";
    }
}
