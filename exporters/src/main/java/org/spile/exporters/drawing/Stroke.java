package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A mark that every format draws as it is; all other marks are made of strokes. */
public sealed interface Stroke extends Mark permits Line, Polyline, Circle, Arc, Fill, Text {
    /**
     * The same stroke turned about the origin, then shifted.
     *
     * @param turnDeg degrees, counter-clockwise
     * @param shift how far (mm)
     * @param part path of the thing it now belongs to
     */
    Stroke put(double turnDeg, Vector2D shift, String part);

    /**
     * Pieces of paper that cover it, close enough to tell whether something touches it.
     *
     * @param unitsPerMm drawing units for one millimetre on paper: 1 on a sheet, N in a view at 1:N
     */
    List<Patch> patches(double unitsPerMm);

    @Override
    default List<Stroke> strokes() {
        return List.of(this);
    }
}
