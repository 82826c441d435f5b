package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
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
                .scaled(Scale.oneTo(20), least(findings));
        if (!plane.across()) {
            draft.forward(Side.RIGHT);
        }
        draw(Canvas.whole(draft));
        deck(draft);
        overall(draft);
        if (findings.isEmpty()) {
            stacks(draft);
        }
        findings.forEach(finding -> flag(draft, subject, finding));
        names(Canvas.whole(draft), PartKind.UNIT, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    /** A section that stands alone is drawn to be measured; beside its close-ups it only shows where they are. */
    private Scale least(List<Finding> findings) {
        return findings.isEmpty() && plane.across() ? Scale.oneTo(20) : Scale.oneTo(200);
    }

    /** The gaps close up; those that lie near each other share a view. */
    List<ViewDraft> closeUps(Subject subject, List<Finding> findings) {
        List<CloseUp> groups = new ArrayList<>();
        for (Finding finding : findings) {
            groups = CloseUp.joined(groups, new CloseUp(window(finding), List.of(finding)));
        }
        return groups.stream().map(group -> closeUp(subject, group)).toList();
    }

    private ViewDraft closeUp(Subject subject, CloseUp group) {
        List<String> numbers = group.findings().stream()
                .map(finding -> subject.number(finding).orElseThrow())
                .sorted()
                .map(number -> Integer.toString(number))
                .toList();
        ViewDraft draft = ViewDraft.named(
                        name("gap-" + numbers.get(0)),
                        (numbers.size() > 1 ? "Findings " : "Finding ") + String.join(", ", numbers))
                .cutAt("part of section " + letter + "-" + letter)
                .scaled(Scale.oneTo(5), group.window().wide() > WIDE_MM ? Scale.oneTo(20) : Scale.oneTo(5))
                .withoutScaleBar();
        Canvas canvas = Canvas.within(draft, group.window());
        draw(canvas);
        var dimensions = new DimensionsOnce(draft);
        Set<Outline> bodies = new LinkedHashSet<>();
        for (Finding finding : group.findings()) {
            gap(draft, finding);
            body(finding).ifPresent(outline -> {
                if (bodies.add(outline)) {
                    new StackDimensions(canvas, dimensions, neighbours(), outline, finding.subject()).ask();
                }
            });
            flag(draft, subject, finding);
        }
        names(canvas, PartKind.UNIT, PartKind.DUCT, PartKind.LINE, PartKind.LINING, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    private void gap(ViewDraft draft, Finding finding) {
        Vector2D at = plane.flat(finding.at().orElseThrow());
        Vector2D to = plane.flat(finding.to().orElseThrow());
        if (at.distance(to) > 1e-6) {
            boolean level = Math.abs(to.getX() - at.getX()) > Math.abs(to.getY() - at.getY());
            draft.dimension(
                    Dimension.straight(at, to, level ? Side.ABOVE : Side.RIGHT).of(finding.subject()));
        }
    }

    /** The outline of a finding's subject where it is a thing; rooms for service have no sizes to build. */
    private Optional<Outline> body(Finding finding) {
        return part(finding)
                .filter(part -> part.kind() != PartKind.SERVICE && part.kind() != PartKind.LINING)
                .flatMap(part -> outline(part, plane.flat(finding.at().orElseThrow())));
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
        return body(finding).map(Canvas::extent).map(gap::and).orElse(gap).grown(ROUND_MM);
    }

    private void draw(Canvas canvas) {
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

    /** What a stack runs between: what is built, and the clear space of the cavities; rooms for service are neither. */
    private List<Outline> neighbours() {
        List<Outline> all = new ArrayList<>();
        cut.stream()
                .filter(each -> each.part().kind() != PartKind.SERVICE)
                .forEach(each -> all.addAll(each.outlines()));
        clear.forEach(each -> all.add(each.outline()));
        return all;
    }

    /** Without a close-up the section itself says how each unit lies between its neighbours. */
    private void stacks(ViewDraft draft) {
        var dimensions = new DimensionsOnce(draft);
        for (CutParts.CutPart each : cut) {
            if (each.part().kind() == PartKind.UNIT) {
                for (Outline outline : each.outlines()) {
                    new StackDimensions(
                                    Canvas.whole(draft),
                                    dimensions,
                                    neighbours(),
                                    outline,
                                    each.part().thing())
                            .ask();
                }
            }
        }
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
        draft.dimension(Dimension.level(all.corner(), Vector2D.of(all.maxX(), all.minY()), Side.BELOW));
        draft.dimension(Dimension.upright(all.corner(), Vector2D.of(all.minX(), all.maxY()), Side.LEFT));
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

    private void names(Canvas canvas, PartKind... kinds) {
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
