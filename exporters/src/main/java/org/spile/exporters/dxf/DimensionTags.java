package org.spile.exporters.dxf;

import java.io.IOException;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Span;

/**
 * A dimension's definition, after its entity's head. What it looks like stands in its block; readers that draw it anew find
 * all they need here, and keep the text where we put it.
 */
final class DimensionTags {
    private static final int ALIGNED = 1;
    private static final int ORDINATE = 6;
    /** The block belongs to this dimension alone. */
    private static final int OWN_BLOCK = 32;
    /** An ordinate along x. */
    private static final int ALONG_X = 64;
    /** The text stands where group 11 says. */
    private static final int TEXT_PLACED = 128;

    private DimensionTags() {}

    static void write(TagWriter tags, Space space, Dimensioned dimension, String block) throws IOException {
        var span = dimension.span();
        var running = span instanceof Span.Running;
        tags.put(100, "AcDbDimension")
                .put(2, block)
                .point(10, space.at(running ? span.from() : dimension.lineAt()))
                .point(11, space.at(dimension.textAt()))
                .put(70, type(span) + OWN_BLOCK + TEXT_PLACED)
                .put(71, 5)
                .put(42, span.measuredMm())
                .put(1, dimension.wording().equals(Dimensioned.VALUE) ? "" : DxfWords.multi(dimension.wording()))
                .put(3, Names.dimensionStyle(space.unit()));
        if (running) {
            tags.put(100, "AcDbOrdinateDimension")
                    .point(13, space.at(span.to()))
                    .point(14, space.at(dimension.lineAt()));
            return;
        }
        tags.put(100, "AcDbAlignedDimension").point(13, space.at(span.from())).point(14, space.at(span.to()));
        // Readers exist that take the direction from group 50 for aligned dimensions too.
        tags.put(50, span.angleDeg());
        if (span instanceof Span.Level) {
            // The marker of a rotated dimension comes after its points, unlike all others.
            tags.put(100, "AcDbRotatedDimension");
        }
    }

    private static int type(Span span) {
        if (span instanceof Span.Running running) {
            return ORDINATE + (running.level() ? ALONG_X : 0);
        }
        return span instanceof Span.Straight ? ALIGNED : 0;
    }
}
