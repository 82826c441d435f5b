package org.spile.analysis.finding;

/**
 * One layer of a stack-up.
 *
 * @param label as "cavities.lobby-top.ceiling.at"
 * @param factor how much of it counts, with its sign: +1 opens, -1 fills
 * @param size nominal
 * @param plus and minus its tolerance, both positive, same unit
 * @param origin measured, maker, assumed, default or empty
 */
public record Layer(String label, double factor, Quantity size, double plus, double minus, String origin) {}
