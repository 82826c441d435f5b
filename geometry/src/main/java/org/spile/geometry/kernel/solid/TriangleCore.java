package org.spile.geometry.kernel.solid;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A lens on one triangle of a mesh after another: the same convex core, filled anew, so that a search through many
 * triangles makes no objects.
 *
 * <p>The core stands about the triangle's middle, which is told beside it. What was read of the core before it was
 * filled anew no longer holds. One object per thread; lengths in mm.
 */
public final class TriangleCore {
    private final double[] x = new double[3];
    private final double[] y = new double[3];
    private final double[] z = new double[3];
    /** The triangle's normal, and those of its sides within its plane: with the sides they decide about it. */
    private final double[] normals = new double[12];

    private final double[] edges = new double[9];
    private final ConvexCore core = new ConvexCore(x, y, z, normals, edges);
    private final double[] at = new double[3];

    /** Makes a lens that looks at nothing yet. */
    public TriangleCore() {}

    /**
     * Looks at a triangle.
     *
     * @param mesh the mesh
     * @param triangle index from 0
     */
    public void load(Mesh mesh, int triangle) {
        for (int axis = 0; axis < 3; axis++) {
            at[axis] = mesh.middle(triangle, axis);
        }
        for (int k = 0; k < 3; k++) {
            x[k] = mesh.coordinate(triangle, k, 0) - at[0];
            y[k] = mesh.coordinate(triangle, k, 1) - at[1];
            z[k] = mesh.coordinate(triangle, k, 2) - at[2];
        }
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            put(edges, k, x[next] - x[k], y[next] - y[k], z[next] - z[k]);
        }
        putCross(normals, 0, edges, 0, edges, 1);
        for (int k = 0; k < 3; k++) {
            putCross(normals, k + 1, edges, k, normals, 0);
        }
    }

    private static void putCross(double[] into, int at, double[] u, int i, double[] v, int j) {
        double ux = u[3 * i];
        double uy = u[3 * i + 1];
        double uz = u[3 * i + 2];
        double vx = v[3 * j];
        double vy = v[3 * j + 1];
        double vz = v[3 * j + 2];
        put(into, at, uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    }

    private static void put(double[] into, int at, double dx, double dy, double dz) {
        double scale = 1 / Math.sqrt(dx * dx + dy * dy + dz * dz);
        into[3 * at] = dx * scale;
        into[3 * at + 1] = dy * scale;
        into[3 * at + 2] = dz * scale;
    }

    /**
     * The triangle about its middle.
     *
     * @return the core, always the same object
     */
    public ConvexCore core() {
        return core;
    }

    /**
     * The triangle's middle.
     *
     * @return its x in mm
     */
    public double atX() {
        return at[0];
    }

    /**
     * The triangle's middle.
     *
     * @return its y in mm
     */
    public double atY() {
        return at[1];
    }

    /**
     * The triangle's middle.
     *
     * @return its z in mm
     */
    public double atZ() {
        return at[2];
    }

    /**
     * The triangle's normal.
     *
     * @return unit vector, outwards if the mesh is closed
     */
    public Vector3D normal() {
        return Vector3D.of(normals[0], normals[1], normals[2]);
    }
}
