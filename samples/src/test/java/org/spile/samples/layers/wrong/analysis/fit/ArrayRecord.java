package org.spile.samples.layers.wrong.analysis.fit;

/**
 * Equal contents aren't equal here.
 *
 * @param gapsMm anyone may change them
 */
@SuppressWarnings("ArrayRecordComponent") // the fault this class is here to show
record ArrayRecord(double[] gapsMm) {}
