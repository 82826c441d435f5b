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
        for (int node = 0; node < used; node++) {
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
        for (int i = first[node]; i < last[node]; i++) {
            for (int k = 0; k < 9; k++) {
                double value = triangles[9 * items[i] + k];
                nodes[box + k % 3] = Math.min(nodes[box + k % 3], value);
                nodes[box + 3 + k % 3] = Math.max(nodes[box + 3 + k % 3], value);
            }
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
     * The distance of a node's box to another box.
     *
     * @param node index, 0 for the root
     * @param box the other box
     * @return mm, 0 if they touch or overlap
     */
    public double gapTo(int node, Box3 box) {
        int i = 6 * node;
        return length(
                Math.max(nodes[i] - box.maxX(), box.minX() - nodes[i + 3]),
                Math.max(nodes[i + 1] - box.maxY(), box.minY() - nodes[i + 4]),
                Math.max(nodes[i + 2] - box.maxZ(), box.minZ() - nodes[i + 5]));
    }

    /**
     * The distance of a node's box to that of another tree's node.
     *
     * @param node index, 0 for the root
     * @param other the other tree
     * @param otherNode index in the other tree
     * @return mm, 0 if they touch or overlap
     */
    public double gapTo(int node, TriangleTree other, int otherNode) {
        int i = 6 * node;
        int j = 6 * otherNode;
        double[] o = other.nodes;
        return length(
                Math.max(nodes[i] - o[j + 3], o[j] - nodes[i + 3]),
                Math.max(nodes[i + 1] - o[j + 4], o[j + 1] - nodes[i + 4]),
                Math.max(nodes[i + 2] - o[j + 5], o[j + 2] - nodes[i + 5]));
    }

    private static double length(double dx, double dy, double dz) {
        double x = Math.max(0, dx);
        double y = Math.max(0, dy);
        double z = Math.max(0, dz);
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** The smallest box round all triangles. */
    Box3 bounds() {
        return new Box3(nodes[0], nodes[1], nodes[2], nodes[3], nodes[4], nodes[5]);
    }
}
