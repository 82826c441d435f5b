package org.spile.analysis.duct;

/**
 * One piece of a run and the least that it passes.
 *
 * @param path station that says it, as {@code runs.toilet-flat.path[4]}
 * @param word the trade's word for it, as {@code transition}
 * @param fromMm station where it begins
 * @param toMm station where it ends
 * @param lengthMm along the path the air takes
 * @param leastAtMm station of the least clear area
 * @param leastAreaMm2 exact least over the piece, with what stands into it taken off
 */
public record PieceArea(
        String path, String word, double fromMm, double toMm, double lengthMm, double leastAtMm, double leastAreaMm2) {}
