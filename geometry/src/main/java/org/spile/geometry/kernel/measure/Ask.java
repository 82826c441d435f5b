package org.spile.geometry.kernel.measure;

import java.util.Objects;

/**
 * What is asked for at a place where a number is written.
 *
 * @param kind the kind of quantity
 * @param sign the signs it may have
 */
public record Ask(Kind kind, Sign sign) {

    /** Checks that both are given. */
    public Ask {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(sign, "sign");
    }

    /** A length that something has: more than nothing. */
    public static Ask size() {
        return new Ask(Kind.LENGTH, Sign.POSITIVE);
    }

    /** A length from a face or along a way: nothing or more. */
    public static Ask distance() {
        return new Ask(Kind.LENGTH, Sign.NOT_NEGATIVE);
    }

    /** A length along an axis, either way. */
    public static Ask coordinate() {
        return new Ask(Kind.LENGTH, Sign.ANY);
    }

    /** A quantity with the signs that are natural to it: any for altitudes, temperatures, angles and sound, else no minus. */
    public static Ask of(Kind kind) {
        boolean any = kind == Kind.ALTITUDE
                || kind == Kind.TEMPERATURE
                || kind == Kind.ANGLE
                || kind == Kind.SOUND
                || kind == Kind.SLOPE;
        return new Ask(kind, any ? Sign.ANY : Sign.NOT_NEGATIVE);
    }

    /** This quantity, but more than nothing. */
    public Ask positive() {
        return new Ask(kind, Sign.POSITIVE);
    }
}
