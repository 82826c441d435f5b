package org.spile.geometry.kernel.clearance;

/**
 * Two things by their indices.
 *
 * @param first the lesser index
 * @param second the greater index
 */
public record IndexPair(int first, int second) {}
