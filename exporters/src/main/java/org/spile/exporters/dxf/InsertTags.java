package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.Map;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Insert;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Text;

/** A block put in place, with its attributes: what a parts list can be drawn from. Attributes are not shown. */
final class InsertTags {
    private static final int INVISIBLE = 1;

    private InsertTags() {}

    static void write(TagWriter tags, Space space, Insert insert, String block) throws IOException {
        Entities.head(tags, space, "INSERT", insert.pen());
        tags.put(100, "AcDbBlockReference");
        if (!insert.attributes().isEmpty()) {
            tags.put(66, 1);
        }
        tags.put(2, block).point(10, space.at(insert.at())).put(50, insert.turnDeg());
        var part = insert.pen().part();
        ExtendedTags.of(tags, part.isEmpty() ? Map.of() : Map.of("part", part));
        if (insert.attributes().isEmpty()) {
            return;
        }
        for (var attribute : insert.attributes()) {
            Entities.head(tags, space, "ATTRIB", insert.pen());
            var text = new Text(insert.pen(), insert.at(), attribute.value(), Text.SMALL_MM, 0, Anchor.LEFT);
            TextTags.lines(tags, space, text, DxfWords.line(attribute.value()));
            tags.put(100, "AcDbAttribute").put(2, attribute.tag()).put(70, INVISIBLE);
        }
        Entities.head(tags, space, "SEQEND", insert.pen());
    }

    /** What a block says of an attribute that its inserts carry. */
    static void define(TagWriter tags, Space space, Pen pen, String tag) throws IOException {
        Entities.head(tags, space, "ATTDEF", pen);
        var text = new Text(pen, space.shift().negate(), tag, Text.SMALL_MM, 0, Anchor.LEFT);
        TextTags.lines(tags, space, text, "");
        tags.put(100, "AcDbAttributeDefinition").put(3, tag).put(2, tag).put(70, INVISIBLE);
    }
}
