package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Whether closed shells face the right way: seen from the others alone, a shell stands outside them and faces outwards,
 * or stands in the space of one and faces inwards.
 */
final class MeshShells {
    /** So many places of a shell are tried for one that lies off all others. */
    private static final int MOST_PLACES = 16;

    private static final int NONE = -1;

    private final double[] triangles;
    private final List<MeshFlaw> flaws = new ArrayList<>();
    /** The first triangle of each triangle's shell, or that it belongs to none. */
    private final int[] shellOf;

    /** Judges the given shells, each a list of triangles by its first one; none has an open edge. */
    MeshShells(double[] triangles, Map<Integer, List<Integer>> shells) {
        this.triangles = triangles;
        this.shellOf = new int[triangles.length / 9];
        Arrays.fill(shellOf, NONE);
        shells.forEach((first, members) -> members.forEach(t -> shellOf[t] = first));
        shells.forEach((first, members) -> {
            long around = timesAround(first, members);
            double volume = volume(members);
            if (!(around == 0 && volume > 0) && !(around == 1 && volume < 0)) {
                flaws.add(new MeshFlaw(MeshFlaw.Kind.INSIDE_OUT, List.of(first), middle(first)));
            }
        });
    }

    List<MeshFlaw> flaws() {
        return flaws;
    }

    /**
     * How often the others wind round a shell. Where it touches one of them the sum is no whole number; that place says
     * nothing, and another is tried.
     */
    private long timesAround(int first, List<Integer> shell) {
        double clearest = 0.5;
        long around = 0;
        for (int i = 0; i < Math.min(MOST_PLACES, shell.size()) && clearest > 1e-6; i++) {
            Vector3D at = middle(shell.get(i));
            double winding = 0;
            for (int t = 0; t < shellOf.length; t++) {
                if (shellOf[t] != NONE && shellOf[t] != first) {
                    winding += WindingNumber.of(triangles, t, at.getX(), at.getY(), at.getZ());
                }
            }
            double off = Math.abs(winding - Math.rint(winding));
            if (off < clearest) {
                clearest = off;
                around = Math.round(winding);
            }
        }
        return around;
    }

    private double volume(List<Integer> shell) {
        Vector3D at = middle(shell.get(0));
        double volume = 0;
        for (int t : shell) {
            Vector3D a = corner(t, 0).subtract(at);
            volume += a.dot(corner(t, 1).subtract(at).cross(corner(t, 2).subtract(at)));
        }
        return volume;
    }

    private Vector3D middle(int t) {
        return corner(t, 0).add(corner(t, 1)).add(corner(t, 2)).multiply(1.0 / 3);
    }

    private Vector3D corner(int t, int k) {
        int at = 9 * t + 3 * k;
        return Vector3D.of(triangles[at], triangles[at + 1], triangles[at + 2]);
    }
}
