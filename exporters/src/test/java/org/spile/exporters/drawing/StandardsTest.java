package org.spile.exporters.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Sizes fixed by standards. The standards' texts are sold; the values are those commonly reproduced from ISO 216, ISO
 * 5457, ISO 128-2 and ISO 5455.
 */
class StandardsTest {

    @Test
    void paper_sizesOfIso216_spaceAndFieldsOfIso5457() {
        assertEquals("A4 210 x 297, space 180 x 277, fields 4 x 6", paper(PaperSize.A4));
        assertEquals("A3 420 x 297, space 390 x 277, fields 8 x 6", paper(PaperSize.A3));
        assertEquals("A2 594 x 420, space 564 x 400, fields 12 x 8", paper(PaperSize.A2));
        assertEquals("A1 841 x 594, space 811 x 574, fields 16 x 12", paper(PaperSize.A1));
        assertEquals("A0 1189 x 841, space 1159 x 821, fields 24 x 16", paper(PaperSize.A0));
    }

    private static String paper(PaperSize size) {
        var space = size.space();
        return size.name() + " " + size.wideMm() + " x " + size.highMm() + ", space " + (int) space.wide() + " x "
                + (int) space.high() + ", fields " + size.columns() + " x " + size.rows();
    }

    @Test
    void lineTypes_patternsOfIso128AtNarrowWidth() {
        assertEquals(List.of(), LineType.CONTINUOUS.patternMm(0.25));
        assertEquals(List.of(3.0, 0.75), LineType.DASHED.patternMm(0.25));
        assertEquals(List.of(6.0, 0.75, 0.125, 0.75), LineType.LONG_DASHED_DOTTED.patternMm(0.25));
        assertEquals(List.of(6.0, 0.75, 0.125, 0.75, 0.125, 0.75), LineType.LONG_DASHED_DOUBLE_DOTTED.patternMm(0.25));
    }

    @Test
    void layers_useOnlyWidthsOfIso128_wideTwiceNarrow() {
        for (var layer : Layer.values()) {
            assertTrue(Pen.WIDTHS_MM.contains(layer.widthMm()), layer.name());
        }
        assertEquals(2, Pen.WIDE_MM / Pen.NARROW_MM);
        assertThrows(IllegalArgumentException.class, () -> Layer.UNITS.pen().wide(0.3));
    }

    @Test
    void layers_haveNamesOfTheirOwn() {
        var names = Stream.of(Layer.values()).map(Layer::words).distinct().count();
        assertEquals(Layer.values().length, names);
        assertTrue(Stream.of(Layer.values()).allMatch(layer -> layer.words().matches("[a-z][a-z-]*")));
    }

    @Test
    void scales_stepsOfIso5455() {
        assertEquals(
                List.of(
                        "10:1", "5:1", "2:1", "1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200", "1:500",
                        "1:1000"),
                Scale.STANDARD.stream().map(Scale::says).toList());
        assertEquals(Scale.oneTo(50), Scale.oneTo(20).smaller());
        assertEquals(Scale.oneTo(1000), Scale.oneTo(1000).smaller());
    }

    @Test
    void hatching_noCloserThanIso128Allows() {
        for (var material : Material.values()) {
            for (var family : material.families()) {
                assertTrue(family.spacingMm() >= 0.7, material.name());
            }
        }
    }
}
