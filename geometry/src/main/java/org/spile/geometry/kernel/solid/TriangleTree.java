package org.spile.geometry.kernel.solid;

import java.util.Arrays;
import java.util.Comparator;

/**
 * A tree of bounding boxes over triangles, in flat arrays.
 *
 * <p>Each node is split at the median of the triangles' middles along its longest side; a leaf holds at most four. Nodes
 * stand in preorder: the left child follows its parent. Same triangles, same tree. Immutable; lengths in mm.
 */
public final class TriangleTree {
    private static final int MOST_IN_LEAF = 4;

    /** Nine numbers a triangle. */
    private final double[] triangles;

    private final int[] items;
    /** Six numbers a node, least x y z then greatest. */
    private final double[] nodes;

    private final int[] right;
    private final int[] first;
    private final int[] last;
    private int used;

    TriangleTree(double[] triangles) {
        this.triangles = triangles;
        int count = triangles.length / 9;
        Integer[] order = new Integer[count];
        Arrays.setAll(order, i -> i);
        nodes = new double[6 * count];
        right = new int[count];
        first = new int[count];
        last = new int[count];
        items = new int[count];
        build(0, count, order);
    }

    /** The same tree over the same triangles elsewhere. */
    private TriangleTree(TriangleTree from, double[] triangles) {
        this.triangles = triangles;
        items = from.items;
        right = from.right;
        first = from.first;
        last = from.last;
        used = from.used;
        nodes = new double[from.nodes.length];
        for (int node = used - 1; node >= 0; node--) {
            enclose(node);
        }
    }

    TriangleTree over(double[] moved) {
        return new TriangleTree(this, moved);
    }

    private int build(int from, int to, Integer[] order) {
        int node = used++;
        first[node] = from;
        last[node] = to;
        for (int i = from; i < to; i++) {
            items[i] = order[i];
        }
        enclose(node);
        if (to - from > MOST_IN_LEAF) {
            int axis = longestSide(node);
            Arrays.sort(
                    order,
                    from,
                    to,
                    Comparator.<Integer>comparingDouble(t -> middle(t, axis)).thenComparingInt(t -> t));
            int half = (from + to) >>> 1;
            build(from, half, order);
            right[node] = build(half, to, order);
        }
        return node;
    }

    private void enclose(int node) {
        int box = 6 * node;
        Arrays.fill(nodes, box, box + 3, Double.POSITIVE_INFINITY);
        Arrays.fill(nodes, box + 3, box + 6, Double.NEGATIVE_INFINITY);
        if (right[node] > 0) {
            stretch(box, nodes, 6 * (node + 1), 6);
            stretch(box, nodes, 6 * right[node], 6);
            return;
        }
        for (int i = first[node]; i < last[node]; i++) {
            stretch(box, triangles, 9 * items[i], 9);
        }
    }

    /** Makes a node's box hold further points. */
    private void stretch(int box, double[] points, int from, int count) {
        for (int k = 0; k < count; k++) {
            double value = points[from + k];
            nodes[box + k % 3] = Math.min(nodes[box + k % 3], value);
            nodes[box + 3 + k % 3] = Math.max(nodes[box + 3 + k % 3], value);
        }
    }

    private int longestSide(int node) {
        int longest = 0;
        for (int k = 1; k < 3; k++) {
            if (side(node, k) > side(node, longest)) {
                longest = k;
            }
        }
        return longest;
    }

    private double side(int node, int axis) {
        return nodes[6 * node + 3 + axis] - nodes[6 * node + axis];
    }

    private double middle(int triangle, int axis) {
        int at = 9 * triangle + axis;
        return triangles[at] + triangles[at + 3] + triangles[at + 6];
    }

    /**
     * The right child of a node; the left one is the next node.
     *
     * @param node index, 0 for the root
     * @return index of the right child, 0 for a leaf
     */
    public int right(int node) {
        return right[node];
    }

    /**
     * Where a node's triangles begin in the tree's order.
     *
     * @param node index, 0 for the root
     * @return place of the first
     */
    public int first(int node) {
        return first[node];
    }

    /**
     * Where a node's triangles end in the tree's order.
     *
     * @param node index, 0 for the root
     * @return place after the last
     */
    public int last(int node) {
        return last[node];
    }

    /**
     * The triangle at a place of the tree's order.
     *
     * @param place from 0
     * @return index of the triangle
     */
    public int triangle(int place) {
        return items[place];
    }

