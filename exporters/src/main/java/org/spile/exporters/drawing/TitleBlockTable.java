package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The title block as a table at the lower right of the frame, and the revision table above it.
 *
 * <p>Source: ISO 7200 as commonly reproduced: at most 180 wide, its mandatory fields; scale, projection symbol, unit and
 * tolerance stand with them because a builder looks for them there.
 */
public final class TitleBlockTable {
    private static final double WIDE_MM = 180;
    private static final double ROW_MM = 10;
    private static final double HIGH_MM = 4 * ROW_MM;
    private static final double REVISION_MM = 6;
    private static final double PAD_MM = 1.5;
    /** Half of the symbol's larger circle; ISO 5456-2's proportions h, 2h, 2h with h the lettering height. */
    private static final double SYMBOL_H_MM = 3.5;

    private static final Pen EDGE = Layer.FRAME.pen().wide(0.5);
    private static final Pen RULE = Layer.FRAME.pen().wide(0.25);
    private static final Pen WORDS = Layer.FRAME.pen().wide(0.35);
    private static final Pen LABEL = Layer.FRAME.pen().wide(0.25);

    private final Sheet sheet;
    private final double left;
    private final double bottom;
    private final List<Mark> marks = new ArrayList<>();

    private TitleBlockTable(Sheet sheet) {
        this.sheet = sheet;
        this.left = sheet.paper().space().maxX() - WIDE_MM;
        this.bottom = sheet.paper().space().minY();
    }

    /**
     * The part of a sheet that the tables take.
     *
     * @param paper the sheet's size
     * @param revisions lines of the revision table
     */
    public static Extent extent(PaperSize paper, int revisions) {
        var space = paper.space();
        var high = HIGH_MM + (revisions == 0 ? 0 : (revisions + 1) * REVISION_MM);
        return Extent.ofSize(space.maxX() - WIDE_MM, space.minY(), WIDE_MM, high);
    }

    static List<Mark> of(Sheet sheet) {
        var table = new TitleBlockTable(sheet);
        table.block();
        table.revisions();
        return List.copyOf(table.marks);
    }

    private void block() {
        var block = sheet.block();
        marks.add(Polyline.rectangle(EDGE, Extent.ofSize(left, bottom, WIDE_MM, HIGH_MM)));
        rule(0, 10, 180, 10);
        rule(0, 30, 180, 30);
        rule(105, 20, 180, 20);
        cell(0, 30, 75, "owner", block.owner());
        column(75, 30, 40);
        cell(75, 30, 55, "document type", block.documentType());
        column(130, 30, 40);
        cell(130, 30, 50, "number", block.number());
        title(block);
        column(105, 10, 30);
        cell(105, 20, 40, "scale", sheet.scales());
        column(145, 10, 30);
        cell(145, 20, 18, "projection", "");
        symbol(Vector2D.of(left + 168.5, bottom + 25));
        cell(105, 10, 40, "dimensions", "mm, unless stated");
        cell(145, 10, 35, "general tolerance", block.tolerance());
        cell(0, 0, 45, "created by", block.createdBy());
        column(45, 0, 10);
        cell(45, 0, 45, "approved by", block.approvedBy());
        column(90, 0, 10);
        cell(90, 0, 28, "issued", block.issued());
        column(118, 0, 10);
        cell(118, 0, 20, "revision", block.revision());
        column(138, 0, 10);
        cell(138, 0, 22, "sheet", sheet.number() + " / " + sheet.of());
        column(160, 0, 10);
        cell(160, 0, 20, "paper", sheet.paper().name());
    }

    private void title(TitleBlock block) {
        label(0, 10, 20, "title");
        var room = 105 - 2 * PAD_MM;
        marks.add(FittedText.line(WORDS, at(PAD_MM, 17.8), block.title(), room, 7, 5, 3.5, 2.5));
        if (!block.supplement().isEmpty()) {
            marks.add(FittedText.line(WORDS, at(PAD_MM, 11.6), block.supplement(), room, 3.5, 2.5));
        }
    }

    private void cell(double x, double y, double wide, String label, String value) {
        label(x, y, ROW_MM, label);
        if (!value.isEmpty()) {
            marks.add(FittedText.line(WORDS, at(x + PAD_MM, y + 1.7), value, wide - 2 * PAD_MM, 3.5, 2.5));
        }
    }

    private void label(double x, double y, double high, String words) {
        marks.add(new Text(LABEL, at(x + PAD_MM, y + high - 0.9), words, 1.8, 0, Anchor.TOP_LEFT));
    }

    private void rule(double x1, double y1, double x2, double y2) {
        marks.add(new Line(RULE, at(x1, y1), at(x2, y2)));
    }

    private void column(double x, double y1, double y2) {
        rule(x, y1, x, y2);
    }

    private Vector2D at(double x, double y) {
        return Vector2D.of(left + x, bottom + y);
    }

    /** A truncated cone from the side and its two circles; which side the circles stand on tells the angle. */
    private void symbol(Vector2D middle) {
        var h = SYMBOL_H_MM;
        var third = sheet.projection() == Projection.THIRD_ANGLE;
        var circles = middle.add(Vector2D.of(third ? -1.5 * h : 1.5 * h, 0));
        var cone = middle.add(Vector2D.of(third ? 1.2 * h : -1.2 * h, 0));
        marks.add(new Circle(RULE.wide(0.35), circles, h));
        marks.add(new Circle(RULE.wide(0.35), circles, h / 2));
        // The small end lies left in both: towards the circles in third angle, away from them in first.
        marks.add(Polyline.outline(
                RULE.wide(0.35),
                List.of(
                        cone.add(Vector2D.of(-h, -h / 2)),
                        cone.add(Vector2D.of(h, -h)),
                        cone.add(Vector2D.of(h, h)),
                        cone.add(Vector2D.of(-h, h / 2)))));
        var axis = Layer.AXES.pen();
        marks.add(new Line(axis, middle.add(Vector2D.of(-2.6 * h, 0)), middle.add(Vector2D.of(2.6 * h, 0))));
        marks.add(new Line(axis, circles.add(Vector2D.of(0, -1.3 * h)), circles.add(Vector2D.of(0, 1.3 * h))));
    }

    private void revisions() {
        var revisions = sheet.block().revisions();
        if (revisions.isEmpty()) {
            return;
        }
        var rows = new ArrayList<Revision>(revisions);
        rows.add(new Revision("rev.", "what changed", "date", "by"));
        marks.add(Polyline.rectangle(EDGE, Extent.ofSize(left, bottom + HIGH_MM, WIDE_MM, rows.size() * REVISION_MM)));
        for (var i = 0; i < rows.size(); i++) {
            var y = HIGH_MM + i * REVISION_MM;
            var row = rows.get(i);
            if (i > 0) {
                rule(0, y, WIDE_MM, y);
            }
            marks.add(FittedText.line(WORDS, at(PAD_MM, y + 1.6), row.index(), 9, 2.5));
            marks.add(FittedText.line(WORDS, at(12 + PAD_MM, y + 1.6), row.changed(), 105, 2.5));
            marks.add(FittedText.line(WORDS, at(120 + PAD_MM, y + 1.6), row.date(), 22, 2.5));
            marks.add(FittedText.line(WORDS, at(145 + PAD_MM, y + 1.6), row.by(), 32, 2.5));
        }
        var top = HIGH_MM + rows.size() * REVISION_MM;
        column(12, HIGH_MM, top);
        column(120, HIGH_MM, top);
        column(145, HIGH_MM, top);
    }
}
