package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.whole.Aim;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.StudyPoint;
import org.spile.analysis.whole.Variation;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.drawing.layout.Panel;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.geometry.kernel.measure.Written;

/** The plot of a study: a sign for each point, and what to choose among. */
public final class StudySheets {
    private static final int DECIMALS = 3;
    private static final int MOST_LISTED = 24;
    private static final int MOST_RUNS = 2;

    private StudySheets() {}

    /** Lays the sheet out. */
    public static Laid of(Subject subject, Study study) {
        SheetLayout layout = SheetLayout.named("study", subject.block("Study", "plot"))
                .on(PaperSize.A4, PaperSize.A3, PaperSize.A2, PaperSize.A1);
        if (study.variations().size() == 1) {
            curves(study).forEach(layout::figure);
        }
        return layout.figure(new StudyPlot(study))
                .panel(front(study))
                .panel(weighed(study))
                .lay();
    }

    /** Over one swept value: the margins, and the first runs' rounds. */
    private static List<StudyCurve> curves(Study study) {
        Variation variation = study.variations().get(0);
        List<StudyPoint> points = study.points();
        List<StudyCurve> curves = new ArrayList<>();
        if (variation.values().size() > 1) {
            StudyCurve.margins(variation, points).ifPresent(curves::add);
            points.stream()
                    .flatMap(point -> point.carried().stream())
                    .map(carried -> carried.run())
                    .distinct()
                    .limit(MOST_RUNS)
                    .forEach(run -> StudyCurve.round(variation, points, run).ifPresent(curves::add));
        }
        return curves;
    }

    private static Panel front(Study study) {
        List<Panel.Item> items = new ArrayList<>();
        for (StudyPoint point : study.front()) {
            if (items.size() < MOST_LISTED) {
                items.add(new Panel.Item("", says(study, point)));
            }
        }
        int more = study.front().size() - items.size();
        if (more > 0) {
            items.add(new Panel.Item("", "and " + more + " more"));
        }
        if (items.isEmpty()) {
            items.add(new Panel.Item("", "No point fits."));
        }
        return new Panel("To choose among", items);
    }

    private static String says(Study study, StudyPoint point) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < study.variations().size(); i++) {
            Variation variation = study.variations().get(i);
            words.add(variation.says() + " " + Written.number(point.values().get(i), DECIMALS));
        }
        point.verdict().ifPresent(verdict -> words.add(verdict.word()));
        point.carried()
                .forEach(carried -> carried.roundMm()
                        .ifPresent(round -> words.add(
                                carried.run() + " carries like a round " + Written.number(round.value(), 1))));
        return String.join(", ", words);
    }

    private static Panel weighed(Study study) {
        List<String> shown = study.shown().stream().map(each -> each.says()).toList();
        List<String> wanted = study.variations().stream()
                .filter(variation -> variation.aim() != Aim.NONE)
                .map(variation -> "the " + variation.aim().word() + " of " + variation.says())
                .toList();
        List<Panel.Item> items = new ArrayList<>();
        items.add(new Panel.Item("", "Looked at: " + String.join(", ", shown) + "."));
        if (!wanted.isEmpty()) {
            items.add(new Panel.Item("", "Wanted: " + String.join(", ", wanted) + "."));
        }
        items.add(
                new Panel.Item(
                        "",
                        "A framed point is one to choose among: no other that fits is better in one thing and as good in all others."));
        items.add(
                new Panel.Item(
                        "",
                        "Electric, refrigerant, gas, lifting, towing and structural work: local codes and licensed trades decide."));
        return new Panel("How to read it", items);
    }
}
