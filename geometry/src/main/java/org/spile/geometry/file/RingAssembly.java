package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.spile.geometry.kernel.measure.Written;

/** Joins loose lines to closed shapes: ends within 0.01 mm are one. */
final class RingAssembly {
    private static final double SAME_MM = 0.01;
    private static final int MOST_CORNERS = 20_000;

    private final GeometryFactory factory = new GeometryFactory();
    private final EndPoints ends = new EndPoints(SAME_MM);
    private final List<List<Vector2D>> rings = new ArrayList<>();
    private final List<LineString> loose = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();

    /**
     * The one closed shape that some lines make.
     *
     * @param paths the lines
     * @param where what they are on, for messages
     * @param besides what else is drawn there that was not read, for messages
     */
    static List<Vector2D> one(List<PlanPath> paths, String where, String besides) throws DrawingFault {
        int corners = paths.stream().mapToInt(path -> path.corners().size()).sum();
        if (corners > MOST_CORNERS) {
            throw DrawingFault.error(
                    where + " has " + corners + " corners.", "Put the outline on a layer of its own, in fewer.");
        }
        var assembly = new RingAssembly();
        paths.forEach(assembly::add);
        return assembly.one(where, besides);
    }

    private void add(PlanPath path) {
        var corners = new ArrayList<Vector2D>();
        for (Vector2D corner : path.corners()) {
            Vector2D end = ends.merged(corner);
            if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(end)) {
                corners.add(end);
            }
        }
        boolean meets = corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1));
        if (meets) {
            corners.remove(corners.size() - 1);
        }
        if (path.closed() || meets) {
            if (corners.size() > 2) {
                rings.add(List.copyOf(corners));
            }
            return;
        }
        for (int i = 1; i < corners.size(); i++) {
            side(corners.get(i - 1), corners.get(i));
        }
    }

    private void side(Vector2D from, Vector2D to) {
        if (seen.add(from + " " + to) && seen.add(to + " " + from)) {
            loose.add(factory.createLineString(
                    new Coordinate[] {new Coordinate(from.getX(), from.getY()), new Coordinate(to.getX(), to.getY())}));
        }
    }

    private List<Vector2D> one(String where, String besides) throws DrawingFault {
        var polygonizer = new Polygonizer();
        polygonizer.add(loose);
        for (Object polygon : polygonizer.getPolygons()) {
            rings.add(GeometryRing.corners(((Polygon) polygon).getExteriorRing()));
        }
        Set<List<Vector2D>> different = new HashSet<>();
        rings.removeIf(ring -> !different.add(RingStart.settled(ring)));
        if (rings.size() == 1) {
            return rings.get(0);
        }
        if (rings.size() > 1) {
            throw DrawingFault.error(
                    where + " holds " + rings.size() + " closed shapes.", "Put the one meant on a layer of its own.");
        }
        throw DrawingFault.error(
                where + " holds no closed shape" + gap() + besides + ".", "Close it, or join its lines.");
    }

    private String gap() {
        Map<String, Integer> uses = new TreeMap<>();
        var points = new ArrayList<Coordinate>();
        for (LineString line : loose) {
            for (Coordinate end : line.getCoordinates()) {
                uses.merge(end.toString(), 1, Integer::sum);
                points.add(end);
            }
        }
        List<Coordinate> open = points.stream()
                .filter(point -> uses.getOrDefault(point.toString(), 0) == 1)
                .toList();
        return nearestPair(open)
                .map(pair -> "; a gap of " + Written.number(pair.get(0).distance(pair.get(1)), 2) + " mm lies between "
                        + shown(pair.get(0)) + " and " + shown(pair.get(1)))
                .orElse("");
    }

    /** The two open ends that lie nearest each other, but are not the ends of one line. */
    private Optional<List<Coordinate>> nearestPair(List<Coordinate> open) {
        double least = Double.POSITIVE_INFINITY;
        Optional<List<Coordinate>> nearest = Optional.empty();
        int looked = Math.min(open.size(), 1000);
        for (int i = 0; i < looked; i++) {
            for (int j = i + 1; j < looked; j++) {
                double distance = open.get(i).distance(open.get(j));
                String side = vector(open.get(i)) + " " + vector(open.get(j));
                if (distance < least && (loose.size() == 1 || !seen.contains(side))) {
                    least = distance;
                    nearest = Optional.of(List.of(open.get(i), open.get(j)));
                }
            }
        }
        return nearest;
    }

    private static Vector2D vector(Coordinate point) {
        return Vector2D.of(point.getX(), point.getY());
    }

    private static String shown(Coordinate point) {
        return "[" + Written.number(point.getX(), 2) + ", " + Written.number(point.getY(), 2) + "]";
    }
}
