package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * How a mesh's triangles hang together: which edges keep it from being closed, where parts touch at an edge or a point
 * only, and which triangles make one shell.
 *
 * <p>A sound edge is run through as often one way as the other. Two triangles at a sound edge are neighbours; shells and
 * the fans round a point are what neighbours join.
 */
final class MeshEdges {
    private final double[] triangles;
    private final int[] corners;
    private final int[] names;
    private final List<MeshFlaw> flaws = new ArrayList<>();
    /** For each edge, by its lesser then greater point: the triangles that run up it (t) and down it (−1 − t). */
    private final Map<Long, List<Integer>> edges = new LinkedHashMap<>();

    /** Corners that neighbours share at a point, joined: two sides of an edge join two pairs of corners. */
    private final Joined fans;

    private final Joined shells;
    private final TreeSet<Integer> faultyPoints = new TreeSet<>();

    /** Looks at the named triangles only. */
    MeshEdges(double[] triangles, int[] corners, int[] names) {
        this.triangles = triangles;
        this.corners = corners;
        this.names = names;
        this.fans = new Joined(corners.length);
        this.shells = new Joined(corners.length / 3);
        for (int t : names) {
            for (int k = 0; k < 3; k++) {
                int from = corners[3 * t + k];
                int to = corners[3 * t + (k + 1) % 3];
                if (from != to) {
                    long key = (long) Math.min(from, to) << 32 | Math.max(from, to);
                    edges.computeIfAbsent(key, e -> new ArrayList<>(2)).add(from < to ? t : -1 - t);
                }
            }
        }
        edges.forEach(this::checkEdge);
        checkFans();
    }

    List<MeshFlaw> flaws() {
        return flaws;
    }

    /** The triangles of each shell, by its first one. */
    Map<Integer, List<Integer>> shells() {
        Map<Integer, List<Integer>> members = new TreeMap<>();
        for (int t : names) {
            members.computeIfAbsent(shells.root(t), root -> new ArrayList<>()).add(t);
        }
        return members;
    }

    private static int triangle(int use) {
        return use >= 0 ? use : -1 - use;
    }

    private void checkEdge(long key, List<Integer> uses) {
        int low = (int) (key >> 32);
        int high = (int) key;
        long up = uses.stream().filter(use -> use >= 0).count();
        boolean balanced = 2 * up == uses.size();
        if (uses.size() == 2) {
            int t = triangle(uses.get(0));
            int other = triangle(uses.get(1));
            shells.join(t, other);
            fans.join(cornerAt(t, low), cornerAt(other, low));
            fans.join(cornerAt(t, high), cornerAt(other, high));
        }
        if (balanced && uses.size() == 2) {
            return;
        }
        List<Integer> concerned = uses.stream().map(MeshEdges::triangle).toList();
        faultyPoints.addAll(List.of(low, high));
        int first = concerned.get(0);
        Vector3D middle =
                corner(cornerAt(first, low)).add(corner(cornerAt(first, high))).multiply(0.5);
        flaws.add(new MeshFlaw(kind(balanced, uses.size()), concerned, middle));
    }

    private static MeshFlaw.Kind kind(boolean balanced, int uses) {
        if (balanced) {
            return MeshFlaw.Kind.TOUCHING_EDGE;
        }
        return switch (uses) {
            case 1 -> MeshFlaw.Kind.OPEN_EDGE;
            case 2 -> MeshFlaw.Kind.TURNED_NEIGHBOUR;
            default -> MeshFlaw.Kind.CROWDED_EDGE;
        };
    }

    private int cornerAt(int t, int point) {
        int k = 3 * t;
        while (corners[k] != point) {
            k++;
        }
        return k;
    }

    private Vector3D corner(int k) {
        return Vector3D.of(triangles[3 * k], triangles[3 * k + 1], triangles[3 * k + 2]);
    }

    /** Points at which more than one fan of triangles meets, though every edge there is sound. */
    private void checkFans() {
        Map<Integer, TreeSet<Integer>> roots = new TreeMap<>();
        for (int t : names) {
            for (int k = 3 * t; k < 3 * t + 3; k++) {
                roots.computeIfAbsent(corners[k], point -> new TreeSet<>()).add(fans.root(k));
            }
        }
        roots.forEach((point, found) -> {
            if (found.size() > 1 && !faultyPoints.contains(point)) {
                List<Integer> one = found.stream().map(k -> k / 3).toList();
                flaws.add(new MeshFlaw(MeshFlaw.Kind.BOW_TIE, one, corner(found.first())));
            }
        });
    }

    /** Sets of numbers that are joined two by two (union by least number, with path halving; Tarjan 1975). */
    private static final class Joined {
        private final int[] parent;

        Joined(int count) {
            parent = new int[count];
            Arrays.setAll(parent, i -> i);
        }

        int root(int member) {
            int root = member;
            while (parent[root] != root) {
                parent[root] = parent[parent[root]];
                root = parent[root];
            }
            return root;
        }

        void join(int one, int other) {
            int a = root(one);
            int b = root(other);
            parent[Math.max(a, b)] = Math.min(a, b);
        }
    }
}
