package org.spile.analysis.whole;

import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.geometry.kernel.measure.Written;

/**
 * One dimension to measure.
 *
 * @param number its number on the sheet, in walking order from 1
 * @param rank how much depends on it: 1 is to be measured first
 * @param layer its path, value, tolerance and origin, as they stand in the stack of the first finding it decides
 * @param says what to hold the tape between
 * @param trust how far the value in the file can be trusted
 * @param presumed how far it is presumed to be off either way, in its own unit, where the file says no tolerance; else 0
 * @param decides what it decides, the tightest first
 * @param tape where it is; empty if that can't be shown
 */
public record TapeRow(
        int number,
        int rank,
        Layer layer,
        String says,
        Trust trust,
        double presumed,
        List<Decides> decides,
        Optional<Tape> tape) {
    private static final int DECIMALS = 2;

    /** Copies the list. */
    public TapeRow {
        decides = List.copyOf(decides);
    }

    /**
     * A finding that a dimension decides.
     *
     * @param finding the finding
     * @param takesMm how much of its margin the dimension may take towards the other verdict (mm)
     * @param needed how exactly it must be known, either way in its own unit, so that the verdict stands if all dimensions of
     *     the sheet are known as exactly as it asks; empty if no exactness would do
     */
    public record Decides(Finding finding, double takesMm, Optional<Double> needed) {}

    /** Its path in the house file. */
    public String path() {
        return layer.label();
    }

    /** How exactly it must be known for all it decides; empty if no exactness would do for one of them. */
    public Optional<Double> needed() {
        return decides.stream().allMatch(each -> each.needed().isPresent())
                ? decides.stream().map(each -> each.needed().orElseThrow()).min(Double::compare)
                : Optional.empty();
    }

    /** The most it may take of any margin (mm). */
    public double takesMm() {
        return decides.stream().mapToDouble(Decides::takesMm).max().orElse(0);
    }

    /** The value in the file with its tolerance and how far it can be trusted, as {@code 1962 ± 3 mm, measured}. */
    public String inFile() {
        String value = Written.number(layer.size().number(), DECIMALS);
        String plus = Written.number(layer.plus(), DECIMALS);
        String minus = Written.number(layer.minus(), DECIMALS);
        boolean exact = layer.plus() == 0 && layer.minus() == 0;
        String tolerance = exact ? "" : plus.equals(minus) ? " ± " + plus : " +" + plus + "/-" + minus;
        return value + tolerance + unit() + ", " + trust.words();
    }

    /** How exactly it must be known, as {@code ± 0.4 mm}, rounded down. */
    public String neededSays() {
        return needed().map(need -> "± " + Written.down(need, need < 1 ? DECIMALS : 1) + unit())
                .orElse("no tape settles it");
    }

    private String unit() {
        return layer.size().unit().isEmpty() ? "" : " " + layer.size().unit();
    }

    TapeRow numbered(int newNumber) {
        return new TapeRow(newNumber, rank, layer, says, trust, presumed, decides, tape);
    }

    TapeRow ranked(int newRank) {
        return new TapeRow(number, newRank, layer, says, trust, presumed, decides, tape);
    }
}
