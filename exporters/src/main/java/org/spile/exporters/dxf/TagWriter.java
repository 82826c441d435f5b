package org.spile.exporters.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Written;

/** Writes tags: a group code on one line, its value on the next. */
final class TagWriter {
    /** The code page every version before R2007 writes text in. */
    static final Charset CODE_PAGE = Charset.forName("windows-1252");

    /** A millionth of a millimetre. */
    private static final int DECIMALS = 6;

    private final OutputStream out;
    private long last;

    /**
     * Tags into a stream.
     *
     * @param out where to
     * @param last the highest handle given out before
     */
    TagWriter(OutputStream out, long last) {
        this.out = out;
        this.last = last;
    }

    /** A handle that no other record has. */
    String handle() {
        last++;
        return Long.toString(last, 16).toUpperCase(Locale.ROOT);
    }

    /** The highest handle given out. */
    long last() {
        return last;
    }

    /** A name or keyword; never words of the user's. */
    TagWriter put(int code, String value) throws IOException {
        write(Integer.toString(code), StandardCharsets.US_ASCII);
        write(value, CODE_PAGE);
        return this;
    }

    /** A whole number. */
    TagWriter put(int code, int value) throws IOException {
        return put(code, Integer.toString(value));
    }

    /** A number. */
    TagWriter put(int code, double value) throws IOException {
        return put(code, Written.number(value, DECIMALS));
    }

    /** A point with z = 0: codes c, c + 10, c + 20. */
    TagWriter point(int code, Vector2D at) throws IOException {
        return point(code, at, 0);
    }

    /** A point: codes c, c + 10, c + 20. */
    TagWriter point(int code, Vector2D at, double z) throws IOException {
        return put(code, at.getX()).put(code + 10, at.getY()).put(code + 20, z);
    }

    /** A point of the plane: codes c, c + 10. */
    TagWriter flat(int code, Vector2D at) throws IOException {
        return put(code, at.getX()).put(code + 10, at.getY());
    }

    /** Words of the user's, as one line. */
    TagWriter words(int code, String words) throws IOException {
        return put(code, DxfWords.line(words));
    }

    private void write(String line, Charset charset) throws IOException {
        out.write(line.getBytes(charset));
        out.write('\n');
    }
}
