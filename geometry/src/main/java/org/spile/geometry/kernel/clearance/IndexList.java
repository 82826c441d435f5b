package org.spile.geometry.kernel.clearance;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** A growing list of indices without boxing. */
final class IndexList implements IntConsumer {
    private int[] values = new int[16];
    private int size;

    @Override
    public void accept(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int[] sorted() {
        int[] copy = Arrays.copyOf(values, size);
        Arrays.sort(copy);
        return copy;
    }
}
