package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A small filled area with straight edges and without holes: arrowheads, dots' triangles, blocks of a scale bar.
 *
 * @param pen whose ink fills it; the edge itself is not drawn
 * @param corners three or four, in order round a convex area (mm)
 */
public record Fill(Pen pen, List<Vector2D> corners) implements Stroke {
    /** Copies the corners. */
    public Fill {
        corners = List.copyOf(corners);
        corners.forEach(Places::check);
        if (corners.size() < 3 || corners.size() > 4) {
            throw new IllegalArgumentException("a fill has three or four corners, not " + corners.size());
        }
    }

    /**
     * A filled arrowhead of 30 degrees (ISO 129-1).
     *
     * @param pen whose ink fills it
     * @param tip where it points (mm)
     * @param towards unit direction in which it points
     * @param lengthMm from tip to base, in the tip's unit
     */
    public static Fill arrow(Pen pen, Vector2D tip, Vector2D towards, double lengthMm) {
        var half = lengthMm * StrictMath.tan(Math.toRadians(15));
        var base = tip.subtract(towards.multiply(lengthMm));
        var across = Vector2D.of(-towards.getY(), towards.getX()).multiply(half);
        return new Fill(pen, List.of(tip, base.add(across), base.subtract(across)));
    }

    @Override
    public Stroke put(double turnDeg, Vector2D shift, String part) {
        return new Fill(
                pen.of(part),
                corners.stream()
                        .map(corner -> Places.put(corner, turnDeg, shift))
                        .toList());
    }

    @Override
    public List<Patch> patches(double unitsPerMm) {
        return List.of(new Patch(corners));
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.fill(this);
    }
}
