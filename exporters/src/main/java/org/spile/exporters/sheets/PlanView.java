package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.layout.RunningDimension;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Scene.TrailerPlace;
import org.spile.geometry.kernel.planar.Outline;

/** What a level cut shows of some trailers: walls and doors cut, cabinets below, rooms with their names and sizes. */
final class PlanView {
    /** Height of the cut above the deck (mm); common practice for floor plans, no source. */
    static final double CUT_MM = 1200;

    private final Scene scene;
    private final List<TrailerPlace> trailers;
    private final Canvas canvas;
    private final DimensionsOnce dimensions;

    PlanView(Scene scene, List<TrailerPlace> trailers, ViewDraft draft) {
        this.scene = scene;
        this.trailers = List.copyOf(trailers);
        this.canvas = Canvas.whole(draft);
        this.dimensions = new DimensionsOnce(draft);
    }

    /** Walls, doors, cabinets and rooms, without sizes. */
    PlanView draw() {
        below();
        cut();
        rooms();
        return this;
    }

    /** Names of what stands in the rooms. */
    PlanView names() {
        for (Part part : here()) {
            boolean below = below(part);
            boolean cutDoor = part.kind() == PartKind.MOVER && crosses(part);
            if (below || cutDoor || (part.kind() == PartKind.FIXTURE && crosses(part))) {
                var middle = part.body().bounds().middle();
                canvas.draft().name(part.title(), part.thing(), Vector2D.of(middle.getX(), middle.getY()));
            }
        }
        return this;
    }

    /** Each trailer's outside, along and across. */
    PlanView outsides() {
        for (TrailerPlace trailer : trailers) {
            outside(trailer).ifPresent(extent -> {
                dimensions.level(extent, Side.ABOVE, "trailers." + trailer.id());
                dimensions.upright(extent, Side.LEFT, "trailers." + trailer.id());
            });
        }
        return this;
    }

    /** Each room's clear sizes, and where doors and windows are along the outside. */
    PlanView insides() {
        for (RoomSpace room : scene.rooms()) {
            if (isHere(room.trailer())) {
                Extent extent = Canvas.extent(room.outline());
                dimensions.level(extent, Side.BELOW, room.path());
                dimensions.upright(extent, Side.LEFT, room.path());
            }
        }
        for (TrailerPlace trailer : trailers) {
            outside(trailer).ifPresent(extent -> openings(trailer, extent));
        }
        return this;
    }

    /** Running dimensions of every leaf's edges, from the outside corner that the trailer's tape hooks on to. */
    private void openings(TrailerPlace trailer, Extent outside) {
        List<Vector2D> along = new ArrayList<>();
        List<Vector2D> across = new ArrayList<>();
        for (Part part : scene.parts()) {
            if (part.kind() != PartKind.MOVER
                    || !part.thing().startsWith("rooms.")
                    || !part.trailer().equals(trailer.id())) {
                continue;
            }
            var box = part.body().bounds();
            if (box.maxX() - box.minX() > box.maxY() - box.minY()) {
                along.add(Vector2D.of(box.minX(), outside.minY()));
                along.add(Vector2D.of(box.maxX(), outside.minY()));
            } else {
                across.add(Vector2D.of(outside.maxX(), box.minY()));
                across.add(Vector2D.of(outside.maxX(), box.maxY()));
            }
        }
        boolean turned = forward(trailer).getX() < 0;
        double rear = turned ? outside.maxX() : outside.minX();
        double right = turned ? outside.maxY() : outside.minY();
        run(Vector2D.of(rear, outside.minY()), along, Side.BELOW, trailer);
        run(Vector2D.of(outside.maxX(), right), across, Side.RIGHT, trailer);
    }

    private void run(Vector2D datum, List<Vector2D> features, Side side, TrailerPlace trailer) {
        if (!features.isEmpty()) {
            canvas.draft().running(new RunningDimension(datum, features, side, "trailers." + trailer.id()));
        }
    }

