package org.spile.exporters.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Widths and heights of words in the one font that all formats use: DejaVu Sans Condensed, shipped beside this class with
 * its licence.
 *
 * <p>Sizes are stated as the height of the capitals, as ISO 3098 does; the font's own size is larger by its capitals'
 * share of the em.
 */
public final class Lettering {
    /** The font's family name, as formats that name fonts write it. */
    public static final String FAMILY = "DejaVu Sans Condensed";
    /** The font's file, as formats that name font files write it, and as it is shipped beside this class. */
    public static final String FILE = "DejaVuSansCondensed.ttf";

    /** What an accented capital rises above the plain ones, as a share of their height; the font's É rises 0.29. */
    private static final double ACCENT = 0.32;
    /** What ascenders rise above capitals, as a share; the font's l rises 0.043. */
    private static final double ASCENDER = 0.06;
    /** What g, j, p and marks below hang below the baseline, as a share; the font's g hangs 0.29, its Ģ 0.34. */
    private static final double DESCENDER = 0.35;
    /** What brackets, commas, J, Q and ç hang below the baseline, as a share; the font's bracket hangs 0.18, its J 0.27. */
    private static final double SHALLOW = 0.28;

    /** Scripts from here on are not in the font; reading its table so far only keeps the start quick. */
    private static final int FIRST_IDEOGRAPH = 0x2E80;

    private static final String SHALLOW_LETTERS = "()[]{}/\\,;JQ@ÇçŞşŢţ¡¿¢";
    /** Signs that stand on the baseline or above it; Ø and ø dip by less than a twentieth. */
    private static final String FLAT_SIGNS = " .:·±°×+-–−=<>%&#*'\"!?Øø•…";

    private final double[] advanceInEms;
    private final double capInEms;

    private Lettering(double[] advanceInEms, double capInEms) {
        this.advanceInEms = advanceInEms;
        this.capInEms = capInEms;
    }

    /** The shipped font's metrics, read once. */
    public static Lettering shipped() {
        return Shipped.LETTERING;
    }

    /** Reads the font on first use. */
    private static final class Shipped {
        private static final Lettering LETTERING = read();

        private Shipped() {}
    }

    private static Lettering read() {
        try (var in = Lettering.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing beside " + Lettering.class.getName());
            }
            try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()))) {
                return new Lettering(advances(font), capShare(font));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(FILE + " can't be read", e);
        }
    }

    /** Advances of the characters below the ideographs; 0 where the font has none. */
    private static double[] advances(TrueTypeFont font) throws IOException {
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        HorizontalMetricsTable widths = font.getHorizontalMetrics();
        var unitsPerEm = (double) font.getUnitsPerEm();
        var advances = new double[FIRST_IDEOGRAPH];
        for (var character = 0x20; character < advances.length; character++) {
            var glyph = glyphs.getGlyphId(character);
            if (glyph != 0) {
                advances[character] = widths.getAdvanceWidth(glyph) / unitsPerEm;
            }
        }
        return advances;
    }

    private static double capShare(TrueTypeFont font) throws IOException {
        // Measured on the letter itself: the font's table of heights is of a version that has no such field.
        var glyph = font.getGlyph().getGlyph(font.getUnicodeCmapLookup().getGlyphId('H'));
        return (double) glyph.getYMaximum() / font.getUnitsPerEm();
    }

    /**
     * The width of words set without kerning.
     *
     * @param words any text; a character the font lacks counts a whole em, the width of an ideograph
     * @param capMm height of the capitals (mm)
     * @return width (mm)
     */
    public double widthMm(String words, double capMm) {
        return words.codePoints().mapToDouble(this::advanceInEms).sum() * emMm(capMm);
    }

    private double advanceInEms(int character) {
        if (Character.getType(character) == Character.NON_SPACING_MARK) {
            return 0;
        }
        var advance = character < advanceInEms.length ? advanceInEms[character] : 0;
        return advance > 0 ? advance : 1;
    }

    /**
     * The font's own size for capitals of a height.
     *
     * @param capMm height of the capitals (mm)
     * @return size of the em (mm)
     */
    public double emMm(double capMm) {
        return capMm / capInEms;
    }

    /** Whether the font holds a character. */
    public boolean has(int character) {
        return character < advanceInEms.length && advanceInEms[character] > 0;
    }

    /**
     * Words as they can be printed: control characters become spaces, halves of surrogate pairs and characters that
     * are none are left out.
     */
    public static String printable(String words) {
        var clean = new StringBuilder(words.length());
        words.codePoints().forEach(character -> {
            if (Character.isISOControl(character) || character == 0x2028 || character == 0x2029) {
                clean.append(' ');
            } else if (isPrintable(character)) {
                clean.appendCodePoint(character);
            }
        });
        return clean.toString();
    }

    private static boolean isPrintable(int character) {
        var turns = (character >= 0x202A && character <= 0x202E) || (character >= 0x2066 && character <= 0x2069);
        return Character.isDefined(character)
                && Character.getType(character) != Character.SURROGATE
                && (character & 0xFFFE) != 0xFFFE
                && !turns;
    }

    /** How far the ink of words rises above the baseline, as a share of the capitals' height. */
    static double above(String words) {
        var accented = Normalizer.normalize(words, Normalizer.Form.NFD)
                .chars()
                .anyMatch(character ->
                        character == '`' || character == '´' || (character > 0x17F && !isPunctuation(character)));
        return 1 + (accented ? ACCENT : ASCENDER);
    }

    /** How far the ink of words hangs below the baseline, as a share of the capitals' height. */
    static double below(String words) {
        var deep = words.chars().anyMatch(character -> !isFlat(character) && SHALLOW_LETTERS.indexOf(character) < 0);
        if (deep) {
            return DESCENDER;
        }
        return words.chars().allMatch(Lettering::isFlat) ? 0 : SHALLOW;
    }

    /**
     * How far the ink of words hangs below the baseline.
     *
     * @param words any text
     * @param capMm height of the capitals (mm)
     */
    public static double hangingMm(String words, double capMm) {
        return below(words) * capMm;
    }

    private static boolean isFlat(int character) {
        return (character >= '0' && character <= '9')
                || (character >= 'A' && character <= 'Z' && character != 'J' && character != 'Q')
                || (character >= 'a' && character <= 'z' && "gjpqy".indexOf(character) < 0)
                || FLAT_SIGNS.indexOf(character) >= 0
                || "ÀÁÂÃÄÅÈÉÊËÌÍÎÏÒÓÔÕÖÙÚÛÜàáâãäåèéêëìíîïòóôõöùúûüßæÆ".indexOf(character) >= 0
                || isPunctuation(character);
    }

    /** Dashes, quotes, dots and the minus sign: no taller or deeper than capitals. */
    private static boolean isPunctuation(int character) {
        return (character >= 0x2010 && character <= 0x2027) || character == 0x2212;
    }
}
