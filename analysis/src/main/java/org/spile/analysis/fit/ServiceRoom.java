package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.Part;

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
