package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Finding;
import org.spile.exporters.drawing.Extent;
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

    private final Scene scene;
    private final SectionPlane plane;
    private final String letter;
    private final List<CutParts.CutPart> cut;

    SectionView(Scene scene, SectionPlane plane, String letter) {
        this.scene = scene;
        this.plane = plane;
        this.letter = letter;
        this.cut = CutParts.upright(scene, plane);
    }

    /** The whole section. */
    ViewDraft whole(Subject subject, List<Finding> findings) {
        ViewDraft draft = ViewDraft.named(name("whole"), "Section " + letter + "-" + letter)
                .cutAt(plane.words())
                .scaled(Scale.oneTo(20), Scale.oneTo(200));
        if (!plane.across()) {
            draft.forward(Side.RIGHT);
        }
        draw(Canvas.whole(draft));
        overall(draft);
        findings.forEach(finding -> flag(draft, subject, finding));
        names(Canvas.whole(draft), PartKind.UNIT, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    /** One finding's gap close up. */
    ViewDraft closeUp(Subject subject, Finding finding) {
        int number = subject.number(finding).orElseThrow();
        ViewDraft draft = ViewDraft.named(name("gap-" + number), "Finding " + number + ": " + title(finding))
                .cutAt("part of section " + letter + "-" + letter)
                .scaled(Scale.oneTo(5), Scale.oneTo(20))
                .withoutScaleBar();
        Vector2D at = plane.flat(finding.at().orElseThrow());
        Vector2D to = plane.flat(finding.to().orElseThrow());
        Optional<Outline> body = outline(finding, at);
        Canvas canvas = Canvas.within(draft, window(at, to, body));
        draw(canvas);
        if (at.distance(to) > 1e-6) {
            draft.dimension(Dimension.straight(
                            at,
                            to,
                            Math.abs(to.getX() - at.getX()) > Math.abs(to.getY() - at.getY()) ? Side.ABOVE : Side.RIGHT)
                    .of(finding.subject()));
        }
        body.ifPresent(outline -> new StackDimensions(canvas, cut, outline, finding.subject()).ask());
        flag(draft, subject, finding);
        names(canvas, PartKind.UNIT, PartKind.DUCT, PartKind.LINE, PartKind.LINING, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    private String name(String what) {
        return "section-" + letter.toLowerCase(Locale.ROOT) + "-" + what;
    }

    private String title(Finding finding) {
        return Subjects.partAt(scene, finding.subject(), finding.at().orElseThrow())
                .map(Part::title)
                .orElse(finding.subject());
    }

    private Optional<Outline> outline(Finding finding, Vector2D at) {
        Part part = Subjects.partAt(scene, finding.subject(), finding.at().orElseThrow())
                .orElseThrow();
        return cut.stream()
                .filter(each -> each.part().id().equals(part.id()))
                .flatMap(each -> each.outlines().stream())
                .filter(outline -> Canvas.extent(outline).grown(1).holds(Extent.around(List.of(at)), 0))
                .findFirst();
    }

    private static Extent window(Vector2D at, Vector2D to, Optional<Outline> body) {
        Extent gap = Extent.around(List.of(at, to));
        return body.map(Canvas::extent).map(gap::and).orElse(gap).grown(ROUND_MM);
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
        for (CutParts.CutPart each : cut) {
            each.outlines().stream()
                    .filter(canvas::shows)
                    .forEach(outline -> canvas.draw(Pens.of(each.part()), outline));
        }
    }

    private void overall(ViewDraft draft) {
        List<Vector2D> shell = cut.stream()
                .filter(each -> each.part().kind() == PartKind.SHELL)
                .flatMap(each -> each.outlines().stream())
                .flatMap(outline -> outline.shell().stream())
                .toList();
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
        List<String> done = new ArrayList<>();
        for (CutParts.CutPart each : cut) {
            if (named.contains(each.part().kind()) && !done.contains(each.part().title())) {
                middle(canvas, each).ifPresent(at -> {
                    done.add(each.part().title());
                    canvas.draft().name(each.part().title(), each.part().thing(), at);
                });
            }
        }
    }

    private static Optional<Vector2D> middle(Canvas canvas, CutParts.CutPart part) {
        return part.outlines().stream()
                .map(outline -> Canvas.extent(outline).middle())
                .filter(canvas::shows)
                .findFirst();
    }
}
