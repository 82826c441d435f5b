package org.spile.samples.layers.wrong.analysis.fit;

/** A reader in everyone's hands that changes as it reads. */
public final class MovingReader {

    private int at;

    MovingReader(int start) {
        at = start;
    }

    int next() {
        at++;
        return at;
    }
}
