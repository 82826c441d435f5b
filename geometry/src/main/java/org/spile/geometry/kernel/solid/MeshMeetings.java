package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Finds the triangles of a mesh that meet along more than a common edge, by descending its tree against itself. */
final class MeshMeetings {
    private final double[] triangles;
    private final int[] corners;
    private final int[] names;
    private final TriangleTree tree;
    private final TriangleMeeting meeting = new TriangleMeeting();
    /** Where each pair meets, by the lesser then the greater name. */
    private final Map<Integer, Map<Integer, Vector3D>> found = new TreeMap<>();

    /** Looks at the named triangles; the tree knows them by their place among the names. */
    MeshMeetings(double[] triangles, int[] corners, int[] names, TriangleTree tree) {
        this.triangles = triangles;
        this.corners = corners;
        this.names = names;
        this.tree = tree;
        within(0);
    }

    List<MeshFlaw> flaws() {
        List<MeshFlaw> flaws = new ArrayList<>();
        found.forEach((t, others) -> others.forEach(
                (other, at) -> flaws.add(new MeshFlaw(MeshFlaw.Kind.SELF_CROSSING, List.of(t, other), at))));
        return flaws;
    }

    private void within(int node) {
        int right = tree.right(node);
        if (right > 0) {
            within(node + 1);
            within(right);
            between(node + 1, right);
            return;
        }
        for (int i = tree.first(node); i < tree.last(node); i++) {
            for (int j = i + 1; j < tree.last(node); j++) {
                check(names[tree.triangle(i)], names[tree.triangle(j)]);
            }
        }
    }

    private void between(int a, int b) {
        if (tree.gapTo(a, 0, 0, 0, tree, b) > 0) {
            return;
        }
        if (tree.right(a) > 0) {
            between(a + 1, b);
            between(tree.right(a), b);
        } else if (tree.right(b) > 0) {
            between(a, b + 1);
            between(a, tree.right(b));
        } else {
            for (int i = tree.first(a); i < tree.last(a); i++) {
                for (int j = tree.first(b); j < tree.last(b); j++) {
                    check(names[tree.triangle(i)], names[tree.triangle(j)]);
                }
            }
        }
    }

    private void check(int i, int j) {
        int t = Math.min(i, j);
        int other = Math.max(i, j);
        boolean neighbours = sharedCorners(t, other) >= 2;
        if (neighbours ? meeting.fold(triangles, t, other) : meeting.meet(triangles, t, other)) {
            found.computeIfAbsent(t, key -> new TreeMap<>()).put(other, meeting.at());
        }
    }

    private int sharedCorners(int t, int other) {
        int shared = 0;
        for (int k = 0; k < 9; k++) {
            shared += corners[3 * t + k / 3] == corners[3 * other + k % 3] ? 1 : 0;
        }
        return shared;
    }
}
