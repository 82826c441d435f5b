package org.spile.exporters.drawing.layout;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Mark;

/** Something that stands right across a sheet and has no scale: a table, a plot. */
public interface Figure {
    /** The least width it can be read at (mm on paper). */
    double leastWideMm();

    /**
     * Its height at a width.
     *
     * @param wideMm not below {@link #leastWideMm} (mm on paper)
     */
    double highMm(double wideMm);

    /**
     * What it draws.
     *
     * @param topLeft its upper left corner on the sheet (mm)
     * @param wideMm the width it gets
     */
    List<Mark> marks(Vector2D topLeft, double wideMm);
}
