package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Outline;

/** The rim of an outline: its outer boundary and those of its holes. */
final class Rim {
    private Rim() {}

    /** The point of the rim nearest to a point; of equals the first. */
    static Vector2D nearest(Outline outline, Vector2D point) {
        List<List<Vector2D>> rings = new ArrayList<>();
        rings.add(outline.shell());
        rings.addAll(outline.holes());
        Vector2D best = outline.shell().get(0);
        for (List<Vector2D> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Vector2D near = onSide(ring.get(i), ring.get((i + 1) % ring.size()), point);
                if (near.distance(point) < best.distance(point)) {
                    best = near;
                }
            }
        }
        return best;
    }

    private static Vector2D onSide(Vector2D from, Vector2D to, Vector2D point) {
        Vector2D side = to.subtract(from);
        double along = point.subtract(from).dot(side) / side.normSq();
        return from.add(side.multiply(Math.max(0, Math.min(1, along))));
    }
}
