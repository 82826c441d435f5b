package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Words made to fit a width: smaller letters first, then cut with an ellipsis; or broken into lines. */
public final class FittedText {
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final String ELLIPSIS = "…";

    private FittedText() {}

    /**
     * One line in the largest of the heights that fits.
     *
     * @param pen how
     * @param at left end of the baseline (mm)
     * @param words any
     * @param wideMm room (mm on paper)
     * @param heightsMm largest first
     */
    static Text line(Pen pen, Vector2D at, String words, double wideMm, double... heightsMm) {
        for (var height : heightsMm) {
            var text = new Text(pen, at, words, height, 0, Anchor.LEFT);
            if (text.widthMm() <= wideMm) {
                return text;
            }
        }
        var least = heightsMm[heightsMm.length - 1];
        return new Text(pen, at, cut(words, wideMm, least), least, 0, Anchor.LEFT);
    }

    private static String cut(String words, double wideMm, double capMm) {
        var characters = words.codePoints().toArray();
        for (var n = characters.length; n > 0; n--) {
            var shorter = new String(characters, 0, n).stripTrailing() + ELLIPSIS;
            if (Lettering.shipped().widthMm(shorter, capMm) <= wideMm) {
                return shorter;
            }
        }
        return "";
    }

    /**
     * Words broken into lines at blanks; a word wider than the room is broken anywhere.
     *
     * @param words any; runs of blanks count as one
     * @param wideMm room (mm on paper)
     * @param capMm height of the capitals (mm)
     */
    public static List<String> lines(String words, double wideMm, double capMm) {
        var lettering = Lettering.shipped();
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : BLANKS.split(Lettering.printable(words).strip(), -1)) {
            var rest = word;
            if (line.length() > 0 && lettering.widthMm(line + " " + rest, capMm) > wideMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (lettering.widthMm(rest, capMm) > wideMm && rest.codePointCount(0, rest.length()) > 1) {
                var fits = fitting(rest, wideMm, capMm);
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** How many chars of a word fit, one character at least. */
    private static int fitting(String word, double wideMm, double capMm) {
        var end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            var next = word.offsetByCodePoints(end, 1);
            if (Lettering.shipped().widthMm(word.substring(0, next), capMm) > wideMm) {
                break;
            }
            end = next;
        }
        return end;
    }
}
