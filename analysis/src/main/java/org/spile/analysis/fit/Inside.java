package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Source;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Body;

/** Units and fixtures that are said to lie in a cavity must lie within its outline; what sticks out is told. */
final class Inside implements FitCheck {
    private static final Demand WITHIN =
            new Demand(0, 0, Source.reason("what lies in a cavity lies within its outline"), Optional.empty());

    @Override
    public String name() {
        return "fit.inside";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (Part part : site.solids()) {
            boolean lies = part.kind() == PartKind.UNIT || part.kind() == PartKind.FIXTURE;
            if (lies && site.asksOver(part.body().bounds())) {
                for (CavitySpace cavity : site.cavitiesOf(part)) {
                    answer(site, part, cavity).ifPresent(answers::add);
                }
            }
        }
        return answers;
    }

    private Optional<Answer> answer(Site site, Part part, CavitySpace cavity) {
        List<Vector2D> out = new ArrayList<>();
        for (Outline piece : Regions.difference(Plan.of(part.body()), List.of(cavity.outline()))) {
            out.addAll(piece.shell());
        }
        return out.stream()
                .map(corner -> new Stray(corner, Rim.nearest(cavity.outline(), corner)))
                .max(Comparator.comparingDouble(Stray::mm))
                .filter(stray -> stray.mm() > GeometryTolerance.SHOWN_MM)
                .map(stray -> answer(site, part, cavity, stray));
    }

    private Answer answer(Site site, Part part, CavitySpace cavity, Stray stray) {
        double z = part.body().bounds().middle().getZ();
        Vector3D at = Vector3D.of(stray.corner().getX(), stray.corner().getY(), z);
        Vector3D to = Vector3D.of(stray.rim().getX(), stray.rim().getY(), z);
        Vector3D inwards = to.subtract(at).normalize();
        Stack stack = Stack.constant(to.dot(inwards))
                .minus(part.flex().along(at, inwards))
                .times(-1);
        Outcome outcome = new Outcome(-stray.mm(), -stray.mm(), stack, WITHIN);
        String head = part.title() + " sticks " + Mm.shortBy(-stray.mm()) + " out of " + cavity.title();
        return Answer.of(
                Question.of(name(), part.thing(), cavity.path(), site.stance()),
                new Ends(at, to),
                outcome,
                head,
                part.body().bounds());
    }

    private record Stray(Vector2D corner, Vector2D rim) {
        double mm() {
            return corner.distance(rim);
        }
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        List<Ban> bans = new ArrayList<>();
        for (Part part : site.solidsOf(unit)) {
            List<CavitySpace> cavities = site.asksOver(part.body().bounds()) ? site.cavitiesOf(part) : List.of();
            for (CavitySpace cavity : cavities) {
                String says = part.title() + " within the outline of " + cavity.title();
                Limit limit = new Limit(name() + "/" + cavity.path(), name(), says, 0, WITHIN.source());
                Body plan = Plan.flat(Plan.of(part.body()));
                Body outside = Plan.tall(Plan.around(cavity.outline()));
                bans.add(Ban.round(limit, cavity.path(), cavity.title(), plan, outside));
            }
        }
        return bans;
    }
}
