package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Makes a mesh of points and corners, and finds everything that is wrong with it on the way. */
final class MeshSurvey {
    private MeshSurvey() {}

    static MeshResult of(double[] points, int[] corners, double weldMm) {
        MeshPoints given = new MeshPoints(points, corners, weldMm);
        List<MeshFlaw> flaws = new ArrayList<>(given.flaws());
        MeshEdges edges = new MeshEdges(given.triangles(), given.joined(), given.placed());
        flaws.addAll(edges.flaws());
        int[] sound = given.sound();
        TriangleTree tree = null;
        if (sound.length > 0) {
            tree = new TriangleTree(named(given.triangles(), sound));
            flaws.addAll(new MeshMeetings(given.triangles(), given.joined(), sound, tree).flaws());
        }
        if (tree == null || !given.flaws().isEmpty()) {
            return new MeshResult.Refused(flaws);
        }
        Map<Integer, List<Integer>> shells = edges.shells();
        flaws.addAll(new MeshShells(given.triangles(), judged(shells, flaws, sound.length)).flaws());
        return new MeshResult.Sound(
                new Mesh(given.triangles(), given.joined(), tree, List.copyOf(flaws), shells.values()));
    }

    private static double[] named(double[] triangles, int[] names) {
        double[] some = new double[9 * names.length];
        for (int i = 0; i < names.length; i++) {
            System.arraycopy(triangles, 9 * names[i], some, 9 * i, 9);
        }
        return some;
    }

    /** The shells whose facing can be judged: those that have no open edge and cross nothing. */
    private static Map<Integer, List<Integer>> judged(
            Map<Integer, List<Integer>> shells, List<MeshFlaw> flaws, int count) {
        boolean[] faulty = new boolean[count];
        flaws.stream()
                .filter(flaw -> flaw.kind().effect() == MeshFlaw.Effect.NO_INSIDE)
                .forEach(flaw -> flaw.triangles().forEach(t -> faulty[t] = true));
        Map<Integer, List<Integer>> judged = new TreeMap<>();
        shells.forEach((first, members) -> {
            if (members.stream().noneMatch(t -> faulty[t])) {
                judged.put(first, members);
            }
        });
        return judged;
    }
}
