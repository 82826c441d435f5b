package org.spile.analysis.fit;

import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/** Millimetres in sentences: rounded to what a builder can read off, but never so far that a sentence denies itself. */
final class Mm {
    private static final int SHOWN_DECIMALS = 2;
    private static final int MOST_DECIMALS = 7;

    private Mm() {}

    /** A length, as "7.4 mm". */
    static String text(double mm) {
        return Written.number(mm, SHOWN_DECIMALS) + " mm";
    }

    /**
     * A found length beside a demanded one, with as many decimals as it takes to see which is greater.
     *
     * @param foundMm the length to write
     * @param askedMm the length it must not seem equal to unless it is, within the contact tolerance
     */
    static String besides(double foundMm, double askedMm) {
        if (Math.abs(foundMm - askedMm) > GeometryTolerance.CONTACT_MM) {
            for (int decimals = SHOWN_DECIMALS; decimals <= MOST_DECIMALS; decimals++) {
                String found = Written.number(foundMm, decimals);
                if (!found.equals(Written.number(askedMm, decimals))) {
                    return found + " mm";
                }
            }
        }
        return text(foundMm);
    }

    /** How far a margin is short, as a positive length that never reads "0 mm". */
    static String shortBy(double marginMm) {
        return besides(-marginMm, 0);
    }
}
