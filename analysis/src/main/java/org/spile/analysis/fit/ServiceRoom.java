package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Source;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.solid.Body;

/** Room kept for service must be empty; the answer is the gap to what comes nearest. */
final class ServiceRoom implements FitCheck {
    @Override
    public String name() {
        return "fit.service";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (Part room : site.serviceRooms()) {
            for (Part other : site.near(room.body().bounds(), Nearest.LARGEST_TOLERANCE_MM)) {
                if (site.asks(room, other) && !site.free(room, other)) {
                    Gauge.apart(room, other)
                            .map(Gauge::atWorst)
                            .map(pair -> answer(site, pair))
                            .ifPresent(answers::add);
                }
            }
        }
        return answers;
    }

    @Override
    public List<Answer> otherwise(Site site, List<Answer> answers) {
        List<Answer> nearest = new ArrayList<>();
        for (Part room : site.serviceRooms()) {
            String id = Question.of(name(), room.id(), site.stance()).id();
            if (answers.stream().noneMatch(answer -> answer.id().equals(id))) {
                Nearest.to(site, room)
                        .map(pair -> answer(site, pair).fleeting())
                        .ifPresent(nearest::add);
            }
        }
        return nearest;
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        List<Ban> bans = new ArrayList<>();
        for (Part room : site.serviceRooms()) {
            boolean own = room.thing().equals(unit);
            Optional<Ahead> ahead = behind(site, room).map(behind -> new Ahead(limit(room, behind), room, behind));
            for (Part other : own ? site.solidsBeside(unit) : site.solidsOf(unit)) {
                Optional<Body> met = Facing.body(other, room);
                if (ahead.isPresent() && met.isPresent() && site.asks(room, other) && !site.free(room, other)) {
                    bans.add(ahead.get().ban(own, other, met.get()));
                }
            }
        }
        return bans;
    }

    private Limit limit(Part room, Face behind) {
        String says = "the " + room.title() + ", " + Mm.text(behind.depthMm()) + " out";
        return new Limit(name() + "/" + room.id(), name(), says, behind.depthMm(), Source.file(room.id() + ".out"));
    }

    /** The patch of the unit's face that a room stands on. */
    private static Optional<Face> behind(Site site, Part room) {
        return site.house().told().units().values().stream()
                .filter(unit -> unit.placed().path().equals(room.thing()))
                .flatMap(unit -> unit.service().values().stream()
                        .filter(service -> service.path().equals(room.id()))
                        .map(service -> UnitFrame.of(site.scene(), unit.placed().id())
                                .face(service.face(), room.body())
                                .behind()))
                .findFirst();
    }

    private Answer answer(Site site, Pair pair) {
        Part room = pair.subject();
        Question question = Question.of(name(), room.id(), Named.against(pair.against()), site.stance())
                .about(room.id());
        String head = pair.overlaps()
                ? pair.against().title() + " stands " + Mm.shortBy(pair.highMm()) + " deep in the " + room.title()
                : "the " + room.title() + " is empty; nearest is "
                        + pair.against().title() + ", " + Mm.text(pair.lowMm()) + " away";
        return Answer.of(question, pair, Demand.TOUCH, Optional.empty(), head);
    }
}
