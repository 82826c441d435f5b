package org.spile.exporters;

import java.util.List;
import org.spile.exporters.drawing.SheetWriter;
import org.spile.exporters.dxf.DxfWriter;
import org.spile.exporters.svg.SvgWriter;

/** The file formats that sheets can be written in, in the order they are written. */
public final class Formats {
    private static final List<SheetWriter> ALL = List.of(new SvgWriter(), new DxfWriter());

    private Formats() {}

    /** One writer a format. */
    public static List<SheetWriter> all() {
        return ALL;
    }
}
