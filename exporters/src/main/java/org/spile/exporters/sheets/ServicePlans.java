package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Finding;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.planar.Outline;

/** For each trailer a plan of its cavities and all that lies in them, seen from above with roof and linings taken off. */
final class ServicePlans implements Composer {
    private static final double ROUND_MM = 120;

    @Override
    public List<SheetLayout> compose(Subject subject) {
        Scene scene = subject.home();
        List<SheetLayout> sheets = new ArrayList<>();
        for (var trailer : scene.trailers()) {
            List<CavitySpace> cavities = scene.cavities().stream()
                    .filter(cavity -> cavity.trailer().equals(trailer.id()))
                    .toList();
            if (!cavities.isEmpty()) {
                sheets.add(sheet(subject, scene, trailer, cavities));
            }
        }
        return sheets;
    }

    private static SheetLayout sheet(
            Subject subject, Scene scene, Scene.TrailerPlace trailer, List<CavitySpace> cavities) {
        ViewDraft draft = ViewDraft.named(Subjects.named("services", trailer), "Cavities" + Subjects.of(trailer))
                .cutAt("seen from above, roof and linings taken off")
                .scaled(Scale.oneTo(10), Scale.oneTo(200))
                .inPlace()
                .forward(PlanSheets.side(trailer));
        Canvas canvas = Canvas.within(draft, window(cavities));
        var dimensions = new DimensionsOnce(draft);
        Set<String> ids = new LinkedHashSet<>();
        for (CavitySpace cavity : cavities) {
            ids.add(cavity.id());
            canvas.draw(Layer.CAVITIES.pen().of(cavity.path()), cavity.outline());
            dimensions.level(Canvas.extent(cavity.outline()), Side.BELOW, cavity.path());
            dimensions.upright(Canvas.extent(cavity.outline()), Side.LEFT, cavity.path());
        }
        List<Part> inside = scene.parts().stream()
                .filter(part -> part.kind() != PartKind.LINING && part.kind() != PartKind.SHELL)
                .filter(part -> part.spaces().stream().anyMatch(ids::contains))
                .toList();
        inside.forEach(part -> draw(canvas, part));
        names(canvas, inside);
        inside.stream().filter(part -> standsAlone(subject, part)).forEach(part -> place(dimensions, part, cavities));
        cavities.forEach(cavity -> draft.name(
                cavity.title(), cavity.path(), Canvas.extent(cavity.outline()).middle()));
        List<Finding> shown = flags(subject, scene, trailer, draft, ids);
        return SheetLayout.named(
                        Subjects.named("cavities", trailer),
                        subject.block("Cavities" + Subjects.of(trailer), "services plan"))
                .view(draft)
                .panel(subject.findings(shown))
                .panel(Subject.cautions());
    }

    /** The cavities and a little round them: what leaves them ends open at its edge. */
    private static Extent window(List<CavitySpace> cavities) {
        return cavities.stream()
                .map(cavity -> Canvas.extent(cavity.outline()))
                .reduce(Extent::and)
                .orElseThrow()
                .grown(ROUND_MM);
    }

    private static void draw(Canvas canvas, Part part) {
        part.shown().map(Shadow::of).orElse(List.of()).stream()
                .filter(canvas::shows)
                .forEach(outline -> canvas.draw(Pens.of(part), outline));
    }

    /** Each thing's name once, on its largest piece: a duct of seven legs is one duct. */
    private static void names(Canvas canvas, List<Part> parts) {
        Map<String, Outline> largest = new LinkedHashMap<>();
        for (Part part : parts) {
            if (part.kind() == PartKind.SERVICE) {
                continue;
            }
            for (Outline outline : part.shown().map(Shadow::of).orElse(List.of())) {
                if (canvas.shows(Canvas.extent(outline).middle())) {
                    largest.merge(part.thing(), outline, (a, b) -> a.areaMm2() >= b.areaMm2() ? a : b);
                }
            }
        }
        largest.forEach((thing, outline) -> canvas.draft()
                .name(Subjects.name(thing), thing, Canvas.extent(outline).middle()));
    }

    /** Position from the rear right corner of the cavity a unit lies in, and its size. */
    private static void place(DimensionsOnce dimensions, Part part, List<CavitySpace> cavities) {
        Extent space = cavities.stream()
                .filter(each -> part.spaces().contains(each.id()))
                .map(each -> Canvas.extent(each.outline()))
                .findFirst()
                .orElseThrow();
        var box = part.body().bounds();
        var unit = new Extent(box.minX(), box.minY(), box.maxX(), box.maxY());
        dimensions.level(
                Vector2D.of(space.minX(), unit.maxY()),
                Vector2D.of(unit.minX(), unit.maxY()),
                Side.ABOVE,
                part.thing());
        dimensions.level(unit, Side.ABOVE, part.thing());
        dimensions.upright(
                Vector2D.of(unit.maxX(), space.minY()),
                Vector2D.of(unit.maxX(), unit.minY()),
                Side.RIGHT,
                part.thing());
        dimensions.upright(unit, Side.RIGHT, part.thing());
    }

    /** What joins another unit, or sits in a duct, has its place from that. */
    private static boolean standsAlone(Subject subject, Part part) {
        var told = subject.house().told();
        var unit = told.units().get(Subjects.name(part.thing()));
        boolean body = part.kind() == PartKind.UNIT && part.id().equals(part.thing());
        boolean inDuct = told.runs().values().stream()
                .flatMap(run -> run.stations().stream())
                .anyMatch(station -> station.through().contains(Subjects.name(part.thing())));
        return body && unit != null && unit.joins().isEmpty() && !inDuct;
    }

    private static List<Finding> flags(
            Subject subject, Scene scene, Scene.TrailerPlace trailer, ViewDraft draft, Set<String> cavities) {
        List<Finding> shown = new ArrayList<>();
        for (Finding finding : subject.flagged()) {
            var at = finding.at().orElseThrow();
            var to = finding.to().orElseThrow();
            boolean here = Subjects.partAt(scene, finding.subject(), at)
                    .filter(part -> part.trailer().equals(trailer.id()))
                    .filter(part -> part.spaces().stream().anyMatch(cavities::contains))
                    .isPresent();
            if (here) {
                shown.add(finding);
                draft.flag(
                        subject.number(finding).orElseThrow(),
                        finding.id(),
                        Vector2D.of(at.getX(), at.getY()),
                        Vector2D.of(to.getX(), to.getY()),
                        finding.subject());
            }
        }
        return shown;
    }
}
