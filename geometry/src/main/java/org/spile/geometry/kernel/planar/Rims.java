package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Polygons of JTS for outlines and for bare rings, and their union on the grid. */
final class Rims {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Rims() {}

    static List<Polygon> of(List<Outline> outlines) {
        return outlines.stream().map(JtsShapes::polygon).toList();
    }

    static List<Polygon> rings(List<List<Vector2D>> rings) {
        List<Polygon> polygons = new ArrayList<>();
        for (List<Vector2D> ring : rings) {
            if (ring.size() > 2) {
                polygons.add(JtsShapes.polygon(ring, List.of()));
            }
        }
        return polygons;
    }

    static Geometry union(List<Polygon> polygons) {
        Geometry union = UnaryUnionNG.union(new ArrayList<Geometry>(polygons), FACTORY, JtsShapes.GRID);
        return union == null ? FACTORY.createPolygon() : union;
    }

    /** The place on the grid next to one. */
    static Vector2D onGrid(double x, double y) {
        return Vector2D.of(JtsShapes.GRID.makePrecise(x) + 0.0, JtsShapes.GRID.makePrecise(y) + 0.0);
    }
}
