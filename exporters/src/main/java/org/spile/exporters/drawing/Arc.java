package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Part of a circle, drawn counter-clockwise.
 *
 * @param pen how and whose
 * @param centre of the circle (mm)
 * @param radiusMm above 0
 * @param startDeg where it starts, degrees from the x axis
 * @param sweepDeg how far it goes, above 0 and below 360
 */
public record Arc(Pen pen, Vector2D centre, double radiusMm, double startDeg, double sweepDeg) implements Stroke {
    /** Refuses arcs of no size and whole circles. */
    public Arc {
        Places.check(centre);
        Places.checkLength(radiusMm, "radius");
        if (!Double.isFinite(startDeg) || !(sweepDeg > 0 && sweepDeg < 360)) {
            throw new IllegalArgumentException(
                    "arc from " + startDeg + " over " + sweepDeg + " degrees: the sweep must be above 0 and below 360");
        }
    }

    /** The arc as part of a circle. */
    public Bend bend() {
        return Bend.ofDegrees(centre, radiusMm, startDeg, sweepDeg);
    }

    List<Vector2D> flattened(double sagittaMm) {
        var bend = bend();
        var points = new ArrayList<Vector2D>();
        points.add(bend.at(0));
        points.addAll(bend.between(sagittaMm));
        points.add(bend.at(1));
        return points;
    }

    @Override
    public Stroke put(double turnDeg, Vector2D shift, String part) {
        return new Arc(pen.of(part), Places.put(centre, turnDeg, shift), radiusMm, startDeg + turnDeg, sweepDeg);
    }

    @Override
    public List<Patch> patches(double unitsPerMm) {
        return Places.pieces(flattened(Bend.PAPER_SAGITTA_MM * unitsPerMm));
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.arc(this);
    }
}
