package org.spile.samples.layers.wrong.analysis.fit;

import java.util.List;

/** Lets anyone change it. */
final class Setter {

    private final List<Double> gapsMm;

    Setter(List<Double> gapsMm) {
        this.gapsMm = gapsMm;
    }

    public void setFirst(double gapMm) {
        gapsMm.set(0, gapMm);
    }
}
