package org.spile.exporters.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The JDK's own font engine reads the same file as an independent witness. */
class LetteringTest {
    private static final double EM = 1000;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private static Font witness() throws IOException, FontFormatException {
        try (var in = Lettering.class.getResourceAsStream(Lettering.FILE)) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont((float) EM);
        }
    }

    private static double capEm() throws IOException, FontFormatException {
        return witness().createGlyphVector(EXACT, "H").getVisualBounds().getHeight() / EM;
    }

    @Test
    void widths_agreeWithTheJdksFontEngine() throws IOException, FontFormatException {
        for (var words : new String[] {"1200", "Ø50 ±3", "Saltmarsh, wet lab", "ø é – …", "(7778.3)"}) {
            var cap = 3.5;
            var vector = witness().createGlyphVector(EXACT, words);
            var expected = vector.getLogicalBounds().getWidth() / EM * cap / capEm();
            assertEquals(expected, Lettering.shipped().widthMm(words, cap), 0.002 * expected, words);
        }
    }

    @Test
    void capitals_areAsHighAsAsked() throws IOException, FontFormatException {
        assertEquals(3.5, Lettering.shipped().emMm(3.5) * capEm(), 0.01);
    }

    @Test
    void inkStaysInsideTheMeasuredBox() throws IOException, FontFormatException {
        var font = witness();
        for (var character = 0x21; character < 0x180; character++) {
            if (!Lettering.shipped().has(character)) {
                continue;
            }
            var says = Character.toString(character);
            var ink = font.createGlyphVector(EXACT, says).getVisualBounds();
            var cap = capEm() * EM;
            assertTrue(
                    -ink.getMinY() <= Lettering.above(says) * cap + 0.01 * cap,
                    says + " rises " + -ink.getMinY() / cap);
            assertTrue(
                    ink.getMaxY() <= Lettering.below(says) * cap + 0.07 * cap, says + " hangs " + ink.getMaxY() / cap);
        }
    }

    @Test
    void printable_dropsWhatCannotBePrinted() {
        assertEquals("a b", Lettering.printable("a\u0007b"));
        assertEquals("ab", Lettering.printable("a\uD800b"));
        assertEquals("ab", Lettering.printable("a\u202Eb"));
        assertEquals("换 <script> &", Lettering.printable("换 <script> &"));
        assertEquals("😀", Lettering.printable("😀"));
    }

    @Test
    void anUnknownCharacter_countsAWholeEm() {
        var lettering = Lettering.shipped();
        assertEquals(2 * lettering.emMm(3.5), lettering.widthMm("換気", 3.5), 1e-9);
    }
}
