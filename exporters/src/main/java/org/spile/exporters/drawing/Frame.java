package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The sheet's frame: drawing space, centring marks, reference grid.
 *
 * <p>Source: ISO 5457 as commonly reproduced: frame line 0.7, centring marks 0.7 reaching 10 past the frame, fields of 50
 * counted from the centring marks, band 5 wide, lettering 3.5, lines 0.35; on A4 at the top and right only.
 */
final class Frame {
    private static final double FIELD_MM = 50;
    private static final double BAND_MM = 5;
    /** How far a centring mark reaches past the frame. The lower one stops there, before the title block's text. */
    private static final double CENTRING_MM = 5;

    private static final String ROWS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final PaperSize paper;
    private final Extent space;
    private final Pen line = Layer.FRAME.pen().wide(0.35);
    private final List<Mark> marks = new ArrayList<>();

    private Frame(PaperSize paper) {
        this.paper = paper;
        this.space = paper.space();
    }

    static List<Mark> of(PaperSize paper) {
        var frame = new Frame(paper);
        frame.marks.add(Polyline.rectangle(Layer.FRAME.pen().cut(), frame.space));
        frame.centring();
        frame.columns();
        frame.rows();
        return List.copyOf(frame.marks);
    }

    private void centring() {
        var pen = Layer.FRAME.pen().cut();
        var x = paper.wideMm() / 2.0;
        var y = paper.highMm() / 2.0;
        marks.add(Line.of(pen, x, space.maxY() + BAND_MM, x, space.maxY() - CENTRING_MM));
        marks.add(Line.of(pen, x, space.minY() - BAND_MM, x, space.minY()));
        marks.add(Line.of(pen, space.minX() - BAND_MM, y, space.minX() + CENTRING_MM, y));
        marks.add(Line.of(pen, space.maxX() + BAND_MM, y, space.maxX() - CENTRING_MM, y));
    }

    private void columns() {
        var first = paper.wideMm() / 2.0 - paper.columns() / 2.0 * FIELD_MM;
        for (var i = 0; i < paper.columns(); i++) {
            var from = Math.max(space.minX(), first + i * FIELD_MM);
            var to = Math.min(space.maxX(), first + (i + 1) * FIELD_MM);
            var says = Integer.toString(i + 1);
            edge(from, to, true, space.maxY(), says);
            if (paper != PaperSize.A4) {
                edge(from, to, true, space.minY() - BAND_MM, says);
            }
        }
    }

    private void rows() {
        var first = paper.highMm() / 2.0 + paper.rows() / 2.0 * FIELD_MM;
        for (var i = 0; i < paper.rows(); i++) {
            var from = Math.max(space.minY(), first - (i + 1) * FIELD_MM);
            var to = Math.min(space.maxY(), first - i * FIELD_MM);
            var says = ROWS.substring(i, i + 1);
            edge(from, to, false, space.maxX(), says);
            if (paper != PaperSize.A4) {
                edge(from, to, false, space.minX() - BAND_MM, says);
            }
        }
    }

    /** One field of the grid: its letter, and the line at its end if another field follows there. */
    private void edge(double from, double to, boolean level, double band, String says) {
        if (to - from < 2 * BAND_MM) {
            return;
        }
        var middle = (from + to) / 2;
        var high = BAND_MM / 2 + band;
        var at = level ? Vector2D.of(middle, high) : Vector2D.of(high, middle);
        marks.add(new Text(Layer.FRAME.pen().wide(0.35), at, says, Text.USUAL_MM, 0, Anchor.MIDDLE));
        var last = level ? space.maxX() : space.maxY();
        if (to < last) {
            marks.add(
                    level ? Line.of(line, to, band, to, band + BAND_MM) : Line.of(line, band, to, band + BAND_MM, to));
        }
    }
}
