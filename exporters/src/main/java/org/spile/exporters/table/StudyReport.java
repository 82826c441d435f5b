package org.spile.exporters.table;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.StudyPoint;
import org.spile.analysis.whole.Variation;
import org.spile.geometry.kernel.measure.Written;

/**
 * A study with what it is about.
 *
 * @param spile the version
 * @param house the house file as it was named
 * @param title what people call the house; empty if they don't
 * @param options applied to it, in order
 * @param study the study
 */
public record StudyReport(String spile, String house, String title, List<String> options, Study study) {
    private static final int DECIMALS = 6;

    /** Copies the list. */
    public StudyReport {
        options = List.copyOf(options);
    }

    /** The runs of which it tells what they are worth, in the order of the first point that has them. */
    public List<String> runs() {
        return study.points().stream()
                .filter(point -> !point.carried().isEmpty())
                .findFirst()
                .map(point ->
                        point.carried().stream().map(StudyPoint.Carried::run).toList())
                .orElse(List.of());
    }

    /** The edits that make the house of a point, as they go behind {@code --set}. */
    public List<String> edits(StudyPoint point) {
        List<String> edits = new ArrayList<>();
        for (int i = 0; i < study.variations().size(); i++) {
            Variation variation = study.variations().get(i);
            String unit = variation.unit().isEmpty() ? "" : " " + variation.unit();
            for (String path : variation.paths()) {
                edits.add(path + "=" + Written.number(point.values().get(i), DECIMALS) + unit);
            }
        }
        return edits;
    }

    /** How many points there are, how many fit and how many are on the front, one sentence. */
    public String says() {
        long fit = study.points().stream().filter(StudyPoint::fits).count();
        int all = study.points().size();
        return all + (all == 1 ? " point, " : " points, ") + fit + (fit == 1 ? " fits, " : " fit, ")
                + study.front().size() + " to choose among.";
    }
}
