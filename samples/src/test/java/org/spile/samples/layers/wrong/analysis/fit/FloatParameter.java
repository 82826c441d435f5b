package org.spile.samples.layers.wrong.analysis.fit;

/** Takes half the digits. */
final class FloatParameter {

    private FloatParameter() {}

    static double doubledMm(Float gapMm) {
        return 2.0 * gapMm;
    }
}
