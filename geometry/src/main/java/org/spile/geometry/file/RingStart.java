package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Gives a ring its turn and its first corner, so that one shape is one list however it was drawn. */
final class RingStart {
    private RingStart() {}

    /** The ring counter-clockwise from its rearmost corner, of several the rightmost. */
    static List<Vector2D> settled(List<Vector2D> ring) {
        var corners = new ArrayList<>(ring);
        if (twiceArea(corners) < 0) {
            Collections.reverse(corners);
        }
        int first = 0;
        for (int i = 1; i < corners.size(); i++) {
            Vector2D best = corners.get(first);
            Vector2D here = corners.get(i);
            if (here.getX() < best.getX() || (here.getX() == best.getX() && here.getY() < best.getY())) {
                first = i;
            }
        }
        Collections.rotate(corners, -first);
        return List.copyOf(corners);
    }

    private static double twiceArea(List<Vector2D> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Vector2D here = corners.get(i);
            Vector2D next = corners.get((i + 1) % corners.size());
            sum += here.signedArea(next);
        }
        return sum;
    }
}
