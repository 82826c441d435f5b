package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Text;

/** The sections of header variables and of classes. Only variables that R2000 knows: strict readers give up on others. */
final class Header {
    private final TagWriter tags;
    private final ModelSpace space;
    private final long last;

    /**
     * A header.
     *
     * @param tags where to
     * @param space what is drawn
     * @param last the highest handle in the file
     */
    Header(TagWriter tags, ModelSpace space, long last) {
        this.tags = tags;
        this.space = space;
        this.last = last;
    }

    void write() throws IOException {
        var extent = space.extent();
        var unit = space.units().isEmpty() ? 1 : space.units().get(0);
        tags.put(0, "SECTION").put(2, "HEADER");
        name("$ACADVER").put(1, "AC1015");
        name("$DWGCODEPAGE").put(3, "ANSI_1252");
        name("$INSBASE").point(10, Vector2D.ZERO);
        name("$EXTMIN").point(10, extent.corner());
        name("$EXTMAX").point(10, Vector2D.of(extent.maxX(), extent.maxY()));
        name("$LIMMIN").flat(10, extent.corner());
        name("$LIMMAX").flat(10, Vector2D.of(extent.maxX(), extent.maxY()));
        name("$LTSCALE").put(40, 1);
        name("$TEXTSIZE").put(40, Text.USUAL_MM * unit);
        name("$TEXTSTYLE").put(7, Names.TEXT_STYLE);
        name("$CLAYER").put(8, "0");
        name("$DIMSTYLE").put(2, space.units().isEmpty() ? "Standard" : Names.dimensionStyle(unit));
        name("$DIMSCALE").put(40, unit);
        name("$LUNITS").put(70, 2);
        name("$LUPREC").put(70, 1);
        name("$AUNITS").put(70, 0);
        name("$MEASUREMENT").put(70, 1);
        name("$INSUNITS").put(70, 4);
        name("$PSLTSCALE").put(70, 0);
        name("$TILEMODE").put(70, 1);
        name("$HANDSEED").put(5, Long.toString(last + 1, 16).toUpperCase(Locale.ROOT));
        tags.put(0, "ENDSEC");
        tags.put(0, "SECTION").put(2, "CLASSES");
        type("ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
        type("ACDBPLACEHOLDER", "AcDbPlaceHolder");
        type("LAYOUT", "AcDbLayout");
        tags.put(0, "ENDSEC");
    }

    private TagWriter name(String variable) throws IOException {
        return tags.put(9, variable);
    }

    private void type(String record, String name) throws IOException {
        tags.put(0, "CLASS")
                .put(1, record)
                .put(2, name)
                .put(3, "ObjectDBX Classes")
                .put(90, 0)
                .put(280, 0)
                .put(281, 0);
    }
}
