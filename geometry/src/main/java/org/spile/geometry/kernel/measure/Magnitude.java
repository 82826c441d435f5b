package org.spile.geometry.kernel.measure;

/**
 * One number with its unit, read exactly.
 *
 * @param base the value in the base unit, its sign and any offset taken in
 * @param difference the same as a difference: without sign and offset
 * @param unit the unit, of several the last
 * @param bare whether no unit was written
 * @param signed whether a plus or minus was written before it
 */
record Magnitude(Fraction base, Fraction difference, Unit unit, boolean bare, boolean signed) {}
