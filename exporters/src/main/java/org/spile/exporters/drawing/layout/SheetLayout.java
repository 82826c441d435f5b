package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.Projection;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.TitleBlock;
import org.spile.exporters.drawing.View;

/**
 * Chooses paper and scale and puts views, notes and legend on a sheet without overlap.
 *
 * <p>Small paper first, since builders print on A4 and A3; the scale each view asks for first, then the next smaller of
 * ISO 5455 before the next larger paper.
 *
 * <pre>{@code
 * var laid = SheetLayout.named("plan", TitleBlock.of("Saltmarsh, plan", "general arrangement", "SM-01"))
 *         .view(plan)
 *         .view(section)
 *         .panel(Panel.numbered("notes", List.of("Dimensions run to finished faces.")))
 *         .lay();
 * }</pre>
 */
public final class SheetLayout {
    /** Steps to smaller scales that are tried on one paper before a larger paper, and in all. */
    private static final int STEPS_BEFORE_LARGER_PAPER = 1;

    private static final int STEPS = Scale.STANDARD.size();

    private final String name;
    private final TitleBlock block;
    private final List<ViewDraft> drafts = new ArrayList<>();
    private final List<Panel> panels = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final Map<String, View> laidOut = new LinkedHashMap<>();
    private Projection projection = Projection.FIRST_ANGLE;
    private boolean legend = true;
    private List<PaperSize> papers = List.of(PaperSize.A4, PaperSize.A3, PaperSize.A2, PaperSize.A1);

    private SheetLayout(String name, TitleBlock block) {
        this.name = name;
        this.block = block;
    }

    /**
     * A sheet in the making.
     *
     * @param name its own name within a set, lower case and hyphens: files are named after it
     * @param block what the title block says
     */
    public static SheetLayout named(String name, TitleBlock block) {
        return new SheetLayout(name, block);
    }

    /** Adds a view; views are read in the order they are added. */
    public SheetLayout view(ViewDraft draft) {
        drafts.add(draft);
        return this;
    }

    /** Adds a block of words. */
    public SheetLayout panel(Panel panel) {
        if (!panel.items().isEmpty()) {
            panels.add(panel);
        }
        return this;
    }

    /** Leaves out what the hatchings mean, where they only help to find one's way. */
    public SheetLayout withoutLegend() {
        legend = false;
        return this;
    }

    /** Adds a table or a plot; figures stand under the views, in the order they are added. */
    public SheetLayout figure(Figure figure) {
        figures.add(figure);
        return this;
    }

    /** Says which projection symbol the sheet carries. */
    public SheetLayout projection(Projection which) {
        projection = which;
        return this;
    }

    /** Allows only this paper. */
    public SheetLayout on(PaperSize... only) {
        papers = List.of(only);
        return this;
    }

    /** Lays the sheet out. */
    public Laid lay() {
        for (var round = 0; round * (STEPS_BEFORE_LARGER_PAPER + 1) < STEPS; round++) {
            for (var paper : papers) {
                for (var i = 0; i <= STEPS_BEFORE_LARGER_PAPER; i++) {
                    var laid = lay(paper, round * (STEPS_BEFORE_LARGER_PAPER + 1) + i);
                    if (laid.isPresent()) {
                        return new Laid.Fits(laid.get());
                    }
                }
            }
        }
        return tooLarge();
    }

    private Optional<Sheet> lay(PaperSize paper, int steps) {
        var views = drafts.stream().map(draft -> view(draft, steps)).toList();
        for (var ground : SheetGround.values()) {
            var room = ground.room(paper, block.revisions().size(), panels, legend ? materials(steps) : List.of());
            var foot = room.flatMap(free -> Figures.under(free.views(), figures, drafts.isEmpty()));
            if (foot.isEmpty()) {
                continue;
            }
            var placed = Arrangement.fit(views, foot.get().views());
            if (placed.isPresent()) {
                var all = new ArrayList<View>(placed.get());
                all.addAll(foot.get().figures());
                return Optional.of(new Sheet(
                        name, paper, block, projection, 1, 1, all, room.get().words()));
            }
        }
        return Optional.empty();
    }

    private View view(ViewDraft draft, int steps) {
        var scale = scale(draft, steps);
        return laidOut.computeIfAbsent(draft.name() + ' ' + scale.says(), none -> draft.at(scale));
    }

    private static Scale scale(ViewDraft draft, int steps) {
        var scale = draft.largest();
        for (var i = 0; i < steps; i++) {
            var smaller = scale.smaller();
            if (smaller.modelPerPaper() > draft.smallest().modelPerPaper()) {
                return scale;
            }
            scale = smaller;
        }
        return scale;
    }

    private List<Material> materials(int steps) {
        return drafts.stream()
                .flatMap(draft -> draft.materials(scale(draft, steps)).stream())
                .distinct()
                .sorted()
                .toList();
    }

    private Laid tooLarge() {
        var sizes = drafts.stream()
                .map(draft -> view(draft, STEPS))
                .map(view -> view.name() + " takes " + Math.round(view.onPaper().wide()) + " × "
                        + Math.round(view.onPaper().high()) + " mm at "
                        + view.scale().says())
                .collect(Collectors.joining("; "));
        var allowed = papers.stream().map(PaperSize::name).collect(Collectors.joining(", "));
        var alternatives = new ArrayList<String>();
        if (!papers.contains(PaperSize.A0)) {
            alternatives.add("allow larger paper");
        }
        alternatives.add("allow smaller scales");
        if (drafts.size() > 1) {
            alternatives.add("put fewer views on the sheet");
        }
        if (!figures.isEmpty()) {
            alternatives.add("make tables and plots shorter");
        }
        if (!panels.isEmpty()) {
            alternatives.add("move notes to a sheet of their own");
        }
        return new Laid.TooLarge("sheet " + name + " does not fit on " + allowed + ": " + sizes, alternatives);
    }
}
