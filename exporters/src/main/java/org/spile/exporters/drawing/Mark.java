package org.spile.exporters.drawing;

import java.util.List;

/**
 * One thing drawn. In a view its coordinates are model millimetres, on a sheet paper millimetres; x to the right, y up.
 * Line widths, text heights and arrows are always millimetres on paper.
 */
public sealed interface Mark permits Stroke, Hatch, Insert, Dimensioned, Leader, Flag {
    /** How it is drawn, and whose it is. */
    Pen pen();

    /** The strokes it is made of; a hatch has none of its own, its lines depend on what else is drawn. */
    List<Stroke> strokes();

    /**
     * Answers by kind; a new kind of mark makes every answer fail to compile until it covers it.
     *
     * @param <R> the answer's type
     * @param cases one answer a kind
     */
    <R> R by(Cases<R> cases);

    /**
     * One answer for each kind of mark.
     *
     * @param <R> the answer's type
     */
    interface Cases<R> {
        /** For a straight line. */
        R line(Line line);

        /** For a polyline. */
        R polyline(Polyline polyline);

        /** For a circle. */
        R circle(Circle circle);

        /** For an arc. */
        R arc(Arc arc);

        /** For a filled area. */
        R fill(Fill fill);

        /** For a text. */
        R text(Text text);

        /** For a hatched area. */
        R hatch(Hatch hatch);

        /** For a symbol put in place. */
        R insert(Insert insert);

        /** For a dimension. */
        R dimension(Dimensioned dimension);

        /** For a note with its leader. */
        R leader(Leader leader);

        /** For a finding's flag. */
        R flag(Flag flag);
    }
}
