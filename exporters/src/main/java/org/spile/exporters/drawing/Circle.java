package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A whole circle.
 *
 * @param pen how and whose
 * @param centre of the circle (mm)
 * @param radiusMm above 0
 */
public record Circle(Pen pen, Vector2D centre, double radiusMm) implements Stroke {
    /** Refuses circles of no size. */
    public Circle {
        Places.check(centre);
        Places.checkLength(radiusMm, "radius");
    }

    List<Vector2D> flattened(double sagittaMm) {
        var bend = Bend.ofDegrees(centre, radiusMm, 0, 360);
        var points = new ArrayList<Vector2D>();
        points.add(bend.at(0));
        points.addAll(bend.between(sagittaMm));
        points.add(bend.at(0));
        return points;
    }

    @Override
    public Stroke put(double turnDeg, Vector2D shift, String part) {
        return new Circle(pen.of(part), Places.put(centre, turnDeg, shift), radiusMm);
    }

    @Override
    public List<Patch> patches(double unitsPerMm) {
        return Places.pieces(flattened(Bend.PAPER_SAGITTA_MM * unitsPerMm));
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.circle(this);
    }
}
