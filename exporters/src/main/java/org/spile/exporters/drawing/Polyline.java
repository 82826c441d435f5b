package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A line of straight and bent pieces.
 *
 * @param pen how and whose
 * @param vertices at least two corners; the first is not repeated at the end of a closed line
 * @param closed whether the last corner is joined to the first
 */
public record Polyline(Pen pen, List<Vertex> vertices, boolean closed) implements Stroke {
    /** Copies the corners. */
    public Polyline {
        vertices = List.copyOf(vertices);
        if (vertices.size() < 2) {
            throw new IllegalArgumentException("a polyline needs two corners, not " + vertices.size());
        }
    }

    /** A closed outline of straight pieces. */
    public static Polyline outline(Pen pen, List<Vector2D> corners) {
        return new Polyline(pen, Vertex.straight(corners), true);
    }

    /** An open line of straight pieces. */
    public static Polyline path(Pen pen, List<Vector2D> corners) {
        return new Polyline(pen, Vertex.straight(corners), false);
    }

    /** An upright rectangle. */
    public static Polyline rectangle(Pen pen, Extent extent) {
        return outline(pen, extent.corners());
    }

    /**
     * The line as points on it, straight between.
     *
     * @param sagittaMm how far a bent piece may bulge beyond the chord between two points (mm), above 0
     * @return the points in order; a closed line ends where it began
     */
    public List<Vector2D> flattened(double sagittaMm) {
        var points = new ArrayList<Vector2D>();
        var pieces = closed ? vertices.size() : vertices.size() - 1;
        points.add(vertices.get(0).at());
        for (var i = 0; i < pieces; i++) {
            var from = vertices.get(i);
            var to = vertices.get((i + 1) % vertices.size()).at();
            Bend.between(from, to).ifPresent(bend -> points.addAll(bend.between(sagittaMm)));
            points.add(to);
        }
        return points;
    }

    @Override
    public Stroke put(double turnDeg, Vector2D shift, String part) {
        var put = vertices.stream()
                .map(vertex -> new Vertex(Places.put(vertex.at(), turnDeg, shift), vertex.bulge()))
                .toList();
        return new Polyline(pen.of(part), put, closed);
    }

    @Override
    public List<Patch> patches(double unitsPerMm) {
        return Places.pieces(flattened(Bend.PAPER_SAGITTA_MM * unitsPerMm));
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.polyline(this);
    }
}
