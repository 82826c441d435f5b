package org.spile.samples.layers.wrong.analysis.fit;

/** A formula that a subclass could bend. */
class OpenFormula {

    static final String SOURCE = "a book";

    double doubledMm(double gapMm) {
        return 2 * gapMm;
    }
}