    /**
     * The distance of a node's box, shifted, to another box.
     *
     * @param node index, 0 for the root
     * @param dx shift in mm
     * @param dy shift in mm
     * @param dz shift in mm
     * @param box the other box
     * @return mm, 0 if they touch or overlap
     */
    public double gapTo(int node, double dx, double dy, double dz, Box3 box) {
        int i = 6 * node;
        return length(
                Math.max(nodes[i] + dx - box.maxX(), box.minX() - dx - nodes[i + 3]),
                Math.max(nodes[i + 1] + dy - box.maxY(), box.minY() - dy - nodes[i + 4]),
                Math.max(nodes[i + 2] + dz - box.maxZ(), box.minZ() - dz - nodes[i + 5]));
    }

    /**
     * The distance of a node's box, shifted, to that of another tree's node.
     *
     * @param node index, 0 for the root
     * @param dx shift in mm
     * @param dy shift in mm
     * @param dz shift in mm
     * @param other the other tree
     * @param otherNode index in the other tree
     * @return mm, 0 if they touch or overlap
     */
    public double gapTo(int node, double dx, double dy, double dz, TriangleTree other, int otherNode) {
        int i = 6 * node;
        int j = 6 * otherNode;
        double[] o = other.nodes;
        return length(
                Math.max(nodes[i] + dx - o[j + 3], o[j] - dx - nodes[i + 3]),
                Math.max(nodes[i + 1] + dy - o[j + 4], o[j + 1] - dy - nodes[i + 4]),
                Math.max(nodes[i + 2] + dz - o[j + 5], o[j + 2] - dz - nodes[i + 5]));
    }

    private double gapTo(int node, double x, double y, double z) {
        int i = 6 * node;
        return length(
                Math.max(nodes[i] - x, x - nodes[i + 3]),
                Math.max(nodes[i + 1] - y, y - nodes[i + 4]),
                Math.max(nodes[i + 2] - z, z - nodes[i + 5]));
    }

    private static double length(double dx, double dy, double dz) {
        double x = Math.max(0, dx);
        double y = Math.max(0, dy);
        double z = Math.max(0, dz);
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * Whether a node's box meets a plane.
     *
     * @param node index, 0 for the root
     * @param nx the plane's unit normal
     * @param ny the normal
     * @param nz the normal
     * @param offMm the plane's distance from the origin along the normal
     * @param slackMm how near the plane counts as meeting it
     * @return whether the box reaches to both sides of the plane or touches it
     */
    public boolean meetsPlane(int node, double nx, double ny, double nz, double offMm, double slackMm) {
        return reach(node, nx, ny, nz) >= offMm - slackMm && -reach(node, -nx, -ny, -nz) <= offMm + slackMm;
    }

    /** How far a node's box reaches in a direction. */
    private double reach(int node, double x, double y, double z) {
        int i = 6 * node;
        return x * nodes[x > 0 ? i + 3 : i] + y * nodes[y > 0 ? i + 4 : i + 1] + z * nodes[z > 0 ? i + 5 : i + 2];
    }

    /** How far the triangles reach in a direction, if farther than what is known. */
    double reach(int node, double x, double y, double z, double known) {
        if (reach(node, x, y, z) <= known) {
            return known;
        }
        double far = known;
        if (right[node] > 0) {
            boolean rightFirst = reach(right[node], x, y, z) > reach(node + 1, x, y, z);
            far = reach(rightFirst ? right[node] : node + 1, x, y, z, far);
            return reach(rightFirst ? node + 1 : right[node], x, y, z, far);
        }
        for (int i = first[node]; i < last[node]; i++) {
            for (int k = 9 * items[i]; k < 9 * items[i] + 9; k += 3) {
                far = Math.max(far, x * triangles[k] + y * triangles[k + 1] + z * triangles[k + 2]);
            }
        }
        return far;
    }

    /** The distance of a point to the nearest triangle, if less than what is known. */
    double distance(int node, double x, double y, double z, double known) {
        if (gapTo(node, x, y, z) >= known) {
            return known;
        }
        double near = known;
        if (right[node] > 0) {
            boolean rightFirst = gapTo(right[node], x, y, z) < gapTo(node + 1, x, y, z);
            near = distance(rightFirst ? right[node] : node + 1, x, y, z, near);
            return distance(rightFirst ? node + 1 : right[node], x, y, z, near);
        }
        for (int i = first[node]; i < last[node]; i++) {
            near = Math.min(near, NearPoint.distance(triangles, items[i], x, y, z));
        }
        return near;
    }

    /** The smallest box round all triangles. */
    Box3 bounds() {
        return new Box3(nodes[0], nodes[1], nodes[2], nodes[3], nodes[4], nodes[5]);
    }
}
