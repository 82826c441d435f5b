package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.FittedText;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Lettering;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Text;

/** Panels and the hatching legend as rows, to be stacked into columns. */
final class PanelRows {
    private static final double CAP_MM = Text.SMALL_MM;
    private static final double LINE_MM = CAP_MM * 1.7;
    private static final double HEADING_MM = 8;
    private static final double AFTER_MM = 3;
    private static final double SMALL_PANEL_MM = 45;
    private static final int SMALL_ITEM_LINES = 10;
    private static final double SWATCH_WIDE_MM = 14;
    private static final double SWATCH_HIGH_MM = 6;

    private final Pen pen = Layer.NOTES.pen();
    private final double wide;
    private final List<Row> rows = new ArrayList<>();

    private PanelRows(double wide) {
        this.wide = wide;
    }

    /** What a row draws once its top left corner is known. */
    interface Picture {
        List<Mark> at(Vector2D topLeft);
    }

    /**
     * One row.
     *
     * @param highMm its height
     * @param staysWithNext whether it must not end a column
     * @param picture its marks
     */
    record Row(double highMm, boolean staysWithNext, Picture picture) {}

    /**
     * Rows of a width.
     *
     * @param panels in order
     * @param materials whose hatching the legend explains
     * @param wide room (mm)
     */
    static List<Row> of(List<Panel> panels, List<Material> materials, double wide) {
        var rows = new PanelRows(wide);
        panels.forEach(panel -> rows.together(() -> rows.panel(panel)));
        rows.together(() -> rows.legend(materials));
        return List.copyOf(rows.rows);
    }

    /** Keeps what is added in one column if it is small. */
    private void together(Runnable adding) {
        var first = rows.size();
        adding.run();
        var high = rows.subList(first, rows.size()).stream()
                .mapToDouble(Row::highMm)
                .sum();
        if (high <= SMALL_PANEL_MM) {
            for (var i = first; i < rows.size() - 1; i++) {
                rows.set(i, new Row(rows.get(i).highMm(), true, rows.get(i).picture()));
            }
        }
    }

    private void panel(Panel panel) {
        heading(panel.heading());
        var indent = panel.items().stream()
                        .mapToDouble(item -> Lettering.shipped().widthMm(item.label(), CAP_MM))
                        .max()
                        .orElse(0)
                + 2;
        var inset = indent > 2 ? indent : 0;
        for (var item : panel.items()) {
            var lines = FittedText.lines(item.says(), wide - inset, CAP_MM);
            for (var i = 0; i < lines.size(); i++) {
                var label = i == 0 ? item.label() : "";
                var line = lines.get(i);
                rows.add(new Row(
                        LINE_MM,
                        i + 1 < lines.size() && lines.size() <= SMALL_ITEM_LINES,
                        top -> words(top, label, inset, line)));
            }
            rows.add(new Row(0.8, false, top -> List.of()));
        }
        rows.add(new Row(AFTER_MM, false, top -> List.of()));
    }

    private void heading(String words) {
        var fitted = FittedText.lines(words, wide, Text.USUAL_MM);
        for (var line : fitted) {
            rows.add(new Row(
                    HEADING_MM - 1.5,
                    true,
                    top -> List.of(new Text(
                            pen.wide(0.5), top.add(Vector2D.of(0, -0.8)), line, Text.USUAL_MM, 0, Anchor.TOP_LEFT))));
        }
        rows.add(new Row(1.5, true, top -> List.of()));
    }

    private List<Mark> words(Vector2D top, String label, double inset, String line) {
        var marks = new ArrayList<Mark>();
        if (!label.isEmpty()) {
            marks.add(new Text(pen, top, label, CAP_MM, 0, Anchor.TOP_LEFT));
        }
        marks.add(new Text(pen, top.add(Vector2D.of(inset, 0)), line, CAP_MM, 0, Anchor.TOP_LEFT));
        return marks;
    }

    private void legend(List<Material> materials) {
        if (materials.isEmpty()) {
            return;
        }
        heading("hatching");
        for (var material : materials) {
            rows.add(new Row(SWATCH_HIGH_MM + 2, false, top -> swatch(top, material)));
        }
    }

    private List<Mark> swatch(Vector2D top, Material material) {
        var box = Extent.ofSize(top.getX(), top.getY() - SWATCH_HIGH_MM, SWATCH_WIDE_MM, SWATCH_HIGH_MM);
        var edge = Polyline.rectangle(Layer.LININGS.pen(), box);
        var words = Vector2D.of(box.maxX() + 2, box.middle().getY());
        return List.of(
                Hatch.of(material, "", edge),
                edge,
                new Text(pen, words, material.title(), CAP_MM, 0, Anchor.MIDDLE_LEFT));
    }
}
