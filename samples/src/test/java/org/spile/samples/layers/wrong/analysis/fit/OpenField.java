package org.spile.samples.layers.wrong.analysis.fit;

/** Its field can be read past its methods. */
final class OpenField {

    final double gapMm;

    OpenField(double gapMm) {
        this.gapMm = gapMm;
    }
}
