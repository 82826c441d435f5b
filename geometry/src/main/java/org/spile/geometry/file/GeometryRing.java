package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.spile.geometry.kernel.measure.Unit;
import org.spile.geometry.kernel.measure.Written;

/** Takes the one ring of a geometry that another format described. */
final class GeometryRing {
    private static final Pattern TAKEN_KINDS =
            Pattern.compile("(?is)\\s*(POLYGON|MULTIPOLYGON|LINESTRING|LINEARRING)\\b.*");
    private static final double SAME_MM = 0.01;

    private GeometryRing() {}

    /** The geometry of well-known text. */
    static Geometry fromText(String text) throws DrawingFault {
        if (!TAKEN_KINDS.matcher(text).matches()) {
            String start = Shown.cut(text.strip().lines().findFirst().orElse(""));
            throw DrawingFault.error(
                    "\"" + start + "\" is no shape of well-known text.", "Write POLYGON ((0 0, ...)).");
        }
        try {
            return new WKTReader().read(text);
        } catch (ParseException | IllegalArgumentException fault) {
            String why = Shown.sentence(String.valueOf(fault.getMessage()));
            throw DrawingFault.error("it is no well-known text: " + why, "Write POLYGON ((0 0, ...)).");
        }
    }

    /** The corners of the geometry's one ring, in mm. */
    static List<Vector2D> of(Geometry geometry, Unit unit) throws DrawingFault {
        Geometry one = geometry;
        if (geometry instanceof MultiPolygon several && several.getNumGeometries() == 1) {
            one = several.getGeometryN(0);
        }
        if (one.isEmpty()) {
            throw DrawingFault.error("the shape has no corners.", "Is it the right one?");
        }
        if (one instanceof MultiPolygon several) {
            throw DrawingFault.error(
                    "it holds " + several.getNumGeometries() + " closed shapes.", "Keep the one meant.");
        }
        if (one instanceof Polygon polygon) {
            if (polygon.getNumInteriorRing() > 0) {
                throw DrawingFault.error("the shape has a hole.", "An outline has none: draw its rim only.");
            }
            return scaled(corners(polygon.getExteriorRing()), unit);
        }
        if (one instanceof LineString line) {
            return closed(line, unit);
        }
        throw DrawingFault.error("a " + one.getGeometryType() + " bounds nothing.", "Draw a closed shape.");
    }

    private static List<Vector2D> closed(LineString line, Unit unit) throws DrawingFault {
        List<Vector2D> points = scaled(all(line), unit);
        Vector2D first = points.get(0);
        Vector2D last = points.get(points.size() - 1);
        if (first.distance(last) > SAME_MM) {
            throw DrawingFault.error(
                    "the shape is open; a gap of " + Written.number(first.distance(last), 2) + " mm lies between "
                            + shown(last) + " and " + shown(first) + ".",
                    "Close it.");
        }
        return points.subList(0, points.size() - 1);
    }

    /** The corners of a closed line, the repeated last one left out. */
    static List<Vector2D> corners(LineString ring) {
        List<Vector2D> points = all(ring);
        return List.copyOf(points.subList(0, points.size() - 1));
    }

    private static List<Vector2D> all(LineString line) {
        var points = new ArrayList<Vector2D>();
        for (Coordinate corner : line.getCoordinates()) {
            points.add(Vector2D.of(corner.getX(), corner.getY()));
        }
        return points;
    }

    private static List<Vector2D> scaled(List<Vector2D> points, Unit unit) {
        return points.stream()
                .map(point -> Vector2D.of(unit.toBase(point.getX()), unit.toBase(point.getY())))
                .toList();
    }

    private static String shown(Vector2D point) {
        return "[" + Written.number(point.getX(), 2) + ", " + Written.number(point.getY(), 2) + "]";
    }
}
