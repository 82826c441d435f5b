package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * What open obstacles leave of a closed window: areas, and where two obstacles just touch, lines and points.
 *
 * <p>A slot of exactly the needed width leaves a line; overlay of areas alone would lose it. So the obstacles are taken
 * twice: as they are, for the areas, and shrunk by the contact tolerance, for the threads between them that have no area.
 * Areas lie on the 1 µm grid; lengths in mm.
 *
 * @param areas outlines, holes allowed, that don't overlap; in a fixed order
 * @param lines polylines without width, at least two points each
 * @param points single places
 */
public record FreePlan(List<Outline> areas, List<List<Vector2D>> lines, List<Vector2D> points) {
    /** A free strip narrower than this counts as a line. */
    public static final double THREAD_MM = 0.002;

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int ROUND_CORNER = 2;

    /** Copies the lists. */
    public FreePlan {
        areas = List.copyOf(areas);
        lines = lines.stream().map(List::copyOf).toList();
        points = List.copyOf(points);
    }

    /** Nothing free. */
    public static FreePlan none() {
        return new FreePlan(List.of(), List.of(), List.of());
    }

    /**
     * The areas left of a window.
     *
     * @param window where to look
     * @param taken convex rings, counter-clockwise, whose insides are taken
     * @return outlines that don't overlap, none narrower than {@link #THREAD_MM}
     */
    public static List<Outline> areas(List<Outline> window, List<List<Vector2D>> taken) {
        return areas(Rims.union(Rims.of(window)), Outermost.of(taken));
    }

    /**
     * What is left of a window, slots without width among it.
     *
     * @param window where to look
     * @param taken convex rings, counter-clockwise, whose insides are taken
     * @return what is free
     */
    public static FreePlan of(List<Outline> window, List<List<Vector2D>> taken) {
        Geometry place = Rims.union(Rims.of(window));
        List<List<Vector2D>> rings = Outermost.of(taken);
        List<Outline> areas = areas(place, rings);
        List<List<Vector2D>> surely = rings.stream()
                .map(ring -> Outermost.shrunk(ring, GeometryTolerance.CONTACT_MM))
                .toList();
        Geometry perhaps = OverlayNGRobust.overlay(place, union(Rims.rings(surely)), OverlayNG.DIFFERENCE);
        Geometry known = BufferOp.bufferOp(Rims.union(Rims.of(areas)), THREAD_MM, ROUND_CORNER);
        Geometry threads = OverlayNGRobust.overlay(perhaps, known, OverlayNG.DIFFERENCE);
        return withThreads(areas, threads);
    }

    private static List<Outline> areas(Geometry place, List<List<Vector2D>> rings) {
        Geometry free = OverlayNG.overlay(place, Rims.union(Rims.rings(rings)), OverlayNG.DIFFERENCE, JtsShapes.GRID);
        return wide(JtsShapes.outlines(free));
    }

    private static List<Outline> wide(List<Outline> areas) {
        return areas.stream().filter(area -> widthMm(area) > THREAD_MM).toList();
    }

    /** Twice the area over the perimeter: the width of a strip, less for anything else. */
    private static double widthMm(Outline area) {
        double around = length(area.shell());
        for (List<Vector2D> hole : area.holes()) {
            around += length(hole);
        }
        return 2 * area.areaMm2() / around;
    }

    private static double length(List<Vector2D> ring) {
        double length = 0;
        for (int i = 0; i < ring.size(); i++) {
            length += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return length;
    }

    /** There and back along a thread is one line on the grid; what collapses wholly is a point. */
    private static FreePlan withThreads(List<Outline> areas, Geometry threads) {
        List<List<Vector2D>> lines = new ArrayList<>();
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i < threads.getNumGeometries(); i++) {
            Geometry thread = threads.getGeometryN(i);
            if (thread.isEmpty()) {
                continue;
            }
            Geometry rim = UnaryUnionNG.union(thread.getBoundary(), JtsShapes.GRID);
            LineMerger merger = new LineMerger();
            merger.add(rim);
            List<List<Vector2D>> found = new ArrayList<>();
            for (Object line : merger.getMergedLineStrings()) {
                found.add(points((LineString) line));
            }
            found.removeIf(line -> length(line) / 2 <= THREAD_MM);
            if (found.isEmpty()) {
                Coordinate at = thread.getCoordinate();
                points.add(Rims.onGrid(at.x, at.y));
            }
            lines.addAll(found);
        }
        lines.sort(
                Comparator.comparingDouble((List<Vector2D> line) -> line.get(0).getX())
                        .thenComparingDouble(line -> line.get(0).getY())
                        .thenComparingDouble(line -> line.get(line.size() - 1).getX())
                        .thenComparingDouble(line -> line.get(line.size() - 1).getY()));
        points.sort(Comparator.comparingDouble(Vector2D::getX).thenComparingDouble(Vector2D::getY));
        return new FreePlan(areas, lines, points);
    }

    /** From the end with the lesser x, then the lesser y. */
    private static List<Vector2D> points(LineString line) {
        List<Vector2D> points = new ArrayList<>();
        for (Coordinate at : line.getCoordinates()) {
            points.add(Vector2D.of(at.x + 0.0, at.y + 0.0));
        }
        Vector2D first = points.get(0);
        Vector2D last = points.get(points.size() - 1);
        if (last.getX() < first.getX() || (last.getX() == first.getX() && last.getY() < first.getY())) {
            java.util.Collections.reverse(points);
        }
        return points;
    }

    private static Geometry union(List<? extends Geometry> polygons) {
        return polygons.isEmpty() ? FACTORY.createPolygon() : OverlayNGRobust.union(new ArrayList<>(polygons), FACTORY);
    }

    /** Whether nothing at all is free. */
    public boolean isEmpty() {
        return areas.isEmpty() && lines.isEmpty() && points.isEmpty();
    }

    /**
     * Its area; lines and points have none.
     *
     * @return mm²
     */
    public double areaMm2() {
        return areas.stream().mapToDouble(Outline::areaMm2).sum();
    }
}
