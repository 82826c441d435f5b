package org.spile.samples.speed;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.spile.analysis.whole.Checks;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;

/**
 * Measures a warm check: how long reading, working out and answering a house take once Java has compiled them.
 *
 * <p>Started by hand, as {@code docs/performance.md} says; no test asks for the time.
 */
public final class WarmCheck {
    private static final int ROUNDS = 60;
    private static final int COUNTED = 20;

    private WarmCheck() {}

    /**
     * Prints the median and the least of the last rounds, in milliseconds.
     *
     * @param words the house file
     */
    public static void main(String[] words) {
        var reading = new double[ROUNDS];
        var answering = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            var house = ((HouseResult.Sound) HouseFile.house(Path.of(words[0]), List.of(), List.of())).house();
            long read = System.nanoTime();
            Checks.answer(house);
            reading[round] = (read - start) / 1e6;
            answering[round] = (System.nanoTime() - read) / 1e6;
        }
        print("read and work out", reading);
        print("answer everything", answering);
    }

    private static void print(String what, double[] milliseconds) {
        var last = Arrays.copyOfRange(milliseconds, ROUNDS - COUNTED, ROUNDS);
        Arrays.sort(last);
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, least %.1f ms%n", what, last[COUNTED / 2], last[0]);
    }
}
