package org.spile.exporters.sheets;

import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Pen;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;

/** Which pen draws which kind of part. */
final class Pens {
    private Pens() {}

    static Pen of(Part part) {
        return layer(part.kind()).pen().of(part.thing());
    }

    static Layer layer(PartKind kind) {
        return switch (kind) {
            case UNIT -> Layer.UNITS;
            case SERVICE -> Layer.SERVICE_ROOM;
            case DUCT -> Layer.DUCTS;
            case LINE -> Layer.SERVICES;
            case TERMINAL -> Layer.TERMINALS;
            case FIXTURE -> Layer.FIXTURES;
            case MOVER -> Layer.MOVERS;
            case LINING -> Layer.LININGS;
            case SHELL -> Layer.STRUCTURE;
        };
    }
}
