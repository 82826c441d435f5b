package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Finds the first fault that keeps a list of corners from being a simple closed ring. */
final class OutlineCheck {
    private OutlineCheck() {}

    static Optional<OutlineFault> fault(List<Vector2D> corners) {
        for (int i = 0; i < corners.size(); i++) {
            Vector2D corner = corners.get(i);
            if (!inRange(corner.getX()) || !inRange(corner.getY())) {
                return fault("corner " + (i + 1) + " is not a place within 1 km of the origin", corner);
            }
        }
        List<Vector2D> ring = withoutRepeats(corners);
        if (ring.size() < 3) {
            Vector2D at = corners.isEmpty() ? Vector2D.ZERO : corners.get(0);
            return fault("an outline needs at least 3 different corners and has " + ring.size(), at);
        }
        Optional<OutlineFault> crossing = crossing(ring, corners);
        if (crossing.isPresent()) {
            return crossing;
        }
        if (Math.abs(signedAreaMm2(ring)) < GeometryTolerance.CONTACT_MM) {
            return fault("the outline encloses no area", ring.get(0));
        }
        return Optional.empty();
    }

    /** Drops corners that repeat the one before (and a closing corner that repeats the first). */
    static List<Vector2D> withoutRepeats(List<Vector2D> corners) {
        List<Vector2D> kept = new ArrayList<>();
        for (Vector2D corner : corners) {
            if (kept.isEmpty() || !same(kept.get(kept.size() - 1), corner)) {
                kept.add(corner);
            }
        }
        while (kept.size() > 1 && same(kept.get(0), kept.get(kept.size() - 1))) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    static double signedAreaMm2(List<Vector2D> ring) {
        Vector2D origin = ring.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            twice += ring.get(i).subtract(origin).signedArea(ring.get(i + 1).subtract(origin));
        }
        return twice / 2;
    }

    /** Two sides that are not neighbours may not come within arithmetic tolerance; neighbours may not fold back. */
    private static Optional<OutlineFault> crossing(List<Vector2D> ring, List<Vector2D> given) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get((i + 1) % n);
            Vector2D c = ring.get((i + 2) % n);
            if (foldsBack(a, b, c)) {
                return fault("the outline folds back on itself at corner " + number(b, given), b);
            }
            for (int j = i + 2; j < n; j++) {
                if (i == 0 && j == n - 1) {
                    continue;
                }
                Vector2D p = ring.get(j);
                Vector2D q = ring.get((j + 1) % n);
                Vector2D at = SegmentPair.meeting(a, b, p, q);
                if (at != null) {
                    return fault("sides " + number(a, given) + " and " + number(p, given) + " cross or touch", at);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean foldsBack(Vector2D a, Vector2D b, Vector2D c) {
        Vector2D in = b.subtract(a);
        Vector2D out = c.subtract(b);
        double across = Math.abs(in.signedArea(out)) / Math.max(in.norm(), out.norm());
        return in.dot(out) < 0 && across < GeometryTolerance.CONTACT_MM;
    }

    private static int number(Vector2D corner, List<Vector2D> given) {
        return given.indexOf(corner) + 1;
    }

    private static boolean same(Vector2D a, Vector2D b) {
        return a.distance(b) < GeometryTolerance.CONTACT_MM;
    }

    private static boolean inRange(double mm) {
        return Math.abs(mm) <= GeometryTolerance.LARGEST_MM;
    }

    private static Optional<OutlineFault> fault(String reason, Vector2D at) {
        return Optional.of(new OutlineFault(reason, at));
    }
}
