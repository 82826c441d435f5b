package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Lettering;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Text;

/** The nine tables, in the order the format demands. */
final class Tables {
    private final TagWriter tags;
    private final Anchors anchors;
    private final Blocks blocks;
    private final ModelSpace space;

    Tables(TagWriter tags, Anchors anchors, Blocks blocks, ModelSpace space) {
        this.tags = tags;
        this.anchors = anchors;
        this.blocks = blocks;
        this.space = space;
    }

    /** Line widths are whole hundredths of a millimetre, from a fixed list that holds all of ISO 128-2's but 1.4's. */
    static int hundredths(double widthMm) {
        return (int) Math.round(widthMm * 100);
    }

    void write() throws IOException {
        tags.put(0, "SECTION").put(2, "TABLES");
        viewport();
        lineTypes();
        layers();
        textStyles();
        empty("VIEW");
        empty("UCS");
        applications();
        dimensionStyles();
        blockRecords();
        tags.put(0, "ENDSEC");
    }

    /** How a table's entries are written. */
    private interface Entries {
        void write(String table) throws IOException;
    }

    private void table(String name, int count, Entries entries) throws IOException {
        var handle = tags.handle();
        tags.put(0, "TABLE")
                .put(2, name)
                .put(5, handle)
                .put(330, "0")
                .put(100, "AcDbSymbolTable")
                .put(70, count);
        if (name.equals("DIMSTYLE")) {
            tags.put(100, "AcDbDimStyleTable");
        }
        entries.write(handle);
        tags.put(0, "ENDTAB");
    }

    private void empty(String name) throws IOException {
        table(name, 0, handle -> {});
    }

    /** A table entry's head; the styles of dimensions alone carry their handle in 105. */
    private TagWriter entry(String type, String table, String handle, String marker, String name) throws IOException {
        return tags.put(0, type)
                .put(type.equals("DIMSTYLE") ? 105 : 5, handle)
                .put(330, table)
                .put(100, "AcDbSymbolTableRecord")
                .put(100, marker)
                .put(2, name);
    }

    private void viewport() throws IOException {
        table("VPORT", 1, table -> {
            var extent = space.extent();
            var aspect = 1.5;
            var high = Math.max(extent.high(), extent.wide() / aspect) * 1.05;
            entry("VPORT", table, tags.handle(), "AcDbViewportTableRecord", "*Active")
                    .put(70, 0)
                    .flat(10, Vector2D.ZERO)
                    .flat(11, Vector2D.of(1, 1))
                    .flat(12, extent.middle())
                    .flat(13, Vector2D.ZERO)
                    .flat(14, Vector2D.of(10, 10))
                    .flat(15, Vector2D.of(10, 10))
                    .point(16, Vector2D.ZERO, 1)
                    .point(17, Vector2D.ZERO)
                    .put(40, high)
                    .put(41, aspect)
                    .put(42, 50)
                    .put(43, 0)
                    .put(44, 0)
                    .put(50, 0)
                    .put(51, 0);
            for (var setting : new int[][] {{71, 0}, {72, 100}, {73, 1}, {74, 3}, {75, 0}, {76, 0}, {77, 0}, {78, 0}}) {
                tags.put(setting[0], setting[1]);
            }
        });
    }

    private void lineTypes() throws IOException {
        table("LTYPE", 2 + LineType.values().length, table -> {
            lineType(table, "ByBlock", "", List.of());
            lineType(table, "ByLayer", "", List.of());
            for (var type : LineType.values()) {
                lineType(table, Names.of(type), type.words(), type.patternMm(Pen.NARROW_MM));
            }
        });
    }

    private void lineType(String table, String name, String says, List<Double> pattern) throws IOException {
        entry("LTYPE", table, tags.handle(), "AcDbLinetypeTableRecord", name)
                .put(70, 0)
                .put(3, says)
                .put(72, 65)
                .put(73, pattern.size())
                .put(40, pattern.stream().mapToDouble(Double::doubleValue).sum());
        for (var i = 0; i < pattern.size(); i++) {
            tags.put(49, i % 2 == 0 ? pattern.get(i) : -pattern.get(i)).put(74, 0);
        }
    }

    private void layers() throws IOException {
        table("LAYER", 2 + Layer.values().length, table -> {
            layer(table, "0", 7, "Continuous", Pen.NARROW_MM, true);
            for (var layer : Layer.values()) {
                layer(table, layer.words(), layer.ink().index(), Names.of(layer.type()), layer.widthMm(), true);
            }
            layer(table, Names.POINTS_LAYER, 7, "Continuous", Pen.NARROW_MM, false);
        });
    }

    private void layer(String table, String name, int ink, String type, double widthMm, boolean plotted)
            throws IOException {
        entry("LAYER", table, tags.handle(), "AcDbLayerTableRecord", name)
                .put(70, 0)
                .put(62, ink)
                .put(6, type);
        if (!plotted) {
            tags.put(290, 0);
        }
        tags.put(370, hundredths(widthMm)).put(390, anchors.plotStyle());
    }

    private void textStyles() throws IOException {
        table("STYLE", 2, table -> {
            textStyle(table, tags.handle(), "Standard");
            textStyle(table, anchors.textStyle(), Names.TEXT_STYLE);
        });
    }

    private void textStyle(String table, String handle, String name) throws IOException {
        entry("STYLE", table, handle, "AcDbTextStyleTableRecord", name)
                .put(70, 0)
                .put(40, 0)
                .put(41, 1)
                .put(50, 0)
                .put(71, 0)
                .put(42, Text.USUAL_MM)
                .put(3, Lettering.FILE)
                .put(4, "");
    }

    private void applications() throws IOException {
        table("APPID", 2, table -> {
            for (var name : List.of("ACAD", Names.APP)) {
                entry("APPID", table, tags.handle(), "AcDbRegAppTableRecord", name)
                        .put(70, 0);
            }
        });
    }

    private void dimensionStyles() throws IOException {
        var units = new ArrayList<>(space.units());
        table("DIMSTYLE", 1 + units.size(), table -> {
            dimensionStyle(table, "Standard", 1);
            for (var unit : units) {
                dimensionStyle(table, Names.dimensionStyle(unit), unit);
            }
        });
    }

    /** Sizes on paper as the layout uses them; the overall factor is the scale, so that what is measured is what is real. */
    private void dimensionStyle(String table, String name, double unit) throws IOException {
        entry("DIMSTYLE", table, tags.handle(), "AcDbDimStyleTableRecord", name)
                .put(70, 0)
                .put(40, unit)
                .put(41, 3)
                .put(42, 2)
                .put(43, 8)
                .put(44, 2)
                .put(140, Text.USUAL_MM)
                .put(144, 1)
                .put(147, 1);
        for (var setting :
                new int[][] {{73, 0}, {74, 0}, {77, 1}, {78, 8}, {172, 1}, {271, 1}, {277, 2}, {278, '.'}, {279, 2}}) {
            tags.put(setting[0], setting[1]);
        }
        tags.put(340, anchors.textStyle());
    }

    private void blockRecords() throws IOException {
        var names = blocks.all();
        table("BLOCK_RECORD", names.size(), table -> {
            for (var name : names) {
                var handle = tags.handle();
                blocks.record(name, handle);
                entry("BLOCK_RECORD", table, handle, "AcDbBlockTableRecord", name)
                        .put(340, anchors.layout(name));
            }
        });
    }
}
