package org.spile.geometry.kernel.solid;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What the clearance algorithms read of a convex solid: the hull of some corners ⊕ a flat disc ⊕ a ball.
 *
 * <p>The disc stands square to an axis and makes round cylinders with exact flat ends; the ball is the rounding
 * radius. Beside the corners stand the directions that decide a depth: the normals of the corners' hull and the
 * directions of its edges, each once (opposite ones count as one). Lengths in mm. Immutable, but for the one core of a
 * {@link TriangleCore}.
 */
public final class ConvexCore {
    /** The corners about the centre, so that no digits are lost far from the origin. */
    private final double[] x;

    private final double[] y;
    private final double[] z;
    private final double centreX;
    private final double centreY;
    private final double centreZ;
    private final BoxFrame box;
    private final double axisX;
    private final double axisY;
    private final double axisZ;
    private final double discMm;
    private final double roundMm;
    private final double[] normals;
    private final double[] edges;

    private ConvexCore(
            List<Vector3D> corners,
            List<Vector3D> normals,
            List<Vector3D> edges,
            Vector3D axis,
            double discMm,
            double roundMm) {
        Vector3D centre = corners.stream().reduce(Vector3D.ZERO, Vector3D::add).multiply(1.0 / corners.size());
        this.centreX = centre.getX();
        this.centreY = centre.getY();
        this.centreZ = centre.getZ();
        int n = corners.size();
        this.x = new double[n];
        this.y = new double[n];
        this.z = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = corners.get(i).getX() - centreX;
            y[i] = corners.get(i).getY() - centreY;
            z[i] = corners.get(i).getZ() - centreZ;
        }
        this.axisX = axis.getX();
        this.axisY = axis.getY();
        this.axisZ = axis.getZ();
        this.discMm = discMm;
        this.roundMm = roundMm;
        this.normals = Directions.distinct(normals);
        this.edges = Directions.distinct(edges);
        this.box = n == 8 && this.edges.length == 9 ? BoxFrame.of(x, y, z, this.edges) : null;
    }

    private ConvexCore(ConvexCore from, Move move, double roundMm) {
        int n = from.x.length;
        this.x = new double[n];
        this.y = new double[n];
        this.z = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = move.turnedX(from.x[i], from.y[i], from.z[i]);
            y[i] = move.turnedY(from.x[i], from.y[i], from.z[i]);
            z[i] = move.turnedZ(from.x[i], from.y[i], from.z[i]);
        }
        Vector3D centre = move.apply(Vector3D.of(from.centreX, from.centreY, from.centreZ));
        this.centreX = centre.getX();
        this.centreY = centre.getY();
        this.centreZ = centre.getZ();
        this.axisX = move.turnedX(from.axisX, from.axisY, from.axisZ);
        this.axisY = move.turnedY(from.axisX, from.axisY, from.axisZ);
        this.axisZ = move.turnedZ(from.axisX, from.axisY, from.axisZ);
        this.discMm = from.discMm;
        this.roundMm = roundMm;
        this.normals = Directions.turned(from.normals, move);
        this.edges = Directions.turned(from.edges, move);
        this.box = from.box == null ? null : from.box.turned(move);
    }

    /** A sharp hull about the origin that reads the arrays as they are and goes with them when they change. */
    ConvexCore(double[] x, double[] y, double[] z, double[] normals, double[] edges) {
        this.x = x;
        this.y = y;
        this.z = z;
        this.centreX = this.centreY = this.centreZ = 0;
        this.axisX = this.axisY = 0;
        this.axisZ = 1;
        this.discMm = this.roundMm = 0;
        this.normals = normals;
        this.edges = edges;
        this.box = null;
    }

    /** The core after a rigid motion. */
    ConvexCore moved(Move move) {
        return new ConvexCore(this, move, roundMm);
    }

    /** The core with another rounding radius. */
    ConvexCore withRound(double radiusMm) {
        return new ConvexCore(this, Move.identity(), radiusMm);
    }

    /** A hull without disc. */
    static ConvexCore sharp(List<Vector3D> corners, List<Vector3D> normals, List<Vector3D> edges, double roundMm) {
        return new ConvexCore(corners, normals, edges, Vector3D.Unit.PLUS_Z, 0, roundMm);
    }

    /** A hull ⊕ disc square to a unit axis. */
    static ConvexCore withDisc(
            List<Vector3D> corners,
            List<Vector3D> normals,
            List<Vector3D> edges,
            Vector3D axis,
            double discMm,
            double roundMm) {
        return new ConvexCore(corners, normals, edges, axis, discMm, roundMm);
    }

    /**
     * How many corners.
     *
     * @return the count
     */
    public int count() {
        return x.length;
    }

    /**
     * A corner.
     *
     * @param corner index from 0
     * @return x in mm
     */
    public double x(int corner) {
        return x[corner] + centreX;
    }

    /**
     * A corner, about the {@linkplain #centreX() centre}.
     *
     * @param corner index from 0
     * @return x in mm from the centre
     */
    public double localX(int corner) {
        return x[corner];
    }

    /**
     * A place amid the corners.
     *
     * @return its x in mm
     */
    public double centreX() {
        return centreX;
    }

    /**
     * A corner.
     *
     * @param corner index from 0
     * @return y in mm
     */
    public double y(int corner) {
        return y[corner] + centreY;
    }

    /**
     * A corner, about the {@linkplain #centreY() centre}.
     *
     * @param corner index from 0
     * @return y in mm from the centre
     */
    public double localY(int corner) {
        return y[corner];
    }

    /**
     * A place amid the corners.
     *
     * @return its y in mm
     */
    public double centreY() {
        return centreY;
    }

    /**
     * A corner.
     *
     * @param corner index from 0
     * @return z in mm
     */
    public double z(int corner) {
        return z[corner] + centreZ;
    }

    /**
     * A corner, about the {@linkplain #centreZ() centre}.
     *
     * @param corner index from 0
     * @return z in mm from the centre
     */
    public double localZ(int corner) {
        return z[corner];
    }

    /**
     * A place amid the corners.
     *
     * @return its z in mm
     */
    public double centreZ() {
        return centreZ;
    }

    /**
     * The corner farthest in a direction; of equals the first.
     *
     * @param dx direction, any length
     * @param dy direction
     * @param dz direction
     * @return index of the corner
     */
    public int extreme(double dx, double dy, double dz) {
        if (box != null) {
            return box.extreme(dx, dy, dz);
        }
        int best = 0;
        double far = x[0] * dx + y[0] * dy + z[0] * dz;
        for (int i = 1; i < x.length; i++) {
            double value = x[i] * dx + y[i] * dy + z[i] * dz;
            if (value > far) {
                far = value;
                best = i;
            }
        }
        return best;
    }

    /**
     * How far the corners and the disc reach in a direction, the rounding left out.
     *
     * @param dx direction, a unit vector
     * @param dy direction
     * @param dz direction
     * @return mm from the origin
     */
    public double reach(double dx, double dy, double dz) {
        double cornerReach = localReach(dx, dy, dz) + (centreX * dx + centreY * dy + centreZ * dz);
        return cornerReach + discReach(dx, dy, dz);
    }

    /**
     * How far the corners alone reach in a direction.
     *
     * @param dx direction, a unit vector
     * @param dy direction
     * @param dz direction
     * @return mm from the centre
     */
    public double localReach(double dx, double dy, double dz) {
        if (box != null) {
            return box.reach(dx, dy, dz);
        }
        double far = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            far = Math.max(far, x[i] * dx + y[i] * dy + z[i] * dz);
        }
        return far;
    }

    /**
     * Whether the corners lie as far on one side of the centre as on the other, in every direction.
     *
     * @return true for parallelepipeds
     */
    public boolean isCentral() {
        return box != null;
    }

    /**
     * How far the disc alone reaches in a direction.
     *
     * @param dx direction, a unit vector
     * @param dy direction
     * @param dz direction
     * @return mm, 0 along the axis and the disc's radius across it
     */
    public double discReach(double dx, double dy, double dz) {
        if (discMm == 0) {
            return 0;
        }
        double along = dx * axisX + dy * axisY + dz * axisZ;
        double ox = dx - along * axisX;
        double oy = dy - along * axisY;
        double oz = dz - along * axisZ;
        return discMm * Math.sqrt(ox * ox + oy * oy + oz * oz);
    }

    /**
     * The disc's radius.
     *
     * @return mm, 0 if there is none
     */
    public double discMm() {
        return discMm;
    }

    /**
     * The disc's axis.
     *
     * @return unit vector
     */
    public Vector3D axis() {
        return Vector3D.of(axisX, axisY, axisZ);
    }

    /**
     * The disc's axis.
     *
     * @return x component
     */
    public double axisX() {
        return axisX;
    }

    /**
     * The disc's axis.
     *
     * @return y component
     */
    public double axisY() {
        return axisY;
    }

    /**
     * The disc's axis.
     *
     * @return z component
     */
    public double axisZ() {
        return axisZ;
    }

    /**
     * The rounding radius.
     *
     * @return mm
     */
    public double roundMm() {
        return roundMm;
    }

    /**
     * How many distinct face normals the hull has.
     *
     * @return the count, opposite normals counted once
     */
    public int normalCount() {
        return normals.length / 3;
    }

    /**
     * A component of a face normal.
     *
     * @param normal index from 0
     * @param axis 0 for x, 1 for y, 2 for z
     * @return component of the unit normal
     */
    public double normal(int normal, int axis) {
        return normals[3 * normal + axis];
    }

    /**
     * How many distinct edge directions the hull has.
     *
     * @return the count, opposite directions counted once
     */
    public int edgeCount() {
        return edges.length / 3;
    }

    /**
     * A component of an edge's direction.
     *
     * @param edge index from 0
     * @param axis 0 for x, 1 for y, 2 for z
     * @return component of the unit direction
     */
    public double edge(int edge, int axis) {
        return edges[3 * edge + axis];
    }
}
