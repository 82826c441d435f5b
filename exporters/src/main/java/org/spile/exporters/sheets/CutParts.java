package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.clearance.Cut;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Prism;

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

    /**
     * A cavity and the clear space a plane shows of it.
     *
     * @param path of the cavity
     * @param outline between its linings
     */
    record Clear(String path, Outline outline) {}

    private CutParts() {}

    /** The clear space of each cavity: of all that stands on its outline, what its linings leave open. */
    static List<Clear> clear(Scene scene, SectionPlane plane) {
        List<Clear> clear = new ArrayList<>();
        for (CavitySpace cavity : scene.cavities()) {
            if (cavity.trailer().equals(plane.trailer().id())) {
                open(cavity, plane).ifPresent(outline -> clear.add(new Clear(cavity.path(), outline)));
            }
        }
        return clear;
    }

    /** A slope leaves a corner open behind its lining too; the cavity is the largest open piece. */
    private static Optional<Outline> open(CavitySpace cavity, SectionPlane plane) {
        Optional<Box3> round =
                cavity.linings().stream().map(part -> part.body().bounds()).reduce(Box3::with);
        if (round.isEmpty()) {
            return Optional.empty();
        }
        Body all = Body.of(
                Prism.of(cavity.outline(), round.get().minZ(), round.get().maxZ()));
        List<Outline> closed = cavity.linings().stream()
                .flatMap(part -> cut(part.body(), plane).stream())
                .toList();
        return Regions.difference(cut(all, plane), closed).stream().max(Comparator.comparingDouble(Outline::areaMm2));
    }

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
                .map(body -> cut(body, plane))
                .filter(outlines -> !outlines.isEmpty())
                .map(outlines -> new CutPart(part, outlines));
    }

    private static List<Outline> cut(Body body, SectionPlane plane) {
        return whole(body, Cut.vertical(body, plan(plane.through()), plane.azimuthRad()));
    }

    /** Solids of one body, as the arcs of a bend, show no seam between them. */
    private static List<Outline> whole(Body body, List<Outline> outlines) {
        return body.solids().size() > 1 ? Regions.union(outlines) : outlines;
    }

    private static Vector2D plan(Vector3D point) {
        return Vector2D.of(point.getX(), point.getY());
    }

    /** What a level plane cuts of every part. */
    static List<CutPart> level(Scene scene, double zMm) {
        List<CutPart> cut = new ArrayList<>();
        for (Part part : scene.parts()) {
            part.shown()
                    .map(body -> whole(body, Cut.horizontal(body, zMm)))
                    .filter(outlines -> !outlines.isEmpty())
                    .ifPresent(outlines -> cut.add(new CutPart(part, outlines)));
        }
        return cut;
    }
}
