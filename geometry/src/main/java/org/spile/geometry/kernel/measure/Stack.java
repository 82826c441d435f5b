package org.spile.geometry.kernel.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A length as a sum of readings, each times a factor, so that its worst case is exact.
 *
 * <p>The sum is constant + factor1 x reading1 + factor2 x reading2 ... Readings of one path are one measurement: their
 * factors add up, so a ceiling that is both subtracted and added drops out with its tolerance. Worst cases take every
 * reading at its worse end at once. Immutable; layers keep the order in which their paths first appeared.
 */
public final class Stack {
    /** Nothing: the sum of no readings. */
    public static final Stack ZERO = new Stack(0, List.of());

    // Factors are sines, cosines and ratios of order one; what is left of them after cancelling is rounding.
    private static final double NO_FACTOR = 1e-12;

    private final double constantMm;
    private final List<Layer> layers;
    private final double valueMm;

    private Stack(double constantMm, List<Layer> layers) {
        this.constantMm = constantMm;
        this.layers = layers;
        double sum = constantMm;
        for (Layer layer : layers) {
            sum += layer.addsMm();
        }
        this.valueMm = sum;
    }

    /**
     * An exact length that rests on no reading.
     *
     * @throws IllegalArgumentException if it is not finite
     */
    public static Stack constant(double mm) {
        return new Stack(finite(mm), List.of());
    }

    /** One reading, once: for a length its millimetres. */
    public static Stack of(Reading reading) {
        return of(reading, 1);
    }

    /**
     * One reading times a factor in mm for one of its base units, as an angle times its lever.
     *
     * @throws IllegalArgumentException if the factor is not finite
     */
    public static Stack of(Reading reading, double mmForOne) {
        Objects.requireNonNull(reading, "reading");
        return Math.abs(finite(mmForOne)) < NO_FACTOR ? ZERO : new Stack(0, List.of(new Layer(reading, mmForOne)));
    }

    /**
     * This sum and another.
     *
     * @throws IllegalArgumentException if one path has two different readings
     */
    public Stack plus(Stack other) {
        return added(other, 1);
    }

    /** This sum and an exact length. */
    public Stack plus(double mm) {
        return new Stack(constantMm + finite(mm), layers);
    }

    /**
     * This sum less another.
     *
     * @throws IllegalArgumentException if one path has two different readings
     */
    public Stack minus(Stack other) {
        return added(other, -1);
    }

    /** This sum less an exact length. */
    public Stack minus(double mm) {
        return plus(-mm);
    }

    /** This sum times a factor. */
    public Stack times(double factor) {
        return ZERO.added(this, finite(factor));
    }

    /** The length with every reading at its value, in mm. */
    public double valueMm() {
        return valueMm;
    }

    /** The part that rests on no reading, in mm. */
    public double constantMm() {
        return constantMm;
    }

    /** The readings with their factors, in order of first appearance. */
    public List<Layer> layers() {
        return layers;
    }

    /** The least the length may be with every reading at its worse end, in mm. */
    public double worstLow() {
        double down = 0;
        for (Layer layer : layers) {
            down += layer.downMm();
        }
        return valueMm() - down;
    }

    /** The most the length may be with every reading at its worse end, in mm. */
    public double worstHigh() {
        double up = 0;
        for (Layer layer : layers) {
            up += layer.upMm();
        }
        return valueMm() + up;
    }

    private Stack added(Stack other, double sign) {
        if (other.layers.isEmpty()) {
            return new Stack(constantMm + sign * other.constantMm + 0.0, layers);
        }
        var merged = new ArrayList<Layer>(layers.size() + other.layers.size());
        merged.addAll(layers);
        for (Layer layer : other.layers) {
            merge(merged, layer.reading(), sign * layer.factor());
        }
        return new Stack(constantMm + sign * other.constantMm + 0.0, List.copyOf(merged));
    }

    private static void merge(List<Layer> into, Reading reading, double factor) {
        for (int i = 0; i < into.size(); i++) {
            Layer there = into.get(i);
            if (same(there.reading(), reading)) {
                double sum = there.factor() + factor;
                if (Math.abs(sum) < NO_FACTOR) {
                    into.remove(i);
                } else {
                    into.set(i, new Layer(there.reading(), sum));
                }
                return;
            }
        }
        if (Math.abs(factor) >= NO_FACTOR) {
            into.add(new Layer(reading, factor));
        }
    }

    private static boolean same(Reading one, Reading other) {
        if (one.path().isEmpty() || !one.path().equals(other.path())) {
            return false;
        }
        if (one.value() != other.value() || one.plus() != other.plus() || one.minus() != other.minus()) {
            throw new IllegalArgumentException("one path, two readings: " + one + " and " + other);
        }
        return true;
    }

    private static double finite(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("must be finite: " + number);
        }
        return number;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Stack that
                && Double.compare(constantMm, that.constantMm) == 0
                && layers.equals(that.layers);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(constantMm) + layers.hashCode();
    }

    /** One line a person can follow: {@code 262 - 46 ± 2 units.cooler.at.top = 216}. */
    @Override
    public String toString() {
        var text = new StringBuilder(Written.number(constantMm, 3));
        for (Layer layer : layers) {
            double factor = layer.factor();
            text.append(factor < 0 ? " - " : " + ");
            if (Math.abs(factor) != 1) {
                text.append(Written.number(Math.abs(factor), 6)).append(" x ");
            }
            text.append(Written.reading(layer.reading()));
            if (!layer.reading().path().isEmpty()) {
                text.append(' ').append(layer.reading().path());
            }
        }
        return text.append(" = ").append(Written.number(valueMm(), 3)).toString();
    }
}
