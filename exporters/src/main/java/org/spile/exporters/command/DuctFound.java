package org.spile.exporters.command;

import java.util.List;
import java.util.function.Function;
import org.spile.analysis.duct.PipeComparison;
import org.spile.analysis.duct.Spread;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Reckoning;
import org.spile.exporters.table.Sum.Found;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.kernel.measure.Unit;
import org.spile.geometry.kernel.measure.Written;

/** Numbers about ducts as they are told: lengths and areas in millimetres or in inches. */
final class DuctFound {
    private static final double INCH_MM = Unit.INCH.toBase(1);

    private final Unit length;
    private final Unit area;
    private final Unit flow;
    private final int decimals;
    private final List<Double> pipesMm;

    DuctFound(boolean inInches) {
        this.length = inInches ? Unit.INCH : Unit.MILLIMETRE;
        this.area = inInches ? Unit.SQUARE_INCH : Unit.SQUARE_MILLIMETRE;
        this.flow = inInches ? Unit.CUBIC_FOOT_PER_MINUTE : Unit.LITRE_PER_SECOND;
        this.decimals = inInches ? 2 : 1;
        this.pipesMm = inInches
                ? List.of(2 * INCH_MM, 3 * INCH_MM, 4 * INCH_MM, 5 * INCH_MM, 6 * INCH_MM)
                : List.of(50.0, 75.0, 100.0, 125.0, 150.0);
    }

    Found length(double mm) {
        return one(length.fromBase(mm), length.symbol(), decimals);
    }

    Found lengths(Spread mm) {
        return spread(
                new Spread(length.fromBase(mm.low()), length.fromBase(mm.value()), length.fromBase(mm.high())),
                length.symbol(),
                decimals);
    }

    Found area(double mm2) {
        return one(area.fromBase(mm2), area.symbol(), decimals - 1);
    }

    String flow(double m3s) {
        return Written.in(flow, m3s, 2);
    }

    /** Pipe that is sold everywhere (mm); our own choice. */
    List<Double> pipesMm() {
        return pipesMm;
    }

    String text(double mm) {
        return Written.in(length, mm, decimals + 1);
    }

    String words(Section section) {
        if (section instanceof Section.Round round) {
            return "round duct, " + text(round.diameterMm());
        }
        var sides = Written.number(length.fromBase(section.wideMm()), decimals + 1) + " x " + text(section.highMm());
        return (section instanceof Section.FlatOval ? "flat oval duct, " : "rectangular duct, ") + sides;
    }

    static String verdict(PipeComparison comparison) {
        return switch (comparison.verdict()) {
            case PASSES -> "yes: it loses no more by any method";
            case TIGHT, NOT_KNOWN -> "too close to call: the methods don't agree";
            case FAILS -> "no: it loses more by every method";
        };
    }

    static Found one(double number, String unit, int decimals) {
        return new Found.One(new Quantity(number, unit), decimals);
    }

    static Found number(double number, int decimals) {
        return one(number, "", decimals);
    }

    static Found spread(Spread spread, String unit, int decimals) {
        return spread.low() == spread.high()
                ? one(spread.value(), unit, decimals)
                : new Found.Between(
                        new Quantity(spread.low(), unit),
                        new Quantity(spread.value(), unit),
                        new Quantity(spread.high(), unit),
                        decimals);
    }

    static <T> Found found(Reckoning<T> reckoning, Function<T, Found> known) {
        return reckoning
                .result()
                .map(known)
                .orElseGet(() -> new Found.Open(reckoning.because().orElseThrow()));
    }
}
