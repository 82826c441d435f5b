package org.spile.samples.layers.wrong.analysis.fit;

/** Half the digits, in a list of many. */
final class FloatField {

    private final float[] gapsMm;

    FloatField(double... gapsMm) {
        this.gapsMm = new float[gapsMm.length];
        for (int i = 0; i < gapsMm.length; i++) {
            this.gapsMm[i] = (float) gapsMm[i];
        }
    }

    double firstMm() {
        return gapsMm[0];
    }
}
