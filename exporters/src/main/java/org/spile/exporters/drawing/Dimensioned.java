package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Written;

/**
 * A dimension in its place: what it measures, and the strokes that show it.
 *
 * @param pen how and whose
 * @param span what it measures
 * @param lineAt a point of the dimension line (mm); for a running dimension the end of its extension line
 * @param textAt middle of the value's text (mm)
 * @param wording what is written, with {@code <>} where the measured value goes
 * @param drawn lines, arrows and text
 */
public record Dimensioned(Pen pen, Span span, Vector2D lineAt, Vector2D textAt, String wording, List<Stroke> drawn)
        implements Mark {
    /** Stands for the measured value in a wording. */
    public static final String VALUE = "<>";
    /** Decimals shown: tenths of a millimetre, if there are any. */
    public static final int DECIMALS = 1;

    /** Copies the strokes. */
    public Dimensioned {
        Places.check(lineAt);
        Places.check(textAt);
        drawn = List.copyOf(drawn);
        if (!wording.contains(VALUE)) {
            throw new IllegalArgumentException("dimension wording '" + wording + "' shows no measured value <>");
        }
    }

    /** What a wording says of a length (mm). */
    public static String says(String wording, double mm) {
        return wording.replace(VALUE, Written.number(mm, DECIMALS));
    }

    /** The text shown. */
    public String says() {
        return says(wording, span.measuredMm());
    }

    @Override
    public List<Stroke> strokes() {
        return drawn;
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.dimension(this);
    }
}
