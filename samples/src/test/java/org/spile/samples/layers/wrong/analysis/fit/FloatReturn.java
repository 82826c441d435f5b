package org.spile.samples.layers.wrong.analysis.fit;

/** Hands out half the digits. */
final class FloatReturn {

    private FloatReturn() {}

    static float halfMm(double gapMm) {
        return (float) (gapMm / 2);
    }
}
