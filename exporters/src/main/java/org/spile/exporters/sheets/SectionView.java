package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Finding;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.Dimension;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.planar.Outline;

/** What one plane shows: the whole section with its overall sizes, and a gap close up with its stack. */
final class SectionView {
    /** How much is shown round a gap's subject in a close-up (mm). */
    private static final double ROUND_MM = 90;

    /** A close-up wider than this may be drawn smaller than 1:5 (mm). */
    private static final double WIDE_MM = 1500;

    private final Scene scene;
    private final SectionPlane plane;
    private final String letter;
    private final List<CutParts.CutPart> cut;
    private final List<CutParts.Clear> clear;

    SectionView(Scene scene, SectionPlane plane, String letter) {
        this.scene = scene;
        this.plane = plane;
        this.letter = letter;
        this.cut = CutParts.upright(scene, plane);
        this.clear = CutParts.clear(scene, plane);
    }

    /** The whole section. */
    ViewDraft whole(Subject subject, List<Finding> findings) {
        ViewDraft draft = ViewDraft.named(name("whole"), "Section " + letter + "-" + letter)
                .cutAt(plane.words())
                .scaled(largest(), least(findings));
        if (!plane.across()) {
            draft.forward(Side.RIGHT);
        }
        draw(Canvas.whole(draft));
        deck(draft);
        overall(draft);
        if (alone(findings)) {
            var dimensions = new DimensionsOnce(draft);
            units().forEach(body -> stack(Canvas.whole(draft), dimensions, body));
        }
        findings.forEach(finding -> flag(draft, subject, finding));
        names(Canvas.whole(draft), PartKind.UNIT, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    /** A cavity by itself is drawn as large as its paper allows. */
    private Scale largest() {
        return shell().isEmpty() ? Scale.oneTo(5) : Scale.oneTo(20);
    }

    /** Beside its close-ups a section only shows where they are. */
    private Scale least(List<Finding> findings) {
        return findings.isEmpty() && plane.across() ? Scale.oneTo(20) : Scale.oneTo(200);
    }

    /** Whether the section itself has to say how its units lie: where there is no house round them to make it small. */
    private boolean alone(List<Finding> findings) {
        return findings.isEmpty() && shell().isEmpty();
    }

    /** The gaps close up, or without one the units; those that lie near each other share a view. */
    List<ViewDraft> closeUps(Subject subject, List<Finding> findings) {
        List<CloseUp> groups = new ArrayList<>();
        for (Finding finding : findings) {
            List<CloseUp.Body> bodies = body(finding).stream().toList();
            groups = CloseUp.joined(groups, new CloseUp(window(finding), List.of(finding), bodies));
        }
        if (findings.isEmpty() && !alone(findings)) {
            for (CloseUp.Body unit : units()) {
                Extent window = Canvas.extent(unit.outline()).grown(ROUND_MM);
                groups = CloseUp.joined(groups, new CloseUp(window, List.of(), List.of(unit)));
            }
        }
        return groups.stream().map(group -> closeUp(subject, group)).toList();
    }

    private ViewDraft closeUp(Subject subject, CloseUp group) {
        ViewDraft draft = titled(subject, group)
                .cutAt("part of section " + letter + "-" + letter)
                .scaled(Scale.oneTo(5), group.window().wide() > WIDE_MM ? Scale.oneTo(20) : Scale.oneTo(5))
                .withoutScaleBar();
        Canvas canvas = Canvas.within(draft, group.window());
        draw(canvas);
        var dimensions = new DimensionsOnce(draft);
        group.bodies().forEach(body -> stack(canvas, dimensions, body));
        for (Finding finding : group.findings()) {
            gap(dimensions, finding);
            flag(draft, subject, finding);
        }
        names(canvas, PartKind.UNIT, PartKind.DUCT, PartKind.LINE, PartKind.LINING, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    private ViewDraft titled(Subject subject, CloseUp group) {
        if (group.findings().isEmpty()) {
            List<String> names = group.bodies().stream()
                    .map(body -> Subjects.name(body.thing()))
                    .distinct()
                    .toList();
            return ViewDraft.named(name("unit-" + names.get(0)), String.join(", ", names));
        }
        List<String> numbers = group.findings().stream()
                .map(finding -> subject.number(finding).orElseThrow())
                .sorted()
                .map(number -> Integer.toString(number))
                .toList();
        return ViewDraft.named(
                name("gap-" + numbers.get(0)),
                (numbers.size() > 1 ? "Findings " : "Finding ") + String.join(", ", numbers));
    }

    private void stack(Canvas canvas, DimensionsOnce dimensions, CloseUp.Body body) {
        new StackDimensions(canvas, dimensions, neighbours(), body.outline(), body.thing()).ask();
    }

    /** A gap that the stack beside it doesn't show already. */
    private void gap(DimensionsOnce dimensions, Finding finding) {
        Vector2D at = plane.flat(finding.at().orElseThrow());
        Vector2D to = plane.flat(finding.to().orElseThrow());
        if (at.distance(to) > 1e-6) {
            boolean level = Math.abs(to.getX() - at.getX()) > Math.abs(to.getY() - at.getY());
            dimensions.straight(at, to, level ? Side.ABOVE : Side.RIGHT, finding.subject());
        }
    }

    /** The outline of a finding's subject where it is a thing; rooms for service have no sizes to build. */
    private Optional<CloseUp.Body> body(Finding finding) {
        return part(finding)
                .filter(part -> part.kind() != PartKind.SERVICE && part.kind() != PartKind.LINING)
                .flatMap(part -> outline(part, plane.flat(finding.at().orElseThrow())))
                .map(outline -> new CloseUp.Body(outline, finding.subject()));
    }

    private Optional<Part> part(Finding finding) {
        return Subjects.partAt(scene, finding.subject(), finding.at().orElseThrow());
    }

    private String name(String what) {
        return "section-" + letter.toLowerCase(Locale.ROOT) + "-" + what;
    }

    private Optional<Outline> outline(Part part, Vector2D at) {
        return cut.stream()
                .filter(each -> each.part().id().equals(part.id()))
                .flatMap(each -> each.outlines().stream())
                .filter(outline -> Canvas.extent(outline).grown(1).holds(Extent.around(List.of(at)), 0))
                .findFirst();
    }

    private Extent window(Finding finding) {
        Extent gap = Extent.around(List.of(
                plane.flat(finding.at().orElseThrow()), plane.flat(finding.to().orElseThrow())));
        return body(finding)
                .map(CloseUp.Body::outline)
                .map(Canvas::extent)
                .map(gap::and)
                .orElse(gap)
                .grown(ROUND_MM);
    }

    /** What is cut, without sizes or names. */
    void draw(Canvas canvas) {
        for (CutParts.CutPart each : cut) {
            for (Outline outline : each.outlines()) {
                if (canvas.shows(outline)) {
                    Hatches.of(each.part())
                            .ifPresent(material ->
                                    canvas.hatch(material, each.part().thing(), outline));
                }
            }
        }
        for (CutParts.Clear each : clear) {
            if (canvas.shows(each.outline())) {
                canvas.draw(Layer.CAVITIES.pen().of(each.path()), each.outline());
            }
        }
        for (CutParts.CutPart each : cut) {
            each.outlines().stream()
                    .filter(canvas::shows)
                    .forEach(outline -> canvas.draw(Pens.of(each.part()), outline));
        }
    }

    /** What a stack runs between: what stays, other units, and the clear space of the cavities. */
    private List<Outline> neighbours() {
        List<Outline> all = new ArrayList<>();
        cut.stream().filter(each -> bounds(each.part().kind())).forEach(each -> all.addAll(each.outlines()));
        clear.forEach(each -> all.add(each.outline()));
        return all;
    }

    /** Ducts and lines end at the units that they serve: they lie in their outline, not beside it. */
    private static boolean bounds(PartKind kind) {
        return switch (kind) {
            case SHELL, LINING, FIXTURE, MOVER, UNIT -> true;
            case SERVICE, DUCT, LINE, TERMINAL -> false;
        };
    }

    /** Units where they are cut in a cavity. */
    private List<CloseUp.Body> units() {
        return cut.stream()
                .filter(each -> each.part().kind() == PartKind.UNIT)
                .flatMap(each -> each.outlines().stream()
                        .filter(outline -> clear.stream()
                                .anyMatch(space -> space.outline()
                                        .contains(Canvas.extent(outline).middle())))
                        .map(outline -> new CloseUp.Body(outline, each.part().thing())))
                .toList();
    }

    /** The deck's top, between the outer faces of what stands on it. */
    private void deck(ViewDraft draft) {
        List<Vector2D> shell = shell();
        if (!shell.isEmpty()) {
            Extent all = Extent.around(shell);
            draft.path(
                    Layer.BEYOND.pen().of("trailers." + plane.trailer().id()),
                    List.of(Vector2D.of(all.minX(), deckMm()), Vector2D.of(all.maxX(), deckMm())));
        }
    }

    private double deckMm() {
        return plane.through().getZ();
    }

    private List<Vector2D> shell() {
        return cut.stream()
                .filter(each -> each.part().kind() == PartKind.SHELL)
                .flatMap(each -> each.outlines().stream())
                .flatMap(outline -> outline.shell().stream())
                .toList();
    }

    private void overall(ViewDraft draft) {
        List<Vector2D> shell = shell();
        if (shell.isEmpty()) {
            return;
        }
        Extent all = Extent.around(shell);
        double lowest = Math.min(all.minY(), deckMm());
        Vector2D corner = Vector2D.of(all.minX(), lowest);
        draft.dimension(Dimension.level(corner, Vector2D.of(all.maxX(), lowest), Side.BELOW));
        draft.dimension(Dimension.upright(corner, Vector2D.of(all.minX(), all.maxY()), Side.LEFT));
    }

    private void flag(ViewDraft draft, Subject subject, Finding finding) {
        subject.number(finding)
                .ifPresent(number -> draft.flag(
                        number,
                        finding.id(),
                        plane.flat(finding.at().orElseThrow()),
                        plane.flat(finding.to().orElseThrow()),
                        finding.subject()));
    }

    /** The names of what is cut, each once. */
    void names(Canvas canvas, PartKind... kinds) {
        List<PartKind> named = List.of(kinds);
        Set<String> done = new HashSet<>();
        for (CutParts.CutPart each : cut) {
            boolean lining = each.part().kind() == PartKind.LINING;
            String says =
                    lining ? each.part().title() : Subjects.name(each.part().thing());
            if (named.contains(each.part().kind()) && !done.contains(says)) {
                middle(canvas, each).ifPresent(at -> {
                    done.add(says);
                    canvas.draft().name(says, each.part().thing(), at);
                });
            }
        }
    }

    /** A place in the part where its name may stand: its middle, or above it where the middle lies outside. */
    private static Optional<Vector2D> middle(Canvas canvas, CutParts.CutPart part) {
        return part.outlines().stream()
                .flatMap(outline -> inside(outline).stream())
                .filter(canvas::shows)
                .findFirst();
    }

    private static Optional<Vector2D> inside(Outline outline) {
        Vector2D middle = Canvas.extent(outline).middle();
        if (outline.contains(middle)) {
            return Optional.of(middle);
        }
        List<Double> faces = Ray.faces(List.of(outline), middle, true);
        return faces.size() < 2
                ? Optional.empty()
                : Optional.of(
                        Vector2D.of(middle.getX(), (faces.get(faces.size() - 2) + faces.get(faces.size() - 1)) / 2));
    }
}
