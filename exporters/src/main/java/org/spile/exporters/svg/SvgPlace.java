package org.spile.exporters.svg;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Written;

/**
 * From a drawing's coordinates to user units: scaled, shifted, and y turned to run down.
 *
 * @param unitsPerMm drawing units for one millimetre on paper
 * @param origin where the drawing's origin lies on paper, y up (mm)
 * @param highMm height of the sheet
 */
record SvgPlace(double unitsPerMm, Vector2D origin, double highMm) {
    /** A tenth of a micrometre on paper. */
    private static final int DECIMALS = 4;

    String x(Vector2D at) {
        return number(origin.getX() + at.getX() / unitsPerMm);
    }

    String y(Vector2D at) {
        return number(highMm - origin.getY() - at.getY() / unitsPerMm);
    }

    String length(double units) {
        return number(units / unitsPerMm);
    }

    String point(Vector2D at) {
        return x(at) + " " + y(at);
    }

    static String number(double value) {
        return Written.number(value, DECIMALS);
    }
}
