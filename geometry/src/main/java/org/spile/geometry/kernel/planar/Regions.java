package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Area operations on lists of outlines, each list standing for the union of its members.
 *
 * <p>Results lie on the 1 µm grid, have no corners on straight lines, do not overlap and come in a fixed order. Where
 * a result would have no area, the list is empty. Lengths in mm, areas in mm². Overlay by the snap-rounding overlay of
 * the JTS Topology Suite on that grid, which is robust for every valid input.
 */
public final class Regions {
    /** The most by which a grown shape's corner stands out from the true arc, in mm; always on the outer side. */
    public static final double ARC_SAGITTA_MM = 0.01;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Regions() {}

    /**
     * What lies in at least one outline.
     *
     * @param outlines any outlines
     * @return the union
     */
    public static List<Outline> union(List<Outline> outlines) {
        return JtsShapes.outlines(united(outlines));
    }

    /**
     * What lies in both lists.
     *
     * @param first any outlines
     * @param second any outlines
     * @return the intersection
     */
    public static List<Outline> intersection(List<Outline> first, List<Outline> second) {
        return overlay(first, second, OverlayNG.INTERSECTION);
    }

    /**
     * What lies in the first list and not in the second.
     *
     * @param first any outlines
     * @param second outlines to take away
     * @return the difference
     */
    public static List<Outline> difference(List<Outline> first, List<Outline> second) {
        return overlay(first, second, OverlayNG.DIFFERENCE);
    }

    /**
     * Grows in the Euclidean sense: all points within a distance. Outward corners become arcs, drawn as tangents.
     *
     * @param outlines any outlines
     * @param growthMm distance in mm, not negative
     * @return outlines that cover the true growth and stand out from it by no more than {@link #ARC_SAGITTA_MM}
     * @throws IllegalArgumentException if the growth is negative or out of range
     */
    public static List<Outline> grown(List<Outline> outlines, double growthMm) {
        return Growth.round(outlines, GeometryTolerance.notNegative("growth", growthMm), ARC_SAGITTA_MM);
    }

    /**
     * Grows with square corners: every side moves out and neighbours meet in a mitre, as insulation board does.
     *
     * @param outlines any outlines
     * @param growthMm distance in mm, not negative
     * @return the grown outlines
     * @throws IllegalArgumentException if the growth is negative or out of range, or an outward corner is sharper than
     *     10°
     */
    public static List<Outline> grownSquare(List<Outline> outlines, double growthMm) {
        return Growth.square(outlines, GeometryTolerance.notNegative("growth", growthMm));
    }

    /**
     * Shrinks in the Euclidean sense: all points that keep a distance from the boundary.
     *
     * @param outlines any outlines
     * @param insetMm distance in mm, not negative
     * @return outlines within the true inset, short of it by no more than {@link #ARC_SAGITTA_MM}
     * @throws IllegalArgumentException if the inset is negative or out of range
     */
    public static List<Outline> inset(List<Outline> outlines, double insetMm) {
        double radius = GeometryTolerance.notNegative("inset", insetMm);
        List<Outline> joined = union(outlines);
        if (radius == 0) {
            return joined;
        }
        List<Outline> bands = joined.stream()
                .flatMap(o -> Growth.band(o, radius, ARC_SAGITTA_MM).stream())
                .toList();
        return difference(joined, bands);
    }

    /**
     * The area of a union.
     *
     * @param outlines any outlines
     * @return mm², overlaps counted once
     */
    public static double areaMm2(List<Outline> outlines) {
        return united(outlines).getArea();
    }

    private static List<Outline> overlay(List<Outline> first, List<Outline> second, int operation) {
        Geometry result = OverlayNG.overlay(united(first), united(second), operation, JtsShapes.GRID);
        return JtsShapes.outlines(result);
    }

    private static Geometry united(List<Outline> outlines) {
        List<Geometry> polygons = new ArrayList<>();
        outlines.forEach(outline -> polygons.add(JtsShapes.polygon(outline)));
        Geometry union = UnaryUnionNG.union(polygons, FACTORY, JtsShapes.GRID);
        return union == null ? FACTORY.createPolygon() : union;
    }
}
