package org.spile.samples.layers.wrong.analysis.fit;

/** Changes under its users' feet. */
final class MovingField {

    private double gapMm;

    double widenedMm(double byMm) {
        gapMm += byMm;
        return gapMm;
    }
}
