package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Finds out whether triangles bound a space: every edge run through as often one way as the other, no two triangles
 * meeting in more than a common edge, every shell facing away from the space.
 */
final class MeshSurvey {
    private final double[] triangles;
    private final int[] corners;
    private final TriangleTree tree;
    private final List<MeshFlaw> flaws = new ArrayList<>();
    /** For each edge, by its lesser then greater corner: the triangles that run up it (t) and down it (−1 − t). */
    private final Map<Long, List<Integer>> edges = new LinkedHashMap<>();

    private final int[] shell;

    MeshSurvey(double[] triangles, int[] corners, TriangleTree tree) {
        this.triangles = triangles;
        this.corners = corners;
        this.tree = tree;
        this.shell = new int[corners.length / 3];
        Arrays.setAll(shell, t -> t);
        for (int t = 0; t < shell.length; t++) {
            for (int k = 0; k < 3; k++) {
                int from = corners[3 * t + k];
                int to = corners[3 * t + (k + 1) % 3];
                long key = (long) Math.min(from, to) << 32 | Math.max(from, to);
                edges.computeIfAbsent(key, e -> new ArrayList<>()).add(from < to ? t : -1 - t);
            }
        }
        joinShells();
        edges.forEach(this::checkEdge);
        checkMeetings(0);
        if (flaws.isEmpty()) {
            checkShells();
        }
    }

    List<MeshFlaw> flaws() {
        return List.copyOf(flaws);
    }

    /** One triangle of each shell. */
    int[] shellFirsts() {
        int[] firsts = new int[shell.length];
        int count = 0;
        for (int t = 0; t < shell.length; t++) {
            if (rootOf(t) == t) {
                firsts[count++] = t;
            }
        }
        return Arrays.copyOf(firsts, count);
    }

    private void joinShells() {
        for (List<Integer> uses : edges.values()) {
            int root = rootOf(triangle(uses.get(0)));
            for (int use : uses) {
                int other = rootOf(triangle(use));
                shell[Math.max(root, other)] = Math.min(root, other);
                root = Math.min(root, other);
            }
        }
    }

    private int rootOf(int triangle) {
        int root = triangle;
        while (shell[root] != root) {
            shell[root] = shell[shell[root]];
            root = shell[root];
        }
        return root;
    }

    private static int triangle(int use) {
        return use >= 0 ? use : -1 - use;
    }

    private void checkEdge(long key, List<Integer> uses) {
        long up = uses.stream().filter(use -> use >= 0).count();
        if (2 * up == uses.size()) {
            return;
        }
        MeshFlaw.Kind kind = uses.size() == 2 ? MeshFlaw.Kind.TURNED_NEIGHBOUR : MeshFlaw.Kind.OPEN_EDGE;
        List<Integer> concerned = uses.stream().map(MeshSurvey::triangle).toList();
        int t = concerned.get(0);
        Vector3D middle = Vector3D.ZERO;
        for (int k = 0; k < 3; k++) {
            if (corners[3 * t + k] == (int) (key >> 32) || corners[3 * t + k] == (int) key) {
                middle = middle.add(corner(t, k).multiply(0.5));
            }
        }
        flaws.add(new MeshFlaw(kind, concerned, middle));
    }

    private Vector3D corner(int t, int k) {
        return Vector3D.of(triangles[9 * t + 3 * k], triangles[9 * t + 3 * k + 1], triangles[9 * t + 3 * k + 2]);
    }

    // ---- meeting itself -----------------------------------------------------------------------------------------

    private void checkMeetings(int root) {
        TriangleMeeting meeting = new TriangleMeeting();
        Map<Integer, List<Integer>> found = new TreeMap<>();
        within(root, meeting, found);
        found.forEach((t, others) -> others.stream()
                .sorted()
                .forEach(other ->
                        flaws.add(new MeshFlaw(MeshFlaw.Kind.SELF_CROSSING, List.of(t, other), between(t, other)))));
    }

    /** The middle of what the two triangles' boxes share, near where they meet. */
    private Vector3D between(int t, int other) {
        double[] middle = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double low = Math.max(extent(t, axis, false), extent(other, axis, false));
            double high = Math.min(extent(t, axis, true), extent(other, axis, true));
            middle[axis] = (low + high) / 2;
        }
        return Vector3D.of(middle);
    }

    private double extent(int t, int axis, boolean greatest) {
        double a = triangles[9 * t + axis];
        double b = triangles[9 * t + 3 + axis];
        double c = triangles[9 * t + 6 + axis];
        return greatest ? Math.max(a, Math.max(b, c)) : Math.min(a, Math.min(b, c));
    }

    private void within(int node, TriangleMeeting meeting, Map<Integer, List<Integer>> found) {
        if (tree.right(node) > 0) {
            within(node + 1, meeting, found);
            within(tree.right(node), meeting, found);
            between(node + 1, tree.right(node), meeting, found);
            return;
        }
        for (int i = tree.first(node); i < tree.last(node); i++) {
            for (int j = i + 1; j < tree.last(node); j++) {
                checkPair(tree.triangle(i), tree.triangle(j), meeting, found);
            }
        }
    }

    private void between(int a, int b, TriangleMeeting meeting, Map<Integer, List<Integer>> found) {
        if (tree.gapTo(a, tree, b) > 0) {
            return;
        }
        if (tree.right(a) > 0) {
            between(a + 1, b, meeting, found);
            between(tree.right(a), b, meeting, found);
        } else if (tree.right(b) > 0) {
            between(a, b + 1, meeting, found);
            between(a, tree.right(b), meeting, found);
        } else {
            for (int i = tree.first(a); i < tree.last(a); i++) {
                for (int j = tree.first(b); j < tree.last(b); j++) {
                    checkPair(tree.triangle(i), tree.triangle(j), meeting, found);
                }
            }
        }
    }

    private void checkPair(int i, int j, TriangleMeeting meeting, Map<Integer, List<Integer>> found) {
        int t = Math.min(i, j);
        int other = Math.max(i, j);
        boolean neighbours = sharedCorners(t, other) >= 2;
        if (neighbours ? meeting.fold(triangles, t, other) : meeting.meet(triangles, t, other)) {
            found.computeIfAbsent(t, key -> new ArrayList<>()).add(other);
        }
    }

    private int sharedCorners(int t, int other) {
        int shared = 0;
        for (int k = 0; k < 9; k++) {
            shared += corners[3 * t + k / 3] == corners[3 * other + k % 3] ? 1 : 0;
        }
        return shared;
    }

    // ---- facing -------------------------------------------------------------------------------------------------

    /** Seen from the other shells alone, a shell stands outside and faces outwards, or inside and faces inwards. */
    private void checkShells() {
        for (int root : shellFirsts()) {
            Vector3D at = corner(root, 0);
            double volume = 0;
            double winding = 0;
            for (int t = 0; t < shell.length; t++) {
                if (rootOf(t) == root) {
                    Vector3D a = corner(t, 0).subtract(at);
                    volume += a.dot(corner(t, 1).subtract(at).cross(corner(t, 2).subtract(at)));
                } else {
                    winding += WindingNumber.of(triangles, t, at.getX(), at.getY(), at.getZ());
                }
            }
            long round = Math.round(winding);
            boolean faces = (round == 0 && volume > 0) || (round == 1 && volume < 0);
            if (!faces) {
                Vector3D middle = at.add(corner(root, 1)).add(corner(root, 2)).multiply(1.0 / 3);
                flaws.add(new MeshFlaw(MeshFlaw.Kind.INSIDE_OUT, List.of(root), middle));
            }
        }
    }
}
