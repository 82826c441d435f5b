package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Source;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.told.ToldService;
import org.spile.geometry.house.told.ToldUnit;

/**
 * Whether a hand gets at what is served: the free depth straight out of the served patch of a unit's face must take a
 * clenched hand.
 */
final class HandRoom implements FitCheck {
    private static final double HAND_MM = 95;
    private static final double FAR_MM = 2000;
    private static final Demand HAND = new Demand(
            HAND_MM,
            0,
            Source.fromMemory("MIL-STD-1472, arm and hand access: clenched hand to the wrist, 95 mm the narrow way"),
            Optional.empty());

    @Override
    public String name() {
        return "fit.hand";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (Part body : site.unitBodies()) {
            ToldUnit unit = site.unit(body).orElseThrow();
            for (ToldService service : unit.service().values()) {
                if (!service.purpose().equals("air")) {
                    site.scene()
                            .part(service.path())
                            .ifPresent(room -> answers.addAll(answers(site, body, room, service)));
                }
            }
        }
        return answers;
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        List<Ban> bans = new ArrayList<>();
        for (Part body : site.unitBodies()) {
            boolean own = body.thing().equals(unit);
            for (ToldService service : site.unit(body).orElseThrow().service().values()) {
                Optional<Part> room = service.purpose().equals("air")
                        ? Optional.empty()
                        : site.scene().part(service.path());
                if (room.isPresent()) {
                    Ahead hand = hand(site, body, room.get(), service);
                    for (Part other : own ? site.solidsBeside(unit) : site.solidsOf(unit)) {
                        if (inTheWay(site, body, room.get(), other)) {
                            Facing.body(other, body)
                                    .map(met -> hand.ban(own, other, met))
                                    .ifPresent(bans::add);
                        }
                    }
                }
            }
        }
        return bans;
    }

    private Ahead hand(Site site, Part body, Part room, ToldService service) {
        Face patch = site.frame(body).face(service.face(), room.body()).behind();
        String says =
                "a hand's room at the " + service.purpose() + " side of " + body.title() + ", " + Mm.text(HAND_MM);
        return new Ahead(new Limit(name() + "/" + room.id(), name(), says, HAND_MM, HAND.source()), body, patch);
    }

    private static boolean inTheWay(Site site, Part body, Part room, Part other) {
        boolean asked = site.asks(body, other) || site.asks(room, other);
        return asked && !site.free(body, other) && !site.free(room, other);
    }

    private List<Answer> answers(Site site, Part body, Part room, ToldService service) {
        Face patch = site.frame(body).face(service.face(), room.body()).behind();
        List<Answer> answers = new ArrayList<>();
        String free = "a hand at the " + service.purpose() + " side of " + body.title()
                + " has nothing in its way within " + Mm.text(FAR_MM);
        answers.add(Answer.nothingThere(
                Question.of(name(), room.id(), site.stance()).about(room.id()), patch, FAR_MM, HAND, free));
        for (Part other : site.near(patch.swept(FAR_MM).bounds(), 0)) {
            if (inTheWay(site, body, room, other)) {
                Gauge.ahead(body, patch, other)
                        .map(pair -> held(site, room, service, pair))
                        .ifPresent(answers::add);
            }
        }
        return answers;
    }

    private Answer held(Site site, Part room, ToldService service, Pair pair) {
        Question question = Question.of(name(), room.id(), Named.against(pair.against()), site.stance())
                .about(room.id());
        String head = "a hand at the " + service.purpose() + " side of "
                + pair.subject().title() + " has " + Mm.besides(Math.max(0, pair.lowMm()), HAND_MM) + " up to "
                + pair.against().title();
        return Answer.of(question, pair, HAND, Optional.empty(), head);
    }
}
