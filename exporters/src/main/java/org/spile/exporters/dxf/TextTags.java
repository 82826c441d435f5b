package org.spile.exporters.dxf;

import java.io.IOException;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Text;

/** A single line of text, after its entity's head. */
final class TextTags {
    private TextTags() {}

    static void write(TagWriter tags, Space space, Text text) throws IOException {
        lines(tags, space, text, DxfWords.line(text.says()));
        tags.put(100, "AcDbText");
        if (up(text.anchor()) != 0) {
            tags.put(73, up(text.anchor()));
        }
    }

    /** The first part, which attributes share. If either alignment is not 0 the second point is the one that counts. */
    static void lines(TagWriter tags, Space space, Text text, String words) throws IOException {
        var at = space.at(text.at());
        tags.put(100, "AcDbText")
                .point(10, start(space, text))
                .put(40, text.capMm() * space.unit())
                .put(1, words)
                .put(50, text.angleDeg())
                .put(7, Names.TEXT_STYLE);
        if (across(text.anchor()) != 0 || up(text.anchor()) != 0) {
            tags.put(72, across(text.anchor())).point(11, at);
        }
    }

    /** Left end of the baseline, by the measured width. */
    private static Vector2D start(Space space, Text text) {
        var angle = Math.toRadians(text.angleDeg());
        var along = Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle));
        var back = text.anchor().across() * text.widthMm() * space.unit();
        return space.at(text.baseline(space.unit())).subtract(along.multiply(back));
    }

    static int across(Anchor anchor) {
        return switch (anchor) {
            case LEFT, MIDDLE_LEFT, TOP_LEFT -> 0;
            case CENTRE, MIDDLE, TOP_CENTRE -> 1;
            case RIGHT, MIDDLE_RIGHT -> 2;
        };
    }

    static int up(Anchor anchor) {
        return switch (anchor) {
            case LEFT, CENTRE, RIGHT -> 0;
            case MIDDLE_LEFT, MIDDLE, MIDDLE_RIGHT -> 2;
            case TOP_LEFT, TOP_CENTRE -> 3;
        };
    }
}
