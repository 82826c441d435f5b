package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** The border with JTS: our outlines in, its polygons out, and back. Nothing of it shows outside the package. */
final class JtsShapes {
    /** The grid of 1 µm on which all overlays are done. */
    static final PrecisionModel GRID = new PrecisionModel(GeometryTolerance.GRID_STEPS_PER_MM);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private JtsShapes() {}

    static Polygon polygon(Outline outline) {
        return polygon(outline.shell(), outline.holes());
    }

    static Polygon polygon(List<Vector2D> shell, List<List<Vector2D>> holes) {
        return FACTORY.createPolygon(
                ring(shell), holes.stream().map(JtsShapes::ring).toArray(LinearRing[]::new));
    }

    /** The polygons of a result, in a fixed order: by least x, then least y of the first corner, then area. */
    static List<Outline> outlines(Geometry geometry) {
        List<Outline> found = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                outline(polygon).ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparingDouble((Outline o) -> o.shell().get(0).getX())
                .thenComparingDouble(o -> o.shell().get(0).getY())
                .thenComparingDouble(Outline::areaMm2));
        return List.copyOf(found);
    }

    static Optional<OutlineFault> fault(List<Vector2D> shell, List<List<Vector2D>> holes) {
        TopologyValidationError error = new IsValidOp(polygon(shell, holes)).getValidationError();
        if (error == null) {
            return Optional.empty();
        }
        Coordinate at = error.getCoordinate();
        String reason =
                "a hole does not fit its outline (" + error.getMessage().toLowerCase(java.util.Locale.ROOT) + ")";
        return Optional.of(new OutlineFault(reason, Vector2D.of(at.x, at.y)));
    }

    private static LinearRing ring(List<Vector2D> corners) {
        Coordinate[] closed = new Coordinate[corners.size() + 1];
        for (int i = 0; i < closed.length; i++) {
            Vector2D corner = corners.get(i % corners.size());
            closed[i] = new Coordinate(corner.getX(), corner.getY());
        }
        return FACTORY.createLinearRing(closed);
    }

    private static Optional<Outline> outline(Polygon polygon) {
        List<Vector2D> shell = ring(polygon.getExteriorRing(), true);
        if (shell.size() < 3) {
            return Optional.empty();
        }
        List<List<Vector2D>> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            List<Vector2D> hole = ring(polygon.getInteriorRingN(i), false);
            if (hole.size() >= 3) {
                holes.add(hole);
            }
        }
        holes.sort(Comparator.comparingDouble((List<Vector2D> h) -> h.get(0).getX())
                .thenComparingDouble(h -> h.get(0).getY()));
        return Optional.of(Outline.trusted(shell, holes));
    }

    /** A ring without corners on straight lines, turned as asked, starting at its least corner. */
    private static List<Vector2D> ring(LinearRing ring, boolean counterClockwise) {
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            Coordinate c = ring.getCoordinateN(i);
            corners.add(Vector2D.of(c.x + 0.0, c.y + 0.0));
        }
        List<Vector2D> kept = withoutStraightCorners(corners);
        if (kept.size() < 3) {
            return kept;
        }
        if (OutlineCheck.signedAreaMm2(kept) > 0 != counterClockwise) {
            java.util.Collections.reverse(kept);
        }
        java.util.Collections.rotate(kept, -least(kept));
        return kept;
    }

    private static List<Vector2D> withoutStraightCorners(List<Vector2D> corners) {
        List<Vector2D> kept = new ArrayList<>();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Vector2D before = kept.isEmpty() ? corners.get(n - 1) : kept.get(kept.size() - 1);
            if (!straight(before, corners.get(i), corners.get((i + 1) % n))) {
                kept.add(corners.get(i));
            }
        }
        return kept;
    }

    private static boolean straight(Vector2D a, Vector2D b, Vector2D c) {
        double length = a.distance(c);
        return length > 0
                && Math.abs(b.subtract(a).signedArea(c.subtract(a))) / length < GeometryTolerance.ARITHMETIC_MM;
    }

    private static int least(List<Vector2D> ring) {
        int least = 0;
        for (int i = 1; i < ring.size(); i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get(least);
            if (a.getX() < b.getX() || (a.getX() == b.getX() && a.getY() < b.getY())) {
                least = i;
            }
        }
        return least;
    }
}
