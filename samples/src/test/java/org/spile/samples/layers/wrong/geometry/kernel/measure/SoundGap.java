package org.spile.samples.layers.wrong.geometry.kernel.measure;

/**
 * A gap that breaks no rule.
 *
 * @param gapMm millimetres
 */
public record SoundGap(double gapMm) {

    /** Wider by some millimetres. */
    public SoundGap widened(double byMm) {
        return new SoundGap(gapMm + byMm);
    }
}
