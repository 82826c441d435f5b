package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;

/**
 * A finding whose verdict could turn within what its readings may be off, and how much each of them may turn it.
 *
 * @param finding the finding
 * @param marginMm found less asked, as drawn; below 0 it fails
 * @param fixedMm what no measuring takes away: the tolerance of the demand, and movements in use
 * @param doubts the readings that could turn it, the most harmful first
 */
record Unsettled(Finding finding, double marginMm, double fixedMm, List<Doubt> doubts) {
    /** What counts as met with equality. */
    private static final double SAME_MM = 1e-6;

    private static final Comparator<Doubt> GREEDIEST = Comparator.comparingDouble((Doubt doubt) -> -doubt.takesMm())
            .thenComparing(doubt -> doubt.layer().label());

    /** What fails first, then what is tight; among equals those nearest to turning: least margin for what it could be off. */
    static final Comparator<Unsettled> TIGHTEST = Comparator.comparing(
                    (Unsettled unsettled) -> unsettled.finding().verdict())
            .thenComparingDouble(Unsettled::calm)
            .thenComparing(unsettled -> unsettled.finding().id());

    Unsettled {
        doubts = List.copyOf(doubts);
    }

    /**
     * One reading.
     *
     * @param layer as it stands in the stack
     * @param takesMm how much of the margin it may take towards the other verdict (mm)
     */
    record Doubt(Layer layer, double takesMm) {}

    /** Whether a finding could turn; one without a margin in millimetres, or undecided by bounds, isn't for a tape. */
    static Optional<Unsettled> of(Finding finding) {
        Optional<Quantity> margin =
                finding.margin().filter(quantity -> quantity.unit().equals("mm"));
        if (margin.isEmpty() || finding.stack().isEmpty()) {
            return Optional.empty();
        }
        double marginMm = margin.get().number();
        List<Doubt> doubts = new ArrayList<>();
        double fixedMm = demandMm(finding, marginMm);
        for (Layer layer : finding.stack()) {
            double takes = marginMm < 0 ? upMm(layer) : downMm(layer);
            if (layer.label().isEmpty() || isMovement(layer.label())) {
                fixedMm += takes;
            } else if (takes > 0) {
                doubts.add(new Doubt(layer, takes));
            }
        }
        doubts.sort(GREEDIEST);
        var unsettled = new Unsettled(finding, marginMm, fixedMm, doubts);
        return doubts.isEmpty() || unsettled.totalMm() <= Math.abs(marginMm) + SAME_MM
                ? Optional.empty()
                : Optional.of(unsettled);
    }

    /** How far all its readings together may turn it (mm). */
    double totalMm() {
        return fixedMm + doubts.stream().mapToDouble(Doubt::takesMm).sum();
    }

    /** Margin over doubt: 0 turns at a breath, 1 doesn't turn. */
    double calm() {
        return Math.abs(marginMm) / totalMm();
    }

    /** The readings that must be measured to settle it: known as they are, the others are exact enough. */
    List<Doubt> toMeasure() {
        double level = level(doubts, fixedMm);
        return doubts.stream()
                .filter(doubt -> doubt.takesMm() > level + SAME_MM)
                .toList();
    }

    /**
     * How exactly a reading must be known so that the verdict stands, if no reading measured may take more of the margin than
     * another and those not measured stay as they are.
     *
     * @param doubt one of those measured
     * @param measured paths of all that are measured
     * @return either way, in the reading's own unit; empty if no exactness would do
     */
    Optional<Double> needed(Doubt doubt, List<String> measured) {
        double others = fixedMm;
        List<Doubt> measuredOnes = new ArrayList<>();
        for (Doubt each : doubts) {
            if (measured.contains(each.layer().label())) {
                measuredOnes.add(each);
            } else {
                others += each.takesMm();
            }
        }
        double level = level(measuredOnes, others);
        return level > SAME_MM ? Optional.of(level / Math.abs(doubt.layer().factor())) : Optional.empty();
    }

    /** What each of some readings may take at most, so that with the others the margin is just used up (mm). */
    private double level(List<Doubt> some, double othersMm) {
        double left = Math.abs(marginMm) - othersMm;
        double level = left / Math.max(1, some.size());
        for (int i = some.size() - 1; i >= 0; i--) {
            level = left / (i + 1);
            if (some.get(i).takesMm() > level) {
                return level;
            }
            left -= some.get(i).takesMm();
        }
        return level;
    }

    /** What sags, swells or sways in use has a name that is no path of the file, but for a sag. */
    private static boolean isMovement(String label) {
        return label.indexOf(' ') >= 0 || label.endsWith(".sag");
    }

    private static double demandMm(Finding finding, double marginMm) {
        double stacked = finding.stack().stream().mapToDouble(Layer::takes).sum();
        double all = finding.worst().map(worst -> marginMm - worst.number()).orElse(stacked);
        return marginMm < 0 ? 0 : Math.max(0, all - stacked);
    }

    private static double downMm(Layer layer) {
        double presumed = PresumedTolerance.mm(layer) * Math.abs(layer.factor());
        return presumed + (layer.factor() > 0 ? layer.factor() * layer.minus() : -layer.factor() * layer.plus());
    }

    private static double upMm(Layer layer) {
        double presumed = PresumedTolerance.mm(layer) * Math.abs(layer.factor());
        return presumed + (layer.factor() > 0 ? layer.factor() * layer.plus() : -layer.factor() * layer.minus());
    }
}
