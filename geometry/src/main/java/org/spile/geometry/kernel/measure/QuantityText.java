package org.spile.geometry.kernel.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.spile.geometry.kernel.measure.Parse.Understood;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/**
 * Reads quantities as people write them: {@code 208 ± 3 measured}, {@code 14' 2 1/2"}, {@code 120 L/s at 30 Pa}.
 *
 * <p>A value may be followed by a tolerance ({@code ± 3}, {@code +/- 3}, {@code +0/-2}), then by its origin, then, for a
 * position, by {@code out}. A tolerance has the value's unit unless it has its own. Bare numbers are lengths, in the
 * unit the file chose; all else carries a unit. Nothing is guessed: what could mean two things is refused.
 */
public final class QuantityText {
    private static final int LONGEST = 200;

    private final Unit bareLength;

    private QuantityText(Unit bareLength) {
        this.bareLength = bareLength;
    }

    /** Bare lengths are millimetres. */
    public static QuantityText inMillimetres() {
        return new QuantityText(Unit.MILLIMETRE);
    }

    /** Bare lengths are inches. */
    public static QuantityText inInches() {
        return new QuantityText(Unit.INCH);
    }

    /** The unit of a bare length. */
    public Unit bareLength() {
        return bareLength;
    }

    /** Reads one value; the reading has no path yet. */
    public Parse<Reading> reading(String words, Ask ask) {
        return tail(words, ask, false).then(tail -> reading(tail, tail.body(), ask));
    }

    /** Reads where something lies along an axis: a length, or two with {@code ..}; {@code out} may follow. */
    public Parse<Position> position(String words, Sign sign) {
        var ask = new Ask(Kind.LENGTH, sign);
        return tail(words, ask, sign != Sign.ANY).then(tail -> {
            if (!tail.body().contains("..")) {
                return reading(tail, tail.body(), ask).map(one -> new Position(List.of(one), tail.out()));
            }
            return band(tail, ask).map(band -> new Position(List.of(band.low(), band.high()), tail.out()));
        });
    }

    /** Reads a range, {@code 60 kg..110 kg} or {@code 60..110 kg}. */
    public Parse<Band> band(String words, Ask ask) {
        return tail(words, ask, false).then(tail -> band(tail, ask));
    }

    /** Reads one quantity at another, {@code 120 L/s at 30 Pa}; an origin behind it holds for both. */
    public Parse<Rated> rated(String words, Ask what, Ask at) {
        return tail(words, what, false).then(tail -> {
            int split = tail.body().indexOf(" at ");
            if (split < 0 || tail.body().indexOf(" at ", split + 1) >= 0) {
                return new Faults(what.kind(), words)
                        .of(Reason.PAIR, " is not one quantity at another.", pairForm(what, at));
            }
            String first = tail.body().substring(0, split);
            String second = tail.body().substring(split + 4);
            return both(reading(tail, first, what), reading(tail, second, at), Rated::new);
        });
    }

    /** Reads a tolerance that stands alone, {@code ± 1} or {@code +0/-2}; {@code 1} alone means either way. */
    public Parse<Tolerance> tolerance(String words, Kind kind) {
        var ask = new Ask(kind, Sign.ANY);
        return tail(words, ask, false).then(tail -> {
            ToleranceText split = ToleranceText.of(tail.body());
            var whole = split.typed() ? split : new ToleranceText("", tail.body(), tail.body());
            if (!whole.value().isEmpty()) {
                return tail.faults().of(Reason.TOLERANCE, " is more than a tolerance.", "Write it as ± 1 or +0/-2.");
            }
            return new ToleranceReader(tail.faults()).read(whole, bareUnit(kind), "");
        });
    }

    /** Asks about a bare length that is unusual as it stands and usual in another unit. */
    public Optional<Doubt> doubt(Reading reading, Usual usual) {
        if (reading.kind() != Kind.LENGTH || reading.value() == 0 || usual.holds(reading.value())) {
            return Optional.empty();
        }
        return tail(reading.words(), Ask.coordinate(), true)
                .then(tail -> new MagnitudeReader(
                                tail.faults(), ToleranceText.of(tail.body()).value(), Optional.of(bareLength))
                        .read())
                .value()
                .filter(Magnitude::bare)
                .flatMap(magnitude -> BareDoubt.of(reading, bareLength, usual));
    }

