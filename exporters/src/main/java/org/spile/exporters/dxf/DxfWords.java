package org.spile.exporters.dxf;

import java.util.Locale;
import org.spile.exporters.drawing.Lettering;

/**
 * Words as the format can carry them: characters outside Windows-1252 as {@code \U+hhhh}, and nothing of the user's words
 * left that a reader would take for a code.
 */
final class DxfWords {
    /** Stands for a character beyond the basic plane, which has no escape of its own: an empty square. */
    private static final String SQUARE = "\\U+25A1";

    private DxfWords() {}

    /** For single-line texts, attributes, names in extended data. */
    static String line(String words) {
        // %% starts a sign's code, ^ a control character, \U+ an escape: a blank parts them.
        var safe = Lettering.printable(words)
                .replace("^", "^ ")
                .replace("\\U+", "\\ U+")
                .replace("\\M+", "\\ M+");
        while (safe.contains("%%")) {
            safe = safe.replace("%%", "% %");
        }
        return encode(safe);
    }

    /** For text of several lines and of dimensions, where backslash and braces are codes. */
    static String multi(String words) {
        return encode(Lettering.printable(words)
                .replace("\\", "\\\\")
                .replace("{", "\\{")
                .replace("}", "\\}")
                .replace("^", "^ "));
    }

    private static String encode(String words) {
        var encoder = TagWriter.CODE_PAGE.newEncoder();
        var encoded = new StringBuilder();
        words.codePoints().forEach(character -> {
            if (!Character.isBmpCodePoint(character)) {
                encoded.append(SQUARE);
            } else if (encoder.canEncode((char) character)) {
                encoded.append((char) character);
            } else {
                encoded.append(String.format(Locale.ROOT, "\\U+%04X", character));
            }
        });
        return encoded.toString();
    }
}
