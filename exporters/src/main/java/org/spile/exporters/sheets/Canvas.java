package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;

/** Draws outlines into a view, whole or only what lies in a window: what a window cuts off ends open at its edge. */
final class Canvas {
    private final ViewDraft draft;
    private final Optional<Extent> window;

    private Canvas(ViewDraft draft, Optional<Extent> window) {
        this.draft = draft;
        this.window = window;
    }

    static Canvas whole(ViewDraft draft) {
        return new Canvas(draft, Optional.empty());
    }

    static Canvas within(ViewDraft draft, Extent window) {
        return new Canvas(draft, Optional.of(window));
    }

    ViewDraft draft() {
        return draft;
    }

    /** Whether a point is drawn. */
    boolean shows(Vector2D point) {
        return window.map(extent -> extent.holds(new Extent(point.getX(), point.getY(), point.getX(), point.getY()), 0))
                .orElse(true);
    }

    /** Whether anything of an outline is drawn. */
    boolean shows(Outline outline) {
        return window.map(extent -> extent.overlaps(extent(outline))).orElse(true);
    }

    void draw(Pen pen, Outline outline) {
        ring(pen, outline.shell());
        outline.holes().forEach(hole -> ring(pen, hole));
    }

    void hatch(Material material, String part, Outline outline) {
        List<Outline> shown = window.map(extent -> Regions.intersection(List.of(outline), List.of(outline(extent))))
                .orElse(List.of(outline));
        for (Outline each : shown) {
            List<List<Vector2D>> loops = new ArrayList<>(List.of(each.shell()));
            loops.addAll(each.holes());
            draft.cutAreaWithHoles(material, part, loops);
        }
    }

    private void ring(Pen pen, List<Vector2D> ring) {
        if (window.isEmpty() || window.get().holds(Extent.around(ring), 0)) {
            draft.outline(pen, ring);
            return;
        }
        for (List<Vector2D> piece : WindowClip.ring(ring, window.get())) {
            draft.path(pen, piece);
        }
    }

    static Extent extent(Outline outline) {
        return new Extent(outline.minX(), outline.minY(), outline.maxX(), outline.maxY());
    }

    private static Outline outline(Extent extent) {
        return Outline.rectangle(extent.minX(), extent.minY(), extent.maxX(), extent.maxY());
    }
}
