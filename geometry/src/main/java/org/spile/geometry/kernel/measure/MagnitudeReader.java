package org.spile.geometry.kernel.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.spile.geometry.kernel.measure.Parse.Understood;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/** Reads {@code 15}, {@code 5/8 in}, {@code 1m93}, {@code 14' 2 1/2"}, {@code 25 L/s}, {@code 1:50} into a magnitude. */
final class MagnitudeReader {
    private static final Pattern MIXED = Pattern.compile("(\\d+)[ -](\\d+)/(\\d+)(?![\\d.])");
    private static final Pattern FRACTION = Pattern.compile("(\\d+)/(\\d+)(?![\\d.])");
    private static final Pattern DECIMAL = Pattern.compile("\\d+(?:\\.\\d+)?|\\.\\d+");
    private static final Pattern GRADIENT = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(?:: ?| in )(\\d+(?:\\.\\d+)?)");
    private static final int MOST_DIGITS = 24;

    private final Faults faults;
    private final String text;
    private final Kind kind;
    private final Optional<Unit> bareUnit;
    private int at;

    MagnitudeReader(Faults faults, String text, Optional<Unit> bareUnit) {
        this.faults = faults;
        this.text = text.strip();
        this.kind = faults.kind();
        this.bareUnit = bareUnit;
    }

    Parse<Magnitude> read() {
        Optional<Parse<Magnitude>> trap = NumberTraps.met(faults, text);
        if (trap.isPresent()) {
            return trap.get();
        }
        boolean minus = text.startsWith("-");
        boolean signed = minus || text.startsWith("+");
        at = signed ? 1 : 0;
        skipSpaces();
        Matcher gradient = GRADIENT.matcher(text).region(at, text.length());
        if (kind == Kind.SLOPE && gradient.matches()) {
            return gradient(gradient, minus, signed);
        }
        var terms = new ArrayList<Term>();
        while (at < text.length()) {
            Parse<Term> term = term(terms);
            if (term.value().isEmpty()) {
                return term.then(never -> faults.empty());
            }
            terms.add(term.value().get());
            skipSpaces();
        }
        if (terms.isEmpty()) {
            return faults.of(Reason.NO_NUMBER, " is not a number.");
        }
        return terms.size() == 1 ? single(terms.get(0), minus, signed) : compound(terms, minus, signed);
    }

    private Parse<Magnitude> gradient(Matcher parts, boolean minus, boolean signed) {
        var ratio = new Fraction(new BigDecimal(parts.group(1)), new BigDecimal(parts.group(2)));
        if (ratio.bottom().signum() == 0) {
            return faults.of(Reason.NO_NUMBER, ": nothing is divided by 0.");
        }
        return new Understood<>(
                new Magnitude(minus ? ratio.negated() : ratio, ratio, Unit.SLOPE_PERCENT, false, signed));
    }

    private Parse<Term> term(List<Term> before) {
        if (!before.isEmpty() && text.startsWith("-", at)) {
            at++;
        }
        Optional<String> digits = digits();
        if (digits.isEmpty()) {
            String rest = word();
            return before.isEmpty() ? notANumber(rest) : faults.surplus(rest);
        }
        Optional<Fraction> number = number(digits.get());
        if (number.isEmpty()) {
            return faults.of(
                    Reason.NO_NUMBER,
                    ": \"" + Faults.shown(digits.get()) + "\" is not a fraction or too long a number.");
        }
        skipSpaces();
        return unit(digits.get(), number.get(), before);
    }

    private Parse<Term> notANumber(String rest) {
        boolean unitAlone = Spelling.of(rest).isPresent();
        return faults.of(Reason.NO_NUMBER, unitAlone ? " has no number." : " is not " + kind.phrase() + ".");
    }

    private Parse<Term> unit(String digits, Fraction number, List<Term> before) {
        if (at == text.length() || Character.isDigit(text.charAt(at)) || text.charAt(at) == '.') {
            return bare(digits, number, before);
        }
        int own = longest(true);
        int any = longest(false);
        boolean feet =
                own > 0 && Spelling.of(text.substring(at, at + own), kind).orElseThrow() == Unit.FOOT;
        if (own == 0 || (any > own && !feet)) {
            String found = text.substring(at, any == 0 ? at : at + any);
            Optional<Unit> foreign = Spelling.of(found);
            return any == 0 || foreign.isEmpty() ? faults.unknownUnit(word()) : faults.wrongUnit(foreign.get());
        }
        Unit unit = Spelling.of(text.substring(at, at + own), kind).orElseThrow();
        at += own;
        return new Understood<>(new Term(digits, number, unit, false));
    }

