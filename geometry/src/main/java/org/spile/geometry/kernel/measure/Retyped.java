package org.spile.geometry.kernel.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What stands after a number was typed over another: the new number with all that it did not say itself.
 *
 * <p>{@code 205} over {@code 208 ± 1 maker} is {@code 205 ± 1 maker}; {@code 30} over {@code 25 L/s} is {@code 30 L/s};
 * {@code 150} over {@code 180 out} is {@code 150 out}. A bare length is always in the file's unit, so a kept tolerance gets
 * its unit written if it would change: {@code 200} over {@code 8 in ± 1/8} is {@code 200 ± 1/8 in}. Over words that are
 * no quantity, or with such words, only the new words stand.
 */
public final class Retyped {
    private static final Pattern NUMBER_START = Pattern.compile("[-+]? ?[\\d.].*");

    private Retyped() {}

    /**
     * The new words, completed from the old ones.
     *
     * @param old the words that stand
     * @param fresh the words typed over them
     * @param bareLength the unit of a bare length in this file
     */
    public static String over(String old, String fresh, Unit bareLength) {
        Optional<Parts> before = Parts.of(PlainWords.of(old));
        Optional<Parts> typed = Parts.of(PlainWords.of(fresh));
        if (before.isEmpty() || typed.isEmpty()) {
            return fresh;
        }
        Parts merged = typed.get().over(before.get(), bareLength);
        return merged.equals(typed.get()) ? fresh : merged.text();
    }

    /**
     * A quantity's words in parts.
     *
     * @param pieces one value, or the two of a range or a rated point
     * @param between what stands between two pieces
     * @param origin the origin's word, or empty
     * @param out whether it says so
     */
    private record Parts(List<String> pieces, String between, String origin, boolean out) {

        static Optional<Parts> of(String words) {
            return Tail.of(new Faults(Kind.LENGTH, words), words, true).value().flatMap(tail -> {
                String between = tail.body().contains("..") ? ".." : tail.body().contains(" at ") ? " at " : "";
                List<String> pieces = between.isEmpty()
                        ? List.of(tail.body())
                        : List.of(tail.body().split(Pattern.quote(between), 2));
                boolean quantities = pieces.stream()
                        .allMatch(piece -> NUMBER_START.matcher(piece.strip()).matches()
                                && Piece.of(piece.strip()).isPresent());
                return quantities
                        ? Optional.of(new Parts(pieces, between, tail.origin().word(), tail.out()))
                        : Optional.empty();
            });
        }

        Parts over(Parts old, Unit bareLength) {
            var merged = new ArrayList<>(pieces);
            String joint = between;
            if (old.between.equals(" at ") && between.isEmpty()) {
                merged.add(old.pieces.get(1));
                joint = old.between;
            }
            if (joint.equals(old.between)) {
                for (int i = 0; i < merged.size(); i++) {
                    merged.set(i, piece(old.pieces.get(i), merged.get(i), bareLength));
                }
            }
            return new Parts(merged, joint, origin.isEmpty() ? old.origin : origin, out || old.out);
        }

        private static String piece(String old, String fresh, Unit bareLength) {
            Piece before = Piece.of(old.strip()).orElseThrow();
            Piece typed = Piece.of(fresh.strip()).orElseThrow();
            return typed.over(before, bareLength).map(Piece::text).orElse(fresh);
        }

        String text() {
            return String.join(between, pieces) + (origin.isEmpty() ? "" : " " + origin) + (out ? " out" : "");
        }
    }

    /**
     * One value's words with its tolerance's.
     *
     * @param words the value and the tolerance, told apart
     * @param value the value, read
     */
    private record Piece(ToleranceText words, Magnitude value) {

        static Optional<Piece> of(String text) {
            ToleranceText words = ToleranceText.of(text);
            for (Kind kind : Kind.values()) {
                Optional<Piece> piece = magnitude(words.value().strip(), kind).map(value -> new Piece(words, value));
                if (piece.isPresent()) {
                    return piece;
                }
            }
            return Optional.empty();
        }

        /** The piece with what it lacks, if it lacks anything that the old one has. */
        Optional<Piece> over(Piece old, Unit bareLength) {
            Kind kind = old.value.unit().kind();
            boolean asShare = kind == Kind.RATIO && value.difference().toDouble() <= 1;
            boolean takesUnit = value.bare() && !old.value.bare() && kind != Kind.LENGTH && !asShare;
            String number =
                    words.value().strip() + (takesUnit ? " " + old.value.unit().symbol() : "");
            if (words.typed() || !old.words.typed()) {
                return takesUnit
                        ? Optional.of(new Piece(new ToleranceText(number, words.plus(), words.minus()), old.value))
                        : Optional.empty();
            }
            Unit unit = takesUnit ? old.value.unit() : unit(this, bareLength);
            Unit oldUnit = unit(old, bareLength);
            String plus = kept(old.words.plus().strip(), oldUnit, unit);
            String minus = kept(old.words.minus().strip(), oldUnit, unit);
            return Optional.of(new Piece(new ToleranceText(number, plus, minus), value));
        }

        private static Unit unit(Piece piece, Unit bareLength) {
            boolean bareLengthThere = piece.value.bare() && piece.value.unit().kind() == Kind.LENGTH;
            return bareLengthThere ? bareLength : piece.value.unit();
        }

        private static String kept(String tolerance, Unit oldUnit, Unit newUnit) {
            boolean bare = read(tolerance, oldUnit.kind(), Optional.of(oldUnit))
                    .filter(Magnitude::bare)
                    .isPresent();
            boolean alike = oldUnit == newUnit || oldUnit.symbol().isEmpty();
            return bare && !alike ? tolerance + " " + oldUnit.symbol() : tolerance;
        }

        /** A bare number is tried as a length only: any other kind would need its unit. */
        private static Optional<Magnitude> magnitude(String text, Kind kind) {
            return read(text, kind, kind == Kind.LENGTH ? Optional.of(Unit.MILLIMETRE) : Optional.empty());
        }

        private static Optional<Magnitude> read(String text, Kind kind, Optional<Unit> bare) {
            return new MagnitudeReader(new Faults(kind, text), text, bare)
                    .read()
                    .value();
        }

        String text() {
            if (!words.typed()) {
                return words.value();
            }
            return words.plus().equals(words.minus())
                    ? words.value() + " \u00b1 " + words.plus()
                    : words.value() + " +" + words.plus() + "/-" + words.minus();
        }
    }
}
