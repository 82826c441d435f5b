package org.spile.geometry.file;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Written;

/** What makes corners an outline: none doubled, no sides that cross, some area. */
final class OutlineRules {
    /** Corners nearer than this are one (mm). */
    private static final double SAME_MM = 0.1;

    private OutlineRules() {}

    /** Whether the corners bound an area; if not, it is told. */
    static boolean sound(Spot spot, List<Vector2D> corners, Scribe scribe) {
        int count = corners.size();
        for (int i = 0; i < count; i++) {
            int next = (i + 1) % count;
            if (corners.get(i).distance(corners.get(next)) < SAME_MM) {
                scribe.wrong(
                        spot,
                        "corners " + (i + 1) + " and " + (next + 1) + " are at one place, " + at(corners.get(i)) + ".",
                        next == 0 ? "The last corner joins the first by itself: leave it out." : "Leave one out.");
                return false;
            }
        }
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                if (crosses(corners, i, j)) {
                    scribe.wrong(
                            spot,
                            "the outline crosses itself: side " + side(i, count) + " meets side " + side(j, count)
                                    + ".",
                            "Give the corners in order, all the way round.");
                    return false;
                }
            }
        }
        return true;
    }

    private static String at(Vector2D corner) {
        return "[" + Written.number(corner.getX(), 2) + ", " + Written.number(corner.getY(), 2) + "]";
    }

    private static String side(int i, int count) {
        return (i + 1) + "-" + ((i + 1) % count + 1);
    }

    /** Whether two sides meet elsewhere than at a corner that they share; sides that fold back on each other do. */
    private static boolean crosses(List<Vector2D> corners, int i, int j) {
        int count = corners.size();
        Vector2D a = corners.get(i);
        Vector2D b = corners.get((i + 1) % count);
        Vector2D c = corners.get(j);
        Vector2D d = corners.get((j + 1) % count);
        if (j == i + 1) {
            return folds(a, b, d);
        }
        if ((j + 1) % count == i) {
            return folds(c, a, b);
        }
        double abc = turn(a, b, c);
        double abd = turn(a, b, d);
        double cda = turn(c, d, a);
        double cdb = turn(c, d, b);
        boolean straddle = abc * abd < 0 && cda * cdb < 0;
        return straddle || on(a, b, c, abc) || on(a, b, d, abd) || on(c, d, a, cda) || on(c, d, b, cdb);
    }

    private static boolean folds(Vector2D before, Vector2D corner, Vector2D after) {
        Vector2D back = before.subtract(corner);
        Vector2D on = after.subtract(corner);
        return Math.abs(turn(before, corner, after)) < SAME_MM * Math.max(back.norm(), on.norm()) && back.dot(on) > 0;
    }

    private static double turn(Vector2D a, Vector2D b, Vector2D c) {
        return (b.getX() - a.getX()) * (c.getY() - a.getY()) - (b.getY() - a.getY()) * (c.getX() - a.getX());
    }

    private static boolean on(Vector2D a, Vector2D b, Vector2D point, double turn) {
        return Math.abs(turn) < SAME_MM * a.distance(b)
                && point.subtract(a).dot(b.subtract(a)) >= 0
                && point.subtract(b).dot(a.subtract(b)) >= 0;
    }
}
