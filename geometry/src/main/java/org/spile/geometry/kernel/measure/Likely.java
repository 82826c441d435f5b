package org.spile.geometry.kernel.measure;

import java.util.List;
import java.util.Optional;

/**
 * Where a sum of readings is likely to lie: the root of the sum of squares about the middle of its tolerances.
 *
 * <p>With factors a, sizes n and tolerances +u/-l:
 *
 * <pre>
 *   m = n + (u - l) / 2        t = (u + l) / 2        each reading centred first
 *   middle = sum a m           spread = root of sum (a t)^2
 * </pre>
 *
 * <p>Movements ({@link Kind#MOVEMENT}) come together and count in full: they are neither centred nor squared. Source: Chase
 * and Parkinson, A survey of research in the application of tolerance analysis, Research in Engineering Design 3 (1991) 23,
 * from memory. It is a statement about many alike, for readings that err independently of each other: nothing is
 * decided by it. Range: at least {@value #LEAST_READINGS} readings with a tolerance.
 *
 * @param middleMm the sum with every reading in the middle of its tolerance
 * @param spreadMm how far it may lie from there, likely, not negative
 * @param movesMm how far movements may take it down, not negative
 */
public record Likely(double middleMm, double spreadMm, double movesMm) {
    /** With fewer the sum of squares says too little about their sum. */
    public static final int LEAST_READINGS = 4;

    /** Where a sum is likely to lie; empty outside the range. */
    public static Optional<Likely> of(Stack stack) {
        List<Layer> doubtful = stack.layers().stream()
                .filter(layer -> !layer.reading().exact())
                .toList();
        double shift = 0;
        double squares = 0;
        double moves = 0;
        int independent = 0;
        for (Layer layer : doubtful) {
            if (layer.moves()) {
                moves += layer.downMm();
            } else {
                double half = (layer.upMm() + layer.downMm()) / 2;
                shift += (layer.upMm() - layer.downMm()) / 2;
                squares += half * half;
                independent++;
            }
        }
        return independent < LEAST_READINGS
                ? Optional.empty()
                : Optional.of(new Likely(stack.valueMm() + shift, Math.sqrt(squares), moves));
    }

    /** The least it is likely to be. */
    public double lowMm() {
        return middleMm - spreadMm - movesMm;
    }
}
