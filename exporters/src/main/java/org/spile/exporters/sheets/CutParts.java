package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.clearance.Cut;
import org.spile.geometry.kernel.planar.Outline;

/** The parts of a scene that a plane goes through, laid flat. */
final class CutParts {
    /**
     * One part and what the plane shows of it.
     *
     * @param part the part
     * @param outlines at least one
     */
    record CutPart(Part part, List<Outline> outlines) {
        CutPart {
            outlines = List.copyOf(outlines);
        }
    }

    private CutParts() {}

    /** What an upright plane cuts of the trailer it goes through. */
    static List<CutPart> upright(Scene scene, SectionPlane plane) {
        List<CutPart> cut = new ArrayList<>();
        for (Part part : scene.parts()) {
            if (part.trailer().equals(plane.trailer().id())) {
                of(part, plane).ifPresent(cut::add);
            }
        }
        return cut;
    }

    /** What an upright plane cuts of one part. */
    static Optional<CutPart> of(Part part, SectionPlane plane) {
        return part.shown()
                .map(body -> Cut.vertical(body, plan(plane.through()), plane.azimuthRad()))
                .filter(outlines -> !outlines.isEmpty())
                .map(outlines -> new CutPart(part, outlines));
    }

    private static Vector2D plan(Vector3D point) {
        return Vector2D.of(point.getX(), point.getY());
    }

    /** What a level plane cuts of every part. */
    static List<CutPart> level(Scene scene, double zMm) {
        List<CutPart> cut = new ArrayList<>();
        for (Part part : scene.parts()) {
            part.shown()
                    .map(body -> Cut.horizontal(body, zMm))
                    .filter(outlines -> !outlines.isEmpty())
                    .ifPresent(outlines -> cut.add(new CutPart(part, outlines)));
        }
        return cut;
    }
}
