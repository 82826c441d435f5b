package org.spile.analysis.fit;

import org.spile.geometry.kernel.solid.Body;

/**
 * What must stay empty round a thing: how much is asked decides how large it is.
 *
 * <p>A general clearance is a distance every way; a maker's clearance is the room straight out of one face.
 */
sealed interface Keep {
    /** The body that others must stay out of, by {@link #distanceMm}. */
    Body body(double askedMm);

    /** The distance from that body which others must keep. */
    double distanceMm(double askedMm);

    /** A distance every way from a body. */
    record Round(Body thing) implements Keep {
        @Override
        public Body body(double askedMm) {
            return thing;
        }

        @Override
        public double distanceMm(double askedMm) {
            return askedMm;
        }
    }

    /** Room straight out of a face. */
    record Ahead(Face face) implements Keep {
        @Override
        public Body body(double askedMm) {
            return face.swept(askedMm);
        }

        @Override
        public double distanceMm(double askedMm) {
            return 0;
        }
    }
}
