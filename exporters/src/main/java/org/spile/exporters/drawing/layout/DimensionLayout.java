package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Lettering;
import org.spile.exporters.drawing.Text;

/**
 * Finds a place for every dimension of a view, by measured text boxes: no text on another text, on an arrow, on a wide
 * line or on any dimension's line. Shorter dimensions go inside, longer ones outside, the first row 10 from the outline,
 * then 8 apart (ISO 129-1 with lettering of 3.5).
 *
 * <p>Every dimension is placed. Rows further out are tried until one is free, and beyond all that is drawn one always is;
 * only extension lines must then pass what lies inside, and they are interrupted at texts.
 */
final class DimensionLayout {
    static final double FIRST_ROW_MM = 10;
    static final double ROW_MM = 8;
    /** Ends closer than this show the same stretch. */
    private static final double SAME_MM = 0.01;

    private final Ground ground;
    private final Extent outline;
    private final double unit;

    /**
     * A layout for one view.
     *
     * @param ground what is drawn already; the dimensions are added to it
     * @param outline what the rows stand outside of (model mm)
     * @param unit drawing units for one millimetre on paper
     */
    DimensionLayout(Ground ground, Extent outline, double unit) {
        this.ground = ground;
        this.outline = outline;
        this.unit = unit;
    }

    /** Places each of them, but none twice; the answer is in the order of asking. */
    List<Dimensioned> place(List<Dimension> all) {
        var asked = onceEach(all);
        var order = new ArrayList<Integer>();
        for (var i = 0; i < asked.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer>comparingInt(i -> asked.get(i).close() ? 0 : 1)
                .thenComparingDouble(i -> asked.get(i).span().measuredMm())
                .thenComparingInt(i -> i));
        var placed = new Dimensioned[asked.size()];
        for (var i : order) {
            placed[i] = place(asked.get(i));
        }
        return List.of(placed);
    }

    /** What a row outside the view would show twice: the same stretch on the same side, in the same words. */
    private record Shown(Side side, double angleDeg, long low, long high, String wording) {}

    private List<Dimension> onceEach(List<Dimension> all) {
        var shown = new LinkedHashSet<Shown>();
        return all.stream()
                .filter(dimension -> {
                    var frame = DimensionFrame.of(dimension, outline);
                    return dimension.close()
                            || shown.add(new Shown(
                                    dimension.side(),
                                    frame.angleDeg(),
                                    Math.round(frame.low() / SAME_MM),
                                    Math.round(frame.high() / SAME_MM),
                                    dimension.wording()));
                })
                .toList();
    }

    private Dimensioned place(Dimension dimension) {
        var frame = DimensionFrame.of(dimension, outline);
        var says = Dimensioned.says(dimension.wording(), dimension.span().measuredMm());
        var wide = Lettering.shipped().widthMm(says, Text.USUAL_MM) * unit;
        var places = DimensionTry.places(frame, wide, unit);
        for (var care : DimensionTry.Care.values()) {
            var rows = care == DimensionTry.Care.BROKEN_AT_TEXTS ? Integer.MAX_VALUE : rowsWorthTrying(dimension);
            for (var k = 0; k < rows; k++) {
                var row = frame.base() + rowMm(dimension, k) * unit;
                for (var place : places) {
                    var attempt = new DimensionTry(dimension, frame, unit, row, place);
                    if (attempt.fits(ground, care)) {
                        return attempt.onto(ground);
                    }
                }
            }
        }
        throw new IllegalStateException("no row is free for " + dimension);
    }

    /** Near dimensions give up sooner: a crossed line is better than a line far from what it measures. */
    private static int rowsWorthTrying(Dimension dimension) {
        return dimension.close() ? 4 : 12;
    }

    private static double rowMm(Dimension dimension, int k) {
        return dimension.close() ? 5 + k * 4 : FIRST_ROW_MM + k * ROW_MM;
    }
}
