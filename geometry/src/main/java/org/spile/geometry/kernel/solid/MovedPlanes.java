package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * The corners of a convex polyhedron after all its planes have moved out by the same distance.
 *
 * <p>A corner is where three planes meet and no other cuts it off. Where more than three faces meet, the planes moved out
 * need not share a point any more: the corner splits into several, with new edges between them.
 */
final class MovedPlanes {
    /**
     * A corner may move by no more than this many times the growth: so far does the mitre of an edge of 10° reach, the
     * sharpest that square-corner growth takes in plan.
     */
    private static final double FARTHEST = 1 / Math.sin(Math.toRadians(5));

    /** Planes whose normals span less than this meet nowhere near. */
    private static final double FLAT = 1e-10;

    /** How far rounding may carry the meeting of three planes whose normals span 1, in mm. */
    private static final double ROUNDING_MM = 1e-12;

    private final List<Vector3D> normals = new ArrayList<>();
    private final List<Double> offsets = new ArrayList<>();
    private final List<Vector3D> vertices;
    private final Vector3D middle;
    private final double growthMm;

    private MovedPlanes(ConvexPolyhedron core, double growthMm) {
        this.vertices = core.vertices();
        this.growthMm = growthMm;
        this.middle = vertices.stream().reduce(Vector3D.ZERO, Vector3D::add).multiply(1.0 / vertices.size());
        for (int face = 0; face < core.faces().size(); face++) {
            Vector3D normal = core.normal(face);
            double farthest = Double.NEGATIVE_INFINITY;
            for (int vertex : core.faces().get(face)) {
                farthest =
                        Math.max(farthest, vertices.get(vertex).subtract(middle).dot(normal));
            }
            normals.add(normal);
            offsets.add(farthest + growthMm);
        }
    }

    /** The corners, each once or more, in the order of the faces. */
    static List<Vector3D> corners(ConvexPolyhedron core, double growthMm) {
        return new MovedPlanes(core, growthMm).corners();
    }

    private List<Vector3D> corners() {
        List<Vector3D> corners = new ArrayList<>();
        int n = normals.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                for (int k = j + 1; k < n; k++) {
                    addMeeting(i, j, k, corners);
                }
            }
        }
        return corners;
    }

    /** Three planes meet at (d_i n_j x n_k + d_j n_k x n_i + d_k n_i x n_j) / (n_i · n_j x n_k). */
    private void addMeeting(int i, int j, int k, List<Vector3D> corners) {
        Vector3D jk = normals.get(j).cross(normals.get(k));
        double span = normals.get(i).dot(jk);
        if (Math.abs(span) < FLAT) {
            return;
        }
        Vector3D ki = normals.get(k).cross(normals.get(i));
        Vector3D ij = normals.get(i).cross(normals.get(j));
        Vector3D at = jk.multiply(offsets.get(i))
                .add(ki.multiply(offsets.get(j)))
                .add(ij.multiply(offsets.get(k)))
                .multiply(1 / span);
        // What rounding leaves open is taken in: rather a hundredth too much than a corner cut off.
        double slack = GeometryTolerance.ARITHMETIC_MM + ROUNDING_MM / Math.abs(span);
        for (int other = 0; other < normals.size(); other++) {
            if (normals.get(other).dot(at) > offsets.get(other) + slack) {
                return;
            }
        }
        corners.add(checked(at.add(middle)));
    }

    private Vector3D checked(Vector3D corner) {
        Vector3D nearest = vertices.get(0);
        for (Vector3D vertex : vertices) {
            nearest = vertex.distance(corner) < nearest.distance(corner) ? vertex : nearest;
        }
        if (nearest.distance(corner) > FARTHEST * growthMm) {
            throw new IllegalArgumentException("the corner at " + nearest + " mm is too sharp: square-corner growth by "
                    + growthMm + " mm would run out in a spike of " + nearest.distance(corner) + " mm there");
        }
        return corner;
    }
}
