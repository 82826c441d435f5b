package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.FittedText;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;
import org.spile.geometry.kernel.measure.Written;

/**
 * What stands beneath a view: its title, where it is cut and how large it is drawn, a scale bar, and which way is
 * forward.
 */
final class Caption {
    private static final double BELOW_MM = 7;
    private static final double LEAST_ROOM_MM = 90;
    private static final double BAR_MM = 1.5;
    /** A blank at which lines are not broken. */
    private static final String STAYS_TOGETHER = "\u00a0";

    private final String title;
    private final String cut;
    private final Scale scale;
    private final boolean bar;
    private final Optional<Side> forward;
    private final double unit;
    private final Pen pen = Layer.NOTES.pen();
    private final List<Stroke> strokes = new ArrayList<>();

    Caption(String title, String cut, Scale scale, boolean bar, Optional<Side> forward) {
        this.title = title;
        this.cut = cut;
        this.scale = scale;
        this.bar = bar;
        this.forward = forward;
        this.unit = scale.modelPerPaper();
    }

    /** The strokes beneath all that is drawn, centred under the outline. */
    List<Stroke> under(Extent outline, Extent drawn) {
        var middle = outline.middle().getX();
        var room = Math.max(LEAST_ROOM_MM, drawn.wide() / unit);
        var y = drawn.minY() - BELOW_MM * unit;
        for (var line : FittedText.lines(title, room, Text.TITLE_MM)) {
            y -= Text.TITLE_MM * unit;
            text(middle, y, line, Text.TITLE_MM);
            y -= 3 * unit;
        }
        var detail = cut.isEmpty() ? scale.says() : cut + STAYS_TOGETHER + "·" + STAYS_TOGETHER + scale.says();
        for (var line : FittedText.lines(detail, room, Text.USUAL_MM)) {
            y -= Text.USUAL_MM * unit;
            text(middle, y, line, Text.USUAL_MM);
            y -= 2 * unit;
        }
        tools(middle, y - 3 * unit);
        return List.copyOf(strokes);
    }

    private void text(double middle, double y, String says, double capMm) {
        strokes.add(new Text(
                pen.wide(capMm > Text.USUAL_MM ? 0.5 : 0.35), Vector2D.of(middle, y), says, capMm, 0, Anchor.CENTRE));
    }

    /** The scale bar and the forward arrow, side by side. */
    private void tools(double middle, double y) {
        var barLength = barLength();
        var shift = forward.isPresent() && bar ? 28 * unit : 0;
        if (bar) {
            bar(middle - shift - barLength / 2, y, barLength);
        }
        forward.ifPresent(side -> forward(Vector2D.of(middle + shift, y - 2 * unit), side));
    }

    /** The longest of 1, 2, 5 × 10ⁿ mm that is no more than 50 on paper. */
    private double barLength() {
        var most = 50 * unit;
        var decade = Math.pow(10, Math.floor(Math.log10(most)));
        for (var step : new double[] {5, 2}) {
            if (step * decade <= most) {
                return step * decade;
            }
        }
        return decade;
    }

    private void bar(double x, double y, double length) {
        var high = BAR_MM * unit;
        var parts = 5;
        strokes.add(Polyline.rectangle(pen, Extent.ofSize(x, y - high, length, high)));
        for (var i = 0; i < parts; i += 2) {
            strokes.add(new Fill(
                    pen,
                    Extent.ofSize(x + i * length / parts, y - high, length / parts, high)
                            .corners()));
        }
        var below = y - high - 1.2 * unit;
        barText(x, below, "0");
        barText(
                x + length,
                below,
                length >= 1000 ? Written.number(length / 1000, 1) + " m" : Written.number(length, 1) + " mm");
    }

    private void barText(double x, double y, String says) {
        strokes.add(new Text(pen, Vector2D.of(x, y), says, Text.SMALL_MM, 0, Anchor.TOP_CENTRE));
    }

    private void forward(Vector2D at, Side side) {
        var half = 9 * unit;
        var way = side.outward();
        var wide = pen.wide(Pen.WIDE_MM);
        var tail = at.subtract(way.multiply(half));
        var tip = at.add(way.multiply(half));
        if (!side.level()) {
            strokes.add(new Line(wide, tail, tip.subtract(way.multiply(4 * unit))));
            strokes.add(Fill.arrow(wide, tip, way, 4 * unit));
            var word = at.add(Vector2D.of(0, -2 * unit));
            strokes.add(new Text(pen, word, "forward", Text.SMALL_MM, 0, Anchor.TOP_CENTRE));
            return;
        }
        var lower = Vector2D.of(0, -half + 2 * unit);
        strokes.add(new Line(wide, tail.add(lower), tip.add(lower).subtract(way.multiply(4 * unit))));
        strokes.add(Fill.arrow(wide, tip.add(lower), way, 4 * unit));
        var word = at.add(lower).add(Vector2D.of(2 * unit, 0));
        strokes.add(new Text(pen, word, "forward", Text.SMALL_MM, 0, Anchor.MIDDLE_LEFT));
    }
}
