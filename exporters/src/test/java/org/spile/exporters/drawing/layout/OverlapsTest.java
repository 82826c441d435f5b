package org.spile.exporters.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Projection;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.TitleBlock;
import org.spile.exporters.drawing.View;

/** The checker must find each fault that is put on a sheet on purpose, and nothing on a clean one. */
class OverlapsTest {

    private static Sheet sheet(List<View> views, Mark... marks) {
        return new Sheet(
                "plan",
                PaperSize.A3,
                TitleBlock.of("Saltmarsh", "plan", "SM-01"),
                Projection.FIRST_ANGLE,
                1,
                1,
                views,
                List.of(marks));
    }

    private static List<Overlaps.Kind> kinds(Mark... marks) {
        return Overlaps.of(sheet(List.of(), marks)).stream()
                .map(Overlaps.Clash::kind)
                .distinct()
                .toList();
    }

    private static Text text(double x, double y) {
        return Text.of(Layer.NOTES.pen(), Vector2D.of(x, y), "cooler");
    }

    @Test
    void aCleanSheet_hasNone() {
        assertEquals(List.of(), kinds(text(100, 200), text(100, 210), Line.of(Layer.UNITS.pen(), 90, 208, 200, 208)));
    }

    @Test
    void textOnText() {
        assertEquals(List.of(Overlaps.Kind.TEXT_ON_TEXT), kinds(text(100, 200), text(105, 202)));
    }

    @Test
    void textOnAWideLine_onANarrowOneOfTheDrawingIsAllowed() {
        assertEquals(
                List.of(Overlaps.Kind.TEXT_ON_WIDE_LINE),
                kinds(text(100, 200), Line.of(Layer.UNITS.pen(), 90, 202, 200, 202)));
        assertEquals(List.of(), kinds(text(100, 200), Line.of(Layer.LININGS.pen(), 90, 202, 200, 202)));
    }

    @Test
    void textOnADimensionLine() {
        assertEquals(
                List.of(Overlaps.Kind.TEXT_ON_THREAD),
                kinds(text(100, 200), Line.of(Layer.DIMENSIONS.pen(), 90, 202, 200, 202)));
    }

    @Test
    void textOnAnArrow() {
        assertEquals(
                List.of(Overlaps.Kind.TEXT_ON_ARROW),
                kinds(text(100, 200), Fill.arrow(Layer.DIMENSIONS.pen(), Vector2D.of(102, 201), Vector2D.of(1, 0), 3)));
    }

    @Test
    void hatching_stopsRoundTexts() {
        var area = Polyline.rectangle(Layer.HATCHING.pen(), Extent.ofSize(80, 180, 80, 50));
        assertEquals(List.of(), kinds(Hatch.of(Material.WOOL, "", area), text(100, 200)));
        assertEquals(
                List.of(Overlaps.Kind.TEXT_ON_HATCHING),
                kinds(Line.of(Layer.HATCHING.pen(), 90, 202, 200, 202), text(100, 200)));
    }

    @Test
    void outsideTheFrame() {
        assertEquals(List.of(Overlaps.Kind.OUTSIDE_FRAME), kinds(text(5, 200)));
    }

    @Test
    void viewsOnEachOther_andOnTheTitleBlock() {
        var window = Extent.ofSize(0, 0, 2000, 1000);
        var line = Line.of(Layer.UNITS.pen(), 0, 0, 2000, 1000);
        var one = new View("one", "One", Scale.oneTo(20), window, Vector2D.of(50, 200), List.of(line), false);
        var two = new View("two", "Two", Scale.oneTo(20), window, Vector2D.of(100, 210), List.of(line), false);
        var low = new View("low", "Low", Scale.oneTo(20), window, Vector2D.of(300, 20), List.of(line), false);
        var kinds = Stream.of(List.of(one, two), List.of(low), List.of(one))
                .map(views -> Overlaps.of(sheet(views)).stream()
                        .filter(clash -> clash.kind() == Overlaps.Kind.VIEW_ON_VIEW)
                        .count())
                .toList();
        assertEquals(List.of(1L, 1L, 0L), kinds);
    }
}
