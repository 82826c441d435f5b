package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.planar.Turn;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Sections through solids by a plane, as outlines in the plane's own coordinates.
 *
 * <p>Straight sides are exact (a horizontal section of a sharp prism is its outline, anything else lies within 1 µm);
 * arcs are circumscribed: the section covers the true one and stands out by no more than {@link #SAGITTA_MM}. A plane
 * that only touches cuts nothing. Lengths in mm.
 */
public final class Cut {
    /** The most by which a section's corner stands out from a true arc, in mm. */
    public static final double SAGITTA_MM = 0.05;

    private Cut() {}

    /**
     * A horizontal section.
     *
     * @param solid what is cut
     * @param zMm the plane's height in mm
     * @return outlines in x and y; none if the plane misses or only touches
     */
    public static List<Outline> horizontal(Solid solid, double zMm) {
        if (solid instanceof Prism prism && prism.roundMm() == 0) {
            boolean through = zMm > prism.bottomMm() + GeometryTolerance.CONTACT_MM
                    && zMm < prism.topMm() - GeometryTolerance.CONTACT_MM;
            return through ? prism.footprint().circumscribed(SAGITTA_MM) : List.of();
        }
        return by(solid, CutPlane.horizontal(zMm));
    }

    /**
     * A horizontal section of a body.
     *
     * @param body what is cut
     * @param zMm the plane's height in mm
     * @return outlines in x and y, the union of its solids' sections
     */
    public static List<Outline> horizontal(Body body, double zMm) {
        return united(
                body.solids().stream().map(solid -> horizontal(solid, zMm)).toList());
    }

    /**
     * The vertical plane through a point along an azimuth; its section is drawn along the azimuth and in z.
     *
     * @param through a point of the plane in plan, where the first coordinate is 0, in mm
     * @param azimuthRad direction of the first coordinate, counter-clockwise from x
     * @return the plane
     */
    public static CutPlane verticalPlane(Vector2D through, double azimuthRad) {
        return new CutPlane(
                Vector3D.of(through.getX(), through.getY(), 0),
                Vector3D.of(Turn.cos(azimuthRad), Turn.sin(azimuthRad), 0),
                Vector3D.Unit.PLUS_Z);
    }

    /**
     * A vertical section.
     *
     * @param solid what is cut
     * @param through a point of the plane in plan, where the first coordinate is 0, in mm
     * @param azimuthRad direction of the first coordinate, counter-clockwise from x
     * @return outlines in (distance along the azimuth, z)
     */
    public static List<Outline> vertical(Solid solid, Vector2D through, double azimuthRad) {
        return by(solid, verticalPlane(through, azimuthRad));
    }

    /**
     * A vertical section of a body.
     *
     * @param body what is cut
     * @param through a point of the plane in plan, where the first coordinate is 0, in mm
     * @param azimuthRad direction of the first coordinate, counter-clockwise from x
     * @return outlines in (distance along the azimuth, z), the union of its solids' sections
     */
    public static List<Outline> vertical(Body body, Vector2D through, double azimuthRad) {
        return by(body, verticalPlane(through, azimuthRad));
    }

    /**
     * A section by any plane.
     *
     * @param body what is cut
     * @param plane the plane
     * @return outlines in the plane's coordinates, the union of its solids' sections
     */
    public static List<Outline> by(Body body, CutPlane plane) {
        return united(body.solids().stream().map(solid -> by(solid, plane)).toList());
    }

    /**
     * A section by any plane.
     *
     * @param solid what is cut
     * @param plane the plane
     * @return outlines in the plane's coordinates; none if the plane misses or only touches
     */
    public static List<Outline> by(Solid solid, CutPlane plane) {
        List<List<Outline>> parts = new ArrayList<>();
        for (ConvexCore core : solid.cores()) {
            Optional<Outline> section = new ConvexSection(core, plane).outline();
            parts.add(section.stream().toList());
        }
        return united(parts);
    }

    /** One section is passed on as it is, so that it stays exact; several are joined on the grid. */
    private static List<Outline> united(List<List<Outline>> parts) {
        List<Outline> all = parts.stream().flatMap(List::stream).toList();
        return all.size() < 2 ? all : Regions.union(all);
    }
}
