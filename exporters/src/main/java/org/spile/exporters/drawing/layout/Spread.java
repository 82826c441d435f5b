package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves places on a line apart until neighbours keep a pitch, as little as possible: least squares, by pooling neighbours
 * that would collide (the pool-adjacent-violators way of isotonic regression).
 */
final class Spread {
    private Spread() {}

    /**
     * Places that keep the pitch.
     *
     * @param wanted places in rising order
     * @param pitch least distance of neighbours, above 0
     * @return as many places, in the same order
     */
    static List<Double> apart(List<Double> wanted, double pitch) {
        // With y(i) = x(i) - i * pitch the demand becomes: y must not fall.
        var means = new ArrayList<Double>();
        var counts = new ArrayList<Integer>();
        for (var i = 0; i < wanted.size(); i++) {
            var mean = wanted.get(i) - i * pitch;
            var count = 1;
            while (!means.isEmpty() && means.get(means.size() - 1) > mean) {
                var last = means.size() - 1;
                mean = (mean * count + means.get(last) * counts.get(last)) / (count + counts.get(last));
                count += counts.get(last);
                means.remove(last);
                counts.remove(last);
            }
            means.add(mean);
            counts.add(count);
        }
        var apart = new ArrayList<Double>();
        for (var pool = 0; pool < means.size(); pool++) {
            for (var i = 0; i < counts.get(pool); i++) {
                apart.add(means.get(pool) + apart.size() * pitch);
            }
        }
        return apart;
    }
}
