package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * Cuts an outline into convex outlines: ear-clipped triangles whose shared diagonals are then taken out again where
 * the joined piece stays convex (Hertel, Mehlhorn 1983: at most four times the least number of pieces).
 */
public final class ConvexParts {
    private ConvexParts() {}

    /**
     * Cuts an outline.
     *
     * @param outline any outline, holes allowed
     * @return convex outlines without overlap, whose union is the outline; the outline itself if it is convex
     */
    public static List<Outline> of(Outline outline) {
        if (outline.isConvex()) {
            return List.of(outline);
        }
        List<List<Vector2D>> parts = triangles(outline);
        while (joinTwo(parts)) {
            // each round takes one diagonal out
        }
        return parts.stream().map(part -> Outline.trusted(part, List.of())).toList();
    }

    private static List<List<Vector2D>> triangles(Outline outline) {
        Geometry cut = PolygonTriangulator.triangulate(JtsShapes.polygon(outline));
        List<List<Vector2D>> triangles = new ArrayList<>();
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            Coordinate[] c = ((Polygon) cut.getGeometryN(i)).getExteriorRing().getCoordinates();
            List<Vector2D> ring = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                ring.add(Vector2D.of(c[k].x, c[k].y));
            }
            double area = OutlineCheck.signedAreaMm2(ring);
            if (area < 0) {
                java.util.Collections.reverse(ring);
            }
            if (area != 0) {
                triangles.add(ring);
            }
        }
        return triangles;
    }

    private static boolean joinTwo(List<List<Vector2D>> parts) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                List<Vector2D> joined = joined(parts.get(i), parts.get(j));
                if (joined != null) {
                    parts.set(i, joined);
                    parts.remove(j);
                    return true;
                }
            }
        }
        return false;
    }

    /** Two convex rings joined over the side they share, or null if they share none or the join is not convex. */
    private static List<Vector2D> joined(List<Vector2D> first, List<Vector2D> second) {
        for (int i = 0; i < first.size(); i++) {
            Vector2D a = first.get(i);
            Vector2D b = first.get((i + 1) % first.size());
            int j = second.indexOf(b);
            if (j >= 0 && second.get((j + 1) % second.size()).equals(a)) {
                List<Vector2D> ring = new ArrayList<>();
                for (int k = 1; k <= first.size(); k++) {
                    ring.add(first.get((i + k) % first.size()));
                }
                for (int k = 2; k < second.size(); k++) {
                    ring.add(second.get((j + k) % second.size()));
                }
                return Rings.of(ring, List.of()).convex() ? ring : null;
            }
        }
        return null;
    }
}
