package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * The free room that a unit's maker asks for straight out of a face: the gap is measured square to the face, to the first
 * thing that lies in front of any part of it. What carries the unit or joins it owes it nothing.
 */
final class MakersClearance implements FitCheck {
    /** Farther away nothing matters to a face. */
    private static final double FAR_MM = 5000;

    @Override
    public String name() {
        return "fit.maker";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (Part part : site.unitBodies()) {
            ToldUnit unit = site.unit(part).orElseThrow();
            for (Map.Entry<String, Reading> asked : unit.clearance().entrySet()) {
                Face face = site.frame(part).face(asked.getKey(), part.body());
                answers.addAll(answers(site, part, face, site.house().now(asked.getValue())));
            }
        }
        return answers;
    }

    /**
     * Whether a maker's demand already speaks for a pair: the other thing lies straight in front of a face for which the
     * maker asks for no less than the general clearance.
     */
    static boolean speaksFor(Site site, Part part, Vector3D towards) {
        Optional<ToldUnit> unit = site.unit(part);
        if (unit.isEmpty() || !part.id().equals(part.thing())) {
            return false;
        }
        UnitFrame frame = site.frame(part);
        return unit.get().clearance().entrySet().stream()
                .anyMatch(asked -> site.house().now(asked.getValue()).value()
                                >= site.general().mm()
                        && frame.normal(asked.getKey()).dot(towards) > 1 - GeometryTolerance.CONTACT_MM);
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        List<Ban> bans = new ArrayList<>();
        for (Part part : site.unitBodies()) {
            boolean own = part.thing().equals(unit);
            for (Map.Entry<String, Reading> asked :
                    site.unit(part).orElseThrow().clearance().entrySet()) {
                Face face = site.frame(part).face(asked.getKey(), part.body());
                Ahead ahead = new Ahead(limit(part, face, site.house().now(asked.getValue())), part, face);
                for (Part other : own ? site.solidsBeside(unit) : site.solidsOf(unit)) {
                    if (site.asks(part, other) && !site.free(part, other)) {
                        Facing.body(other, part)
                                .map(met -> ahead.ban(own, other, met))
                                .ifPresent(bans::add);
                    }
                }
            }
        }
        return bans;
    }

    private Limit limit(Part part, Face face, Reading asked) {
        Demand demand = Demand.maker(asked);
        String says = Mm.text(demand.mm()) + " free at the " + face.word() + " of " + part.title();
        return new Limit(name() + "/" + asked.path(), name(), says, demand.mm(), demand.source());
    }

    private List<Answer> answers(Site site, Part part, Face face, Reading asked) {
        Demand demand = Demand.maker(asked);
        List<Answer> answers = new ArrayList<>();
        answers.add(nothing(site, part, face, demand, asked.path()));
        for (Part other : site.near(face.swept(FAR_MM).bounds(), 0)) {
            if (site.asks(part, other) && !site.free(part, other)) {
                Gauge.ahead(part, face, other)
                        .map(pair -> held(site, part, face, pair, demand, asked.path()))
                        .ifPresent(answers::add);
            }
        }
        return answers;
    }

    private Answer held(Site site, Part part, Face face, Pair pair, Demand demand, String path) {
        Question question = Question.of(name(), part.thing(), Named.against(pair.against()), site.stance())
                .about(path);
        String found = pair.overlaps()
                ? pair.against().title() + " cuts " + Mm.shortBy(pair.highMm()) + " into the " + face.word() + " of "
                        + part.title()
                : Mm.besides(pair.lowMm(), demand.mm()) + " between the " + face.word() + " of " + part.title()
                        + " and " + pair.against().title();
        return Answer.of(question, pair, demand, Optional.empty(), found);
    }

    private Answer nothing(Site site, Part part, Face face, Demand demand, String path) {
        Question question = Question.of(name(), part.thing(), site.stance()).about(path);
        String head =
                "nothing lies in front of the " + face.word() + " of " + part.title() + " within " + Mm.text(FAR_MM);
        return Answer.nothingThere(question, face, FAR_MM, demand, head);
    }
}
