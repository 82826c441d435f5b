package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Scene.TrailerPlace;
import org.spile.geometry.kernel.measure.Written;

/** Plans in the home stance: one of everything that is there, and one of each trailer with its sizes. */
final class PlanSheets implements Composer {
    @Override
    public List<SheetLayout> compose(Subject subject) {
        Scene scene = subject.home();
        List<TrailerPlace> roomy = scene.trailers().stream()
                .filter(trailer ->
                        scene.rooms().stream().anyMatch(room -> room.trailer().equals(trailer.id())))
                .toList();
        List<SheetLayout> sheets = new ArrayList<>();
        if (roomy.size() > 1) {
            sheets.add(together(subject, scene, roomy));
        }
        for (TrailerPlace trailer : roomy) {
            sheets.add(alone(subject, scene, trailer));
        }
        return sheets;
    }

    private static SheetLayout together(Subject subject, Scene scene, List<TrailerPlace> trailers) {
        ViewDraft draft = ViewDraft.named("plan", "Plan, " + scene.stance())
                .cutAt(words())
                .scaled(Scale.oneTo(20), Scale.oneTo(500))
                .inPlace()
                .forward(side(trailers.get(0)));
        new PlanView(scene, trailers, draft).draw().outsides();
        return SheetLayout.named("plan", subject.block("Plan, " + scene.stance(), "general arrangement"))
                .view(draft)
                .panel(Subject.cautions());
    }

    private static SheetLayout alone(Subject subject, Scene scene, TrailerPlace trailer) {
        String title = "Plan" + Subjects.of(trailer);
        ViewDraft draft = ViewDraft.named(Subjects.named("plan", trailer), title)
                .cutAt(words())
                .scaled(Scale.oneTo(20), Scale.oneTo(200))
                .inPlace()
                .forward(side(trailer));
        new PlanView(scene, List.of(trailer), draft)
                .draw()
                .names()
                .outsides()
                .insides()
                .sections(SectionPlaces.of(scene, subject.flagged()));
        return SheetLayout.named(Subjects.named("plan", trailer), subject.block(title, "plan"))
                .view(draft)
                .panel(Subject.cautions());
    }

    private static String words() {
        return "cut at " + Written.number(PlanView.CUT_MM, 0) + " above the deck";
    }

    static Side side(TrailerPlace trailer) {
        var forward = PlanView.forward(trailer);
        if (Math.abs(forward.getX()) >= Math.abs(forward.getY())) {
            return forward.getX() < 0 ? Side.LEFT : Side.RIGHT;
        }
        return forward.getY() < 0 ? Side.BELOW : Side.ABOVE;
    }
}
