package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.told.ToldOpening;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.kernel.solid.Box3;

/**
 * Hinged doors must pass under the ceilings they open to: from the head of each leaf up to the lowest lining over the
 * square in which it swings.
 *
 * <p>The square reaches a leaf's width beyond the shut leaf every way, so it may take in a little more ceiling than the leaf
 * does, never less.
 */
final class DoorHead implements FitCheck {
    private static final double FAR_MM = 3000;

    @Override
    public String name() {
        return "fit.door";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (ToldRoom room : site.house().told().rooms().values()) {
            for (ToldOpening opening : room.openings().values()) {
                if (opening.hinge().isPresent()) {
                    site.scene().part(opening.placed().path()).ifPresent(leaf -> answers.addAll(answers(site, leaf)));
                }
            }
        }
        return answers;
    }

    private List<Answer> answers(Site site, Part leaf) {
        Face head = head(leaf.body().bounds());
        List<Answer> answers = new ArrayList<>();
        for (Part other : site.near(head.swept(FAR_MM).bounds(), 0)) {
            if (other.kind() == PartKind.LINING && site.asks(leaf, other)) {
                Gauge.ahead(leaf, head, other).map(pair -> held(site, pair)).ifPresent(answers::add);
            }
        }
        return answers;
    }

    private Answer held(Site site, Pair pair) {
        Question question = Question.of(name(), pair.subject().id(), Named.against(pair.against()), site.stance())
                .about(pair.subject().id());
        double mm = pair.lowMm();
        String found = pair.overlaps()
                ? Mm.shortBy(mm) + " of overlap"
                : Mm.besides(mm, site.general().mm());
        String because = found + " between the head of " + pair.subject().title() + " and "
                + pair.against().title();
        return Answer.of(question, pair, site.general(), Optional.empty(), because);
    }

    private static Face head(Box3 leaf) {
        double reachMm = Math.max(leaf.maxX() - leaf.minX(), leaf.maxY() - leaf.minY());
        Vector3D middle = leaf.middle();
        return new Face(
                "top",
                Vector3D.of(middle.getX(), middle.getY(), leaf.maxZ()),
                Vector3D.Unit.PLUS_Z,
                Vector3D.of((leaf.maxX() - leaf.minX()) / 2 + reachMm, 0, 0),
                Vector3D.of(0, (leaf.maxY() - leaf.minY()) / 2 + reachMm, 0),
                leaf.maxZ() - leaf.minZ());
    }
}
