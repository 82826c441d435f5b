package org.spile.exporters.sheets;

import java.util.HashSet;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.layout.Dimension;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;

/** Asks for dimensions round a view, each distance once: two things that end in the same places share one. */
final class DimensionsOnce {
    private static final double SAME_MM = 0.05;

    private final ViewDraft draft;
    private final Set<String> asked = new HashSet<>();

    DimensionsOnce(ViewDraft draft) {
        this.draft = draft;
    }

    /** The extent of a thing along the view, its line above or below. */
    void level(Extent extent, Side side, String part) {
        double y = side == Side.ABOVE ? extent.maxY() : extent.minY();
        level(Vector2D.of(extent.minX(), y), Vector2D.of(extent.maxX(), y), side, part);
    }

    /** The extent of a thing up the view, its line left or right. */
    void upright(Extent extent, Side side, String part) {
        double x = side == Side.RIGHT ? extent.maxX() : extent.minX();
        upright(Vector2D.of(x, extent.minY()), Vector2D.of(x, extent.maxY()), side, part);
    }

    void level(Vector2D from, Vector2D to, Side side, String part) {
        if (isNew("level", from.getX(), to.getX())) {
            draft.dimension(Dimension.level(from, to, side).of(part));
        }
    }

    void upright(Vector2D from, Vector2D to, Side side, String part) {
        if (isNew("upright", from.getY(), to.getY())) {
            draft.dimension(Dimension.upright(from, to, side).of(part));
        }
    }

    /** The distance of two places, its line through both; one along the view or up it isn't asked for again. */
    void straight(Vector2D from, Vector2D to, Side side, String part) {
        boolean upright = Math.abs(to.getX() - from.getX()) < SAME_MM;
        boolean level = Math.abs(to.getY() - from.getY()) < SAME_MM;
        boolean told = (upright && !isNew("upright", from.getY(), to.getY()))
                || (level && !isNew("level", from.getX(), to.getX()));
        if (!told) {
            draft.dimension(Dimension.straight(from, to, side).of(part));
        }
    }

    private boolean isNew(String way, double from, double to) {
        if (Math.abs(to - from) < SAME_MM) {
            return false;
        }
        return asked.add(
                way + ' ' + Math.round(Math.min(from, to) / SAME_MM) + ' ' + Math.round(Math.max(from, to) / SAME_MM));
    }
}
