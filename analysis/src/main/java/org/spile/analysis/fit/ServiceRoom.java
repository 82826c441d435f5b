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
            Nearest.to(site, room).map(pair -> answer(site, room, pair)).ifPresent(answers::add);
        }
        return answers;
    }

    private Answer answer(Site site, Part room, Pair pair) {
        Question question = Question.of(name(), room.id(), Named.against(pair.against()), site.stance());
        String head = pair.overlaps()
                ? pair.against().title() + " stands " + Mm.shortBy(pair.highMm()) + " deep in the " + room.title()
                : "the " + room.title() + " is empty; nearest is "
                        + pair.against().title() + ", " + Mm.text(pair.lowMm()) + " away";
        return Answer.of(question, pair, Demand.TOUCH, Optional.empty(), head);
    }
}
