package org.spile.geometry.kernel.measure;

/**
 * A number and the unit behind it: one part of {@code 14' 2 1/2"}.
 *
 * @param digits the number as written
 * @param number its value
 * @param unit the unit written, or the one a bare number has
 * @param bare whether no unit was written
 */
record Term(String digits, Fraction number, Unit unit, boolean bare) {}
