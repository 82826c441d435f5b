package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A straight line.
 *
 * @param pen how and whose
 * @param from start (mm)
 * @param to end (mm)
 */
public record Line(Pen pen, Vector2D from, Vector2D to) implements Stroke {
    /** Refuses places that are none. */
    public Line {
        Places.check(from);
        Places.check(to);
    }

    /** A line between two points given by their coordinates (mm). */
    public static Line of(Pen pen, double x1, double y1, double x2, double y2) {
        return new Line(pen, Vector2D.of(x1, y1), Vector2D.of(x2, y2));
    }

    @Override
    public Stroke put(double turnDeg, Vector2D shift, String part) {
        return new Line(pen.of(part), Places.put(from, turnDeg, shift), Places.put(to, turnDeg, shift));
    }

    @Override
    public List<Patch> patches(double unitsPerMm) {
        return List.of(Patch.of(from, to));
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.line(this);
    }
}
