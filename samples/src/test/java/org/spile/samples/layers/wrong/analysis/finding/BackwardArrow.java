package org.spile.samples.layers.wrong.analysis.finding;

import org.spile.samples.layers.wrong.exporters.svg.SoundStroke;

/** A finding knows how it is drawn, if only in a list. */
final class BackwardArrow {

    private BackwardArrow() {}

    static int count(SoundStroke[] strokes) {
        return strokes.length;
    }
}
