package org.spile.samples.layers.wrong.analysis.fit;

/** Remembers between calls. */
final class MovingStatic {

    private static int calls;

    private MovingStatic() {}

    static int next() {
        calls++;
        return calls;
    }
}
