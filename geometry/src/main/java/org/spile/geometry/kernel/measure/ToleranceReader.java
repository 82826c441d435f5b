package org.spile.geometry.kernel.measure;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Parse.Understood;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/**
 * Reads the words of a tolerance.
 *
 * @param faults the refusals of the words it stands in
 */
record ToleranceReader(Faults faults) {
    private static final double LARGE_MM = 100;

    Parse<Tolerance> read(ToleranceText text, Optional<Unit> valueUnit, String value) {
        if (!text.typed()) {
            return new Understood<>(Tolerance.NONE);
        }
        return part(text.plus(), valueUnit, value)
                .then(plus -> part(text.minus(), valueUnit, value).map(minus -> new Tolerance(plus, minus)));
    }

    private Parse<Double> part(String text, Optional<Unit> valueUnit, String value) {
        String words = text.strip();
        if (words.isEmpty() || words.startsWith("-") || words.startsWith("+")) {
            return faults.of(
                    Reason.TOLERANCE, ": a tolerance is a number without a sign.", "Write it as ± 3, +/- 3 or +0/-2.");
        }
        return new MagnitudeReader(faults, words, valueUnit).read().then(magnitude -> {
            double size = magnitude.difference().toDouble();
            if (size > faults.kind().mostBase()) {
                return faults.of(Reason.TOLERANCE, ": the tolerance is too large.");
            }
            if (magnitude.bare() && doubtful(magnitude.unit(), value, size)) {
                String unit = magnitude.unit().symbol();
                return faults.of(
                        Reason.TOLERANCE,
                        ": the tolerance would be " + words + " " + unit + ".",
                        "Give it its own unit: ± " + words + " mm, or ± " + words + " " + unit + ".");
            }
            return new Understood<>(size);
        });
    }

    /** A bare tolerance behind metres, centimetres or 1m93 is as often meant in millimetres. */
    private static boolean doubtful(Unit unit, String value, double size) {
        boolean compound = unit == Unit.CENTIMETRE && value.contains("m") && !value.contains("cm");
        return compound || ((unit == Unit.METRE || unit == Unit.FOOT) && size > LARGE_MM);
    }
}
