package org.spile.geometry.house.duct;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Sheet folded between two rings of equally many points: where four of them lie in no plane it is folded on the diagonal
 * that leaves less room. Curves are drawn by points on them, so what is clear is never overstated.
 */
final class FoldedSheet {
    private final List<Vector3D> from = new ArrayList<>();
    private final List<Vector3D> to = new ArrayList<>();

    FoldedSheet(List<Vector3D> near, List<Vector3D> far) {
        Vector3D middle = middle(near).lerp(middle(far), 0.5);
        int n = near.size();
        for (int k = 0; k < n; k++) {
            Vector3D a = near.get(k);
            Vector3D b = far.get(k);
            Vector3D nextA = near.get((k + 1) % n);
            Vector3D nextB = far.get((k + 1) % n);
            from.add(a);
            to.add(b);
            Vector3D outward = a.add(b).add(nextA).add(nextB).multiply(0.25).subtract(middle);
            boolean rising = a.add(nextB).dot(outward) < nextA.add(b).dot(outward);
            from.add(rising ? a : nextA);
            to.add(rising ? nextB : b);
        }
    }

    private static Vector3D middle(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        for (Vector3D point : ring) {
            sum = sum.add(point);
        }
        return sum.multiply(1.0 / ring.size());
    }

    /** The section by a plane that crosses every fold; a fold that it misses counts at its nearer end. */
    List<Vector3D> cut(Vector3D through, Vector3D normal) {
        List<Vector3D> ring = new ArrayList<>();
        for (int k = 0; k < from.size(); k++) {
            double a = from.get(k).subtract(through).dot(normal);
            double b = to.get(k).subtract(through).dot(normal);
            double share = Math.abs(a - b) > 0 ? a / (a - b) : 0.5;
            ring.add(from.get(k).lerp(to.get(k), Math.max(0, Math.min(1, share))));
        }
        return ring;
    }

    /** Area of a ring as a vector along its normal (Newell's sums). */
    static Vector3D areaVector(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        Vector3D first = ring.get(0);
        for (int k = 1; k + 1 < ring.size(); k++) {
            sum = sum.add(ring.get(k).subtract(first).cross(ring.get(k + 1).subtract(first)));
        }
        return sum.multiply(0.5);
    }
}