    private Parse<Tail> tail(String words, Ask ask, boolean outAllowed) {
        var faults = new Faults(ask.kind(), words);
        if (words.length() > LONGEST) {
            return faults.of(Reason.SURPLUS, " is too long for " + ask.kind().phrase() + ".");
        }
        return Tail.of(faults, PlainWords.of(words), outAllowed);
    }

    private Parse<Band> band(Tail tail, Ask ask) {
        String body = tail.body();
        int split = body.indexOf("..");
        if (split < 0 || body.indexOf("..", split + 1) >= 0 || split == 0 || split + 2 == body.length()) {
            return tail.faults().of(Reason.PAIR, " is not a range.", "A range goes from low to high: " + bandForm(ask));
        }
        Parse<Reading> high = reading(tail, body.substring(split + 2), ask);
        String first = body.substring(0, split);
        Parse<Reading> low = reading(tail, first, ask);
        // 60..110 kg: the unit behind the second number is the first one's too.
        if (low.refusal().map(Refusal::reason).orElse(Reason.EMPTY) == Reason.NO_UNIT || bareLength(first, ask)) {
            low = unitBehind(body.substring(split + 2), ask.kind()).isEmpty()
                    ? low
                    : reading(tail, first.strip() + " " + unitBehind(body.substring(split + 2), ask.kind()), ask);
        }
        return both(low, high, (a, b) -> List.of(a, b)).then(pair -> {
            if (pair.get(0).value() > pair.get(1).value()) {
                return tail.faults().of(Reason.PAIR, " goes from high to low.", "Write the lower one first.");
            }
            return new Understood<>(new Band(pair.get(0), pair.get(1)));
        });
    }

    private boolean bareLength(String text, Ask ask) {
        return ask.kind() == Kind.LENGTH && text.strip().matches("-?[0-9./ ]+");
    }

    private static String unitBehind(String text, Kind kind) {
        String value = ToleranceText.of(text).value().strip();
        String unit = value.replaceFirst("^[+-]?[0-9./ ]+", "");
        return Spelling.of(unit, kind).map(Unit::symbol).orElse("");
    }

    private Parse<Reading> reading(Tail tail, String text, Ask ask) {
        var faults = new Faults(ask.kind(), tail.faults().words());
        // A pair's readings each keep their own words, a single one all of them.
        String words = text.equals(tail.body()) ? faults.words().strip() : text.strip();
        ToleranceText split = ToleranceText.of(text);
        if (split.value().isBlank()) {
            return faults.of(Reason.NO_NUMBER, " has no value before its tolerance.");
        }
        return new MagnitudeReader(faults, split.value(), bareUnit(ask.kind()))
                .read()
                .then(magnitude -> new ToleranceReader(faults)
                        .read(split, Optional.of(magnitude.unit()), split.value())
                        .then(tolerance -> ValueRules.checked(faults, ask, magnitude, tolerance)
                                .map(value -> new Reading(
                                        "",
                                        value,
                                        tolerance.plus(),
                                        tolerance.minus(),
                                        tail.origin(),
                                        split.typed(),
                                        ask.kind(),
                                        words))));
    }

    private Optional<Unit> bareUnit(Kind kind) {
        return switch (kind) {
            case LENGTH -> Optional.of(bareLength);
            case RATIO -> Optional.of(Unit.ONE);
            case NUMBER -> Optional.of(Unit.NUMBER);
            case COUNT -> Optional.of(Unit.COUNT);
            default -> Optional.empty();
        };
    }

    private static <A, B, R> Parse<R> both(Parse<A> one, Parse<B> other, BiFunction<A, B, R> join) {
        return one.then(a -> other.map(b -> join.apply(a, b)));
    }

    private static String pairForm(Ask what, Ask at) {
        return "It is written X at Y. " + what.kind().form() + " " + at.kind().form();
    }

    private static String bandForm(Ask ask) {
        String unit = ask.kind().baseSymbol();
        return ask.kind() == Kind.LENGTH || unit.isEmpty() ? "640..1380." : "60 " + unit + "..110 " + unit + ".";
    }
}
