package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A convex outline with every side moved out by the same distance, off the grid.
 *
 * <p>A corner between sides with outward unit normals m and n moves by g (m + n) / (1 + m·n): the one vector whose part along
 * either normal is g.
 */
final class ConvexMitre {
    private ConvexMitre() {}

    static Outline grown(Outline convex, double growthMm) {
        Rings ring = convex.rings();
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < ring.count(); i++) {
            int j = ring.next[i];
            corners.add(corner(ring, i, j, ring.next[j], growthMm));
        }
        return Outline.of(corners);
    }

    private static Vector2D corner(Rings ring, int before, int at, int after, double growthMm) {
        Vector2D m = outward(ring, before, at);
        Vector2D n = outward(ring, at, after);
        Vector2D place = Vector2D.of(ring.x[at], ring.y[at]);
        double turn = StrictMath.atan2(m.signedArea(n), m.dot(n));
        Growth.refuseSpike(place, Math.PI - turn);
        return place.add(m.add(n).multiply(growthMm / (1 + m.dot(n))));
    }

    private static Vector2D outward(Rings ring, int from, int to) {
        return Vector2D.of(ring.y[to] - ring.y[from], ring.x[from] - ring.x[to]).normalize();
    }
}
