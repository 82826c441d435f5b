package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Finding;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.Dimension;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.planar.Outline;

/** The general plan: every trailer that is there in the home stance, cut at a height where doors and cabinets show. */
final class PlanSheets implements Composer {
    /** Height of the cut above the lowest deck (mm); common practice for floor plans, no source. */
    static final double CUT_MM = 1200;

    @Override
    public List<SheetLayout> compose(Subject subject) {
        Scene scene = subject.home();
        if (scene.rooms().isEmpty()) {
            return List.of();
        }
        ViewDraft draft = ViewDraft.named("plan", "Plan, " + scene.stance())
                .cutAt("cut at " + Written.number(CUT_MM, 0) + " above the deck")
                .scaled(Scale.oneTo(20), Scale.oneTo(500))
                .inPlace()
                .forward(Side.RIGHT);
        Canvas canvas = Canvas.whole(draft);
        below(canvas, scene);
        cut(canvas, scene);
        rooms(canvas, scene);
        trailers(draft, scene);
        List<Finding> shown = subject.flagged();
        return List.of(SheetLayout.named("plan", subject.block("General plan, stance " + scene.stance(), "plan"))
                .view(draft)
                .panel(subject.findings(shown))
                .panel(Subject.cautions()));
    }

    private static void below(Canvas canvas, Scene scene) {
        for (Part part : scene.parts()) {
            boolean seen = part.kind() == PartKind.FIXTURE || part.kind() == PartKind.MOVER;
            if (seen
                    && part.body().bounds().maxZ() < CUT_MM
                    && part.body().bounds().minZ() >= -1) {
                part.shown()
                        .map(Shadow::of)
                        .orElse(List.of())
                        .forEach(outline -> canvas.draw(Pens.of(part).beyond(), outline));
                label(canvas, part);
            }
        }
    }

    private static void cut(Canvas canvas, Scene scene) {
        for (CutParts.CutPart each : CutParts.level(scene, CUT_MM)) {
            Part part = each.part();
            if (part.kind() == PartKind.SERVICE || part.kind() == PartKind.LINING) {
                continue;
            }
            for (Outline outline : each.outlines()) {
                Hatches.of(part).ifPresent(material -> canvas.hatch(material, part.thing(), outline));
                canvas.draw(part.kind() == PartKind.SHELL ? Pens.of(part).cut() : Pens.of(part), outline);
            }
            if (part.kind() != PartKind.SHELL) {
                label(canvas, part);
            }
        }
    }

    private static void label(Canvas canvas, Part part) {
        var box = part.body().bounds();
        canvas.draft()
                .name(
                        part.title(),
                        part.thing(),
                        Vector2D.of(box.middle().getX(), box.middle().getY()));
    }

    private static void rooms(Canvas canvas, Scene scene) {
        for (RoomSpace room : scene.rooms()) {
            canvas.draw(Layer.ROOMS.pen().of(room.path()), room.outline());
            Extent extent = Canvas.extent(room.outline());
            canvas.draft().name(room.title(), room.path(), extent.middle());
            canvas.draft()
                    .dimension(Dimension.level(extent.corner(), Vector2D.of(extent.maxX(), extent.minY()), Side.BELOW)
                            .of(room.path()));
            canvas.draft()
                    .dimension(Dimension.upright(extent.corner(), Vector2D.of(extent.minX(), extent.maxY()), Side.LEFT)
                            .of(room.path()));
        }
    }

    private static void trailers(ViewDraft draft, Scene scene) {
        for (var trailer : scene.trailers()) {
            List<Vector2D> corners = new ArrayList<>();
            for (Part part : scene.parts()) {
                if (part.kind() == PartKind.SHELL && part.trailer().equals(trailer.id())) {
                    part.shown().map(Shadow::of).orElse(List.of()).forEach(outline -> corners.addAll(outline.shell()));
                }
            }
            if (!corners.isEmpty()) {
                Extent deck = Extent.around(corners);
                Vector2D topLeft = Vector2D.of(deck.minX(), deck.maxY());
                draft.dimension(Dimension.level(topLeft, Vector2D.of(deck.maxX(), deck.maxY()), Side.ABOVE)
                        .of("trailers." + trailer.id()));
            }
        }
    }
}
