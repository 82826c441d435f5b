package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.TitleBlockTable;
import org.spile.exporters.drawing.View;

/**
 * Measures a finished sheet and lists what a reader would stumble over: words on words, on arrows, on wide lines, on
 * dimension lines and leaders or crossed by hatching; views on each other; anything outside the frame.
 *
 * <p>It looks at the strokes that writers draw, not at what the layout meant, so it holds any composer to account.
 */
public final class Overlaps {
    private final Sheet sheet;
    private final List<Piece> texts = new ArrayList<>();
    private final List<Piece> lines = new ArrayList<>();
    private final List<Clash> clashes = new ArrayList<>();

    /** What went wrong. */
    public enum Kind {
        /** Two texts overlap. */
        TEXT_ON_TEXT,
        /** A wide line runs through a text. */
        TEXT_ON_WIDE_LINE,
        /** An arrowhead or other filled mark touches a text. */
        TEXT_ON_ARROW,
        /** A dimension line, extension line or leader runs through a text. */
        TEXT_ON_THREAD,
        /** Hatching runs through a text. */
        TEXT_ON_HATCHING,
        /** Two views, or a view and the title block, take the same paper. */
        VIEW_ON_VIEW,
        /** Something lies outside the frame. */
        OUTSIDE_FRAME
    }

    /**
     * One thing a reader would stumble over.
     *
     * @param kind what went wrong
     * @param at where on the sheet (paper mm)
     * @param says what is there, in words
     */
    public record Clash(Kind kind, Vector2D at, String says) {}

    private record Piece(Stroke stroke, Patch patch, Extent extent, boolean furniture) {}

    private Overlaps(Sheet sheet) {
        this.sheet = sheet;
    }

    /** All clashes of a sheet; an empty list is a clean sheet. */
    public static List<Clash> of(Sheet sheet) {
        var overlaps = new Overlaps(sheet);
        sheet.views().forEach(overlaps::take);
        var keepOff = HatchLines.keepOff(sheet.marks(), 1);
        sheet.marks().forEach(mark -> overlaps.take(strokes(mark, 1, keepOff), 1, Vector2D.ZERO, false));
        sheet.furniture().forEach(mark -> overlaps.take(mark.strokes(), 1, Vector2D.ZERO, true));
        overlaps.compare();
        overlaps.frame();
        overlaps.views();
        return List.copyOf(overlaps.clashes);
    }

    private static List<? extends Stroke> strokes(Mark mark, double unit, List<Patch> keepOff) {
        return mark instanceof Hatch hatch && !hatch.solid(unit) ? HatchLines.of(hatch, unit, keepOff) : mark.strokes();
    }

    private void take(View view) {
        var unit = view.unitsPerMm();
        var keepOff = HatchLines.keepOff(view.marks(), unit);
        var shift = view.paper(Vector2D.ZERO);
        view.marks().forEach(mark -> take(strokes(mark, unit, keepOff), unit, shift, false));
    }

    private void take(List<? extends Stroke> strokes, double unit, Vector2D shift, boolean furniture) {
        for (var stroke : strokes) {
            for (var patch : stroke.patches(unit)) {
                var corners = patch.corners().stream()
                        .map(corner -> corner.multiply(1 / unit).add(shift))
                        .toList();
                var piece = new Piece(stroke, new Patch(corners), Extent.around(corners), furniture);
                (stroke instanceof Text ? texts : lines).add(piece);
            }
        }
    }

    private void compare() {
        for (var i = 0; i < texts.size(); i++) {
            var text = texts.get(i);
            for (var j = i + 1; j < texts.size(); j++) {
                if (text.patch().nearer(texts.get(j).patch(), 0)) {
                    clash(Kind.TEXT_ON_TEXT, text, " on '" + words(texts.get(j)) + "'");
                }
            }
            for (var line : lines) {
                if (!text.extent().nearer(line.extent(), 2)) {
                    continue;
                }
                kind(line)
                        .filter(kind -> text.patch().nearer(line.patch(), halfWidth(line)))
                        .forEach(kind -> clash(
                                kind, text, " on " + line.stroke().pen().layer().words()));
            }
        }
    }

    private static double halfWidth(Piece line) {
        return line.stroke() instanceof Fill ? 0 : line.stroke().pen().widthMm() / 2;
    }

    /** How a line harms a text it meets; none if it may pass. */
    private static Stream<Kind> kind(Piece line) {
        var pen = line.stroke().pen();
        if (line.stroke() instanceof Fill) {
            return Stream.of(Kind.TEXT_ON_ARROW);
        }
        if (pen.layer() == Layer.HATCHING) {
            return Stream.of(Kind.TEXT_ON_HATCHING);
        }
        if (pen.heavy()) {
            return Stream.of(Kind.TEXT_ON_WIDE_LINE);
        }
        return switch (pen.layer()) {
            case DIMENSIONS, NOTES, FINDINGS, CUTTING_PLANES, FRAME -> Stream.of(Kind.TEXT_ON_THREAD);
            default -> Stream.empty();
        };
    }

    private void frame() {
        var space = sheet.paper().space();
        Stream.concat(texts.stream(), lines.stream())
                .filter(piece -> !piece.furniture())
                .filter(piece -> !space.holds(piece.extent(), 1e-6))
                .forEach(piece -> clash(
                        Kind.OUTSIDE_FRAME,
                        piece,
                        " on " + piece.stroke().pen().layer().words()));
    }

    private void views() {
        var block =
                TitleBlockTable.extent(sheet.paper(), sheet.block().revisions().size());
        for (var i = 0; i < sheet.views().size(); i++) {
            var view = sheet.views().get(i);
            views(view.onPaper(), block, view.name() + " on the title block");
            for (var j = i + 1; j < sheet.views().size(); j++) {
                var other = sheet.views().get(j);
                views(view.onPaper(), other.onPaper(), view.name() + " on " + other.name());
            }
        }
    }

    private void views(Extent one, Extent other, String says) {
        if (one.overlaps(other)) {
            clashes.add(new Clash(Kind.VIEW_ON_VIEW, one.middle(), says));
        }
    }

    private void clash(Kind kind, Piece piece, String rest) {
        clashes.add(new Clash(kind, piece.patch().middle(), words(piece) + rest));
    }

    private static String words(Piece piece) {
        return piece.stroke() instanceof Text text ? text.says() : "line";
    }
}