    /** Where sections are cut. */
    PlanView sections(List<SectionPlaces.Place> places) {
        for (int i = 0; i < places.size(); i++) {
            SectionPlane plane = places.get(i).plane();
            if (isHere(plane.trailer().id())) {
                String letter = SectionLetters.letter(i);
                outside(plane.trailer()).ifPresent(extent -> cuttingPlane(plane, letter, extent));
            }
        }
        return this;
    }

    private void cuttingPlane(SectionPlane plane, String letter, Extent reach) {
        Vector3D through = plane.through();
        Vector3D along = plane.along();
        Vector3D looks = plane.looks();
        boolean upright = Math.abs(along.getY()) > Math.abs(along.getX());
        Vector2D from = upright ? Vector2D.of(through.getX(), reach.minY()) : Vector2D.of(reach.minX(), through.getY());
        Vector2D to = upright ? Vector2D.of(through.getX(), reach.maxY()) : Vector2D.of(reach.maxX(), through.getY());
        canvas.draft().cuttingPlane(letter, from, to, upright ? level(looks) : upward(looks));
    }

    private static Side level(Vector3D looks) {
        return looks.getX() > 0 ? Side.RIGHT : Side.LEFT;
    }

    private static Side upward(Vector3D looks) {
        return looks.getY() > 0 ? Side.ABOVE : Side.BELOW;
    }

    private void below() {
        for (Part part : here()) {
            if (below(part)) {
                part.shown()
                        .map(Shadow::of)
                        .orElse(List.of())
                        .forEach(outline -> canvas.draw(Pens.of(part).beyond(), outline));
            }
        }
    }

    private void cut() {
        for (CutParts.CutPart each : CutParts.level(scene, CUT_MM)) {
            Part part = each.part();
            if (!isHere(part.trailer()) || part.kind() == PartKind.SERVICE || part.kind() == PartKind.LINING) {
                continue;
            }
            for (Outline outline : each.outlines()) {
                Hatches.of(part).ifPresent(material -> canvas.hatch(material, part.thing(), outline));
                canvas.draw(part.kind() == PartKind.SHELL ? Pens.of(part).cut() : Pens.of(part), outline);
            }
        }
    }

    private void rooms() {
        for (RoomSpace room : scene.rooms()) {
            if (isHere(room.trailer())) {
                canvas.draw(Layer.ROOMS.pen().of(room.path()), room.outline());
                canvas.draft()
                        .name(
                                room.title(),
                                room.path(),
                                Canvas.extent(room.outline()).middle());
            }
        }
    }

    /** What a trailer's walls enclose; without walls, its rooms. */
    private Optional<Extent> outside(TrailerPlace trailer) {
        List<Vector2D> corners = new ArrayList<>();
        for (Part part : scene.parts()) {
            if (part.kind() == PartKind.SHELL && part.trailer().equals(trailer.id())) {
                part.shown().map(Shadow::of).orElse(List.of()).forEach(outline -> corners.addAll(outline.shell()));
            }
        }
        if (corners.isEmpty()) {
            scene.rooms().stream()
                    .filter(room -> room.trailer().equals(trailer.id()))
                    .forEach(room -> corners.addAll(room.outline().shell()));
        }
        return corners.isEmpty() ? Optional.empty() : Optional.of(Extent.around(corners));
    }

    private static boolean below(Part part) {
        var box = part.body().bounds();
        boolean stands = part.kind() == PartKind.FIXTURE || part.kind() == PartKind.MOVER;
        return stands && box.maxZ() < CUT_MM && box.minZ() >= -1;
    }

    private static boolean crosses(Part part) {
        var box = part.body().bounds();
        return box.minZ() < CUT_MM && box.maxZ() > CUT_MM;
    }

    private List<Part> here() {
        return scene.parts().stream().filter(part -> isHere(part.trailer())).toList();
    }

    private boolean isHere(String trailer) {
        return trailers.stream().anyMatch(each -> each.id().equals(trailer));
    }

    static Vector3D forward(TrailerPlace trailer) {
        return trailer.toSite().applyDirection(Vector3D.of(1, 0, 0));
    }
}
