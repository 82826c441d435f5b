package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Outline;

/** Where a level or upright line through a view meets the outlines of what is cut. */
final class Ray {
    private static final double SAME_MM = 1e-6;

    private Ray() {}

    /** Positions along a line through a point, ascending, each once: heights if upright, else positions to the right. */
    static List<Double> faces(List<Outline> outlines, Vector2D through, boolean upright) {
        List<Double> found = new ArrayList<>();
        for (Outline outline : outlines) {
            cross(outline.shell(), through, upright, found);
            outline.holes().forEach(hole -> cross(hole, through, upright, found));
        }
        found.sort(Comparator.naturalOrder());
        List<Double> once = new ArrayList<>();
        for (double each : found) {
            if (once.isEmpty() || each - once.get(once.size() - 1) > SAME_MM) {
                once.add(each);
            }
        }
        return once;
    }

    private static void cross(List<Vector2D> ring, Vector2D through, boolean upright, List<Double> found) {
        for (int i = 0; i < ring.size(); i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get((i + 1) % ring.size());
            double off = upright ? through.getX() : through.getY();
            double aOff = (upright ? a.getX() : a.getY()) - off;
            double bOff = (upright ? b.getX() : b.getY()) - off;
            if (aOff * bOff < 0) {
                double t = aOff / (aOff - bOff);
                double aAt = upright ? a.getY() : a.getX();
                double bAt = upright ? b.getY() : b.getX();
                found.add(aAt + t * (bAt - aAt));
            }
        }
    }
}
