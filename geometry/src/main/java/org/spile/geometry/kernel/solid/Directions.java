package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Unit directions in a flat array, three numbers each. */
final class Directions {
    private static final double PARALLEL = 1e-13;

    private Directions() {}

    /** Each direction once; opposite ones count as one. */
    static double[] distinct(List<Vector3D> directions) {
        List<Vector3D> kept = new ArrayList<>();
        for (Vector3D direction : directions) {
            Vector3D unit = direction.normalize();
            if (kept.stream().noneMatch(k -> k.cross(unit).norm() < PARALLEL)) {
                kept.add(unit);
            }
        }
        double[] flat = new double[3 * kept.size()];
        for (int i = 0; i < kept.size(); i++) {
            flat[3 * i] = kept.get(i).getX();
            flat[3 * i + 1] = kept.get(i).getY();
            flat[3 * i + 2] = kept.get(i).getZ();
        }
        return flat;
    }

    /** The directions after the motion's turn. */
    static double[] turned(double[] flat, Move move) {
        double[] turned = new double[flat.length];
        for (int i = 0; i < flat.length; i += 3) {
            turned[i] = move.turnedX(flat[i], flat[i + 1], flat[i + 2]);
            turned[i + 1] = move.turnedY(flat[i], flat[i + 1], flat[i + 2]);
            turned[i + 2] = move.turnedZ(flat[i], flat[i + 1], flat[i + 2]);
        }
        return turned;
    }
}