    private Parse<Term> bare(String digits, Fraction number, List<Term> before) {
        if (at < text.length()) {
            return faults.of(Reason.SURPLUS, ": two numbers without a unit between them.", kind.form(digits));
        }
        if (before.isEmpty()) {
            return bareUnit.isPresent()
                    ? new Understood<>(new Term(digits, number, bareUnit.get(), true))
                    : faults.noUnit(digits);
        }
        Unit last = before.get(before.size() - 1).unit();
        if (last == Unit.FOOT) {
            return new Understood<>(new Term(digits, number, Unit.INCH, false));
        }
        if (last == Unit.METRE && (digits.length() == 2 || digits.length() == 3) && !digits.contains(".")) {
            Unit finer = digits.length() == 2 ? Unit.CENTIMETRE : Unit.MILLIMETRE;
            return new Understood<>(new Term(digits, number, finer, false));
        }
        return faults.of(
                Reason.SURPLUS,
                ": \"" + digits + "\" has no unit.",
                "Metres and centimetres are 1m93 or 1.93 m, feet and inches 6 ft 2 in.");
    }

    private int longest(boolean ownKindOnly) {
        int longest = 0;
        for (Spelling spelling : Spelling.table()) {
            int length = spelling.text().length();
            if (length > longest
                    && (!ownKindOnly || spelling.unit().kind() == kind)
                    && text.regionMatches(true, at, spelling.text(), 0, length)
                    && ends(spelling, at + length)) {
                longest = length;
            }
        }
        return longest;
    }

    /** Whether a unit may end here: before a space or the end, or before digits where 6ft5 and 1m93 are usual. */
    private boolean ends(Spelling spelling, int end) {
        if (end >= text.length() || text.charAt(end) == ' ') {
            return true;
        }
        boolean glued = Character.isDigit(text.charAt(end));
        if (spelling.unit() == Unit.FOOT) {
            return glued
                    || (text.charAt(end) == '-' && end + 1 < text.length() && Character.isDigit(text.charAt(end + 1)));
        }
        return glued && spelling.unit() == Unit.METRE;
    }

    private Parse<Magnitude> single(Term term, boolean minus, boolean signed) {
        if (kind == Kind.RATIO && term.bare() && term.number().toDouble() > 1) {
            return faults.noUnit(term.digits());
        }
        Fraction number = minus ? term.number().negated() : term.number();
        return new Understood<>(new Magnitude(
                term.unit().toBase(number),
                term.unit().differenceToBase(term.number()),
                term.unit(),
                term.bare(),
                signed));
    }

    private Parse<Magnitude> compound(List<Term> terms, boolean minus, boolean signed) {
        Fraction sum = new Fraction(BigDecimal.ZERO, BigDecimal.ONE);
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            if (i > 0 && !finer(terms.get(i - 1), term)) {
                return faults.of(
                        Reason.FEET_AND_INCHES,
                        ": \"" + term.digits() + " " + term.unit().symbol()
                                + "\" does not go with what stands before it.",
                        "Feet and inches are 6 ft 2 in (inches less than 12), metres and centimetres 1m93 or 1.93 m.");
            }
            sum = sum.plus(term.unit().differenceToBase(term.number()));
        }
        Term last = terms.get(terms.size() - 1);
        return new Understood<>(new Magnitude(minus ? sum.negated() : sum, sum, last.unit(), false, signed));
    }

    private static boolean finer(Term term, Term next) {
        boolean family = (term.unit() == Unit.FOOT && next.unit() == Unit.INCH)
                || (term.unit() == Unit.METRE && (next.unit() == Unit.CENTIMETRE || next.unit() == Unit.MILLIMETRE))
                || (term.unit() == Unit.POUND && next.unit() == Unit.OUNCE);
        boolean whole = term.digits().chars().allMatch(Character::isDigit);
        double size = next.unit().differenceToBase(next.number()).toDouble();
        return family && whole && size < term.unit().differenceToBase(1);
    }

    private Optional<String> digits() {
        for (Pattern pattern : List.of(MIXED, FRACTION, DECIMAL)) {
            Matcher matcher = pattern.matcher(text).region(at, text.length());
            if (matcher.lookingAt()) {
                at = matcher.end();
                return Optional.of(matcher.group());
            }
        }
        return Optional.empty();
    }

    private static Optional<Fraction> number(String digits) {
        if (digits.length() > MOST_DIGITS) {
            return Optional.empty();
        }
        int slash = digits.indexOf('/');
        if (slash < 0) {
            return Optional.of(Fraction.of(digits));
        }
        int split = Math.max(digits.indexOf(' '), digits.indexOf('-'));
        var top = new BigDecimal(digits.substring(split + 1, slash));
        var bottom = new BigDecimal(digits.substring(slash + 1));
        boolean improper = split >= 0 && top.compareTo(bottom) >= 0;
        if (bottom.signum() == 0 || improper) {
            return Optional.empty();
        }
        Fraction part = new Fraction(top, bottom);
        return Optional.of(split < 0 ? part : part.plus(Fraction.of(digits.substring(0, split))));
    }

    private String word() {
        int end = text.indexOf(' ', at);
        return text.substring(at, end < 0 ? text.length() : end);
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }
}
