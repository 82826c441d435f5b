package org.spile.geometry.kernel.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An exact fraction of two decimals, so that a written number is rounded once, at the end.
 *
 * @param top any decimal
 * @param bottom not zero
 */
record Fraction(BigDecimal top, BigDecimal bottom) {

    static Fraction of(String decimal) {
        return new Fraction(new BigDecimal(decimal), BigDecimal.ONE);
    }

    static Fraction of(double number) {
        return new Fraction(new BigDecimal(number), BigDecimal.ONE);
    }

    Fraction plus(Fraction other) {
        return new Fraction(top.multiply(other.bottom).add(other.top.multiply(bottom)), bottom.multiply(other.bottom));
    }

    Fraction times(Fraction other) {
        return new Fraction(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    Fraction negated() {
        return new Fraction(top.negate(), bottom);
    }

    double toDouble() {
        return top.divide(bottom, MathContext.DECIMAL128).doubleValue();
    }
}
