package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;

/**
 * What a window shows of a closed ring, as open lines.
 *
 * <p>Source of the clipping of one segment: Liang and Barsky, ACM Transactions on Graphics 3 (1984).
 */
final class WindowClip {
    private static final double SAME_MM = 1e-9;

    private WindowClip() {}

    /** The pieces of a ring inside a window, in order, pieces that join kept together. */
    static List<List<Vector2D>> ring(List<Vector2D> ring, Extent window) {
        List<List<Vector2D>> pieces = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            List<Vector2D> seen = segment(ring.get(i), ring.get((i + 1) % ring.size()), window);
            if (seen.isEmpty()) {
                continue;
            }
            List<Vector2D> last = pieces.isEmpty() ? List.of() : pieces.get(pieces.size() - 1);
            if (!last.isEmpty() && same(last.get(last.size() - 1), seen.get(0))) {
                last.add(seen.get(1));
            } else {
                pieces.add(new ArrayList<>(seen));
            }
        }
        return joined(pieces);
    }

    /** The last piece runs on into the first one where the ring starts inside the window. */
    private static List<List<Vector2D>> joined(List<List<Vector2D>> pieces) {
        if (pieces.size() > 1) {
            List<Vector2D> last = pieces.get(pieces.size() - 1);
            List<Vector2D> first = pieces.get(0);
            if (same(last.get(last.size() - 1), first.get(0))) {
                last.addAll(first.subList(1, first.size()));
                pieces.set(0, last);
                pieces.remove(pieces.size() - 1);
            }
        }
        return pieces;
    }

    /** What a window shows of a straight piece; nothing if none of it. */
    static List<Vector2D> segment(Vector2D from, Vector2D to, Extent window) {
        double dx = to.getX() - from.getX();
        double dy = to.getY() - from.getY();
        double[] span = {0, 1};
        boolean seen = narrow(span, -dx, from.getX() - window.minX())
                && narrow(span, dx, window.maxX() - from.getX())
                && narrow(span, -dy, from.getY() - window.minY())
                && narrow(span, dy, window.maxY() - from.getY());
        if (!seen || !(span[1] > span[0])) {
            return List.of();
        }
        return List.of(
                span[0] == 0 ? from : Vector2D.of(from.getX() + span[0] * dx, from.getY() + span[0] * dy),
                span[1] == 1 ? to : Vector2D.of(from.getX() + span[1] * dx, from.getY() + span[1] * dy));
    }

    /** Takes off what one edge hides: the point at t is inside while {@code p t <= q} (Liang and Barsky). */
    private static boolean narrow(double[] span, double p, double q) {
        if (p == 0) {
            return q >= 0;
        }
        double t = q / p;
        if (p < 0) {
            span[0] = Math.max(span[0], t);
        } else {
            span[1] = Math.min(span[1], t);
        }
        return span[0] <= span[1];
    }

    private static boolean same(Vector2D a, Vector2D b) {
        return a.distance(b) < SAME_MM;
    }
}
