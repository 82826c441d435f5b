package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.duct.AreaProfile;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.Panel;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctRun;

/** A sheet for each run whose section changes or that stands in for a pipe: the run developed straight, over its clear area. */
final class RunSheets implements Composer {
    @Override
    public List<SheetLayout> compose(Subject subject) {
        List<SheetLayout> sheets = new ArrayList<>();
        for (DuctRun run : subject.house().runs()) {
            boolean worth = run.replacesMm().isPresent() || run.legs().stream().anyMatch(DuctLeg::transition);
            if (worth && !run.pieces().isEmpty()) {
                sheets.add(sheet(subject, run));
            }
        }
        return sheets;
    }

    private static SheetLayout sheet(Subject subject, DuctRun run) {
        String title = subject.house().told().runs().get(run.id()).title();
        AreaProfile profile = AreaProfile.of(run);
        ViewDraft draft = ViewDraft.named("run-" + run.id(), title + ", developed straight")
                .cutAt("clear sizes, mm; stations count along its middle line from its start")
                .scaled(Scale.oneTo(10), Scale.oneTo(200));
        new DevelopedRun(profile, draft).draw();
        return SheetLayout.named("run-" + run.id(), subject.block("Run " + title, "run"))
                .view(draft)
                .panel(worth(subject, run))
                .panel(Subject.cautions());
    }

    /** What the duct check says of it. */
    private static Panel worth(Subject subject, DuctRun run) {
        List<Panel.Item> items = subject.findingsOf(run.path(), "duct").stream()
                .map(finding -> new Panel.Item("", finding.verdict().word() + ": " + finding.because()))
                .toList();
        return new Panel("What it carries like", items);
    }
}
