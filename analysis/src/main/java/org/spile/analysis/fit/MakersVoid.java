package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;

/** The depth of cavity that a unit's maker asks for, at its shallowest spot over the unit. */
final class MakersVoid implements FitCheck {
    @Override
    public String name() {
        return "fit.void";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (Part part : site.unitBodies()) {
            if (!site.asksOver(part.body().bounds())) {
                continue;
            }
            ToldUnit unit = site.unit(part).orElseThrow();
            unit.voidMm()
                    .map(site.house()::now)
                    .ifPresent(asked -> site.cavitiesOf(part)
                            .forEach(cavity -> Plan.within(cavity.outline(), Plan.of(part.body()))
                                    .ifPresent(
                                            footprint -> answers.add(answer(site, part, cavity, footprint, asked)))));
        }
        return answers;
    }

    private Answer answer(Site site, Part part, CavitySpace cavity, Outline footprint, Reading asked) {
        CavitySpace.Depth depth = cavity.leastDepth(footprint);
        Outcome outcome = Outcome.of(depth.stack(), Demand.maker(asked));
        String head = cavity.title() + " is " + Mm.besides(outcome.lowMm(), asked.value())
                + " deep between its linings at " + part.title();
        Question question = Question.of(name(), part.thing(), cavity.path(), site.stance());
        Ends ends = new Ends(depth.low(), depth.high());
        return Answer.of(question, ends, outcome, head, part.body().bounds());
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        List<Ban> bans = new ArrayList<>();
        for (Part part : site.unitBodies()) {
            if (part.thing().equals(unit) && site.asksOver(part.body().bounds())) {
                site.unit(part)
                        .orElseThrow()
                        .voidMm()
                        .map(site.house()::now)
                        .ifPresent(
                                asked -> site.cavitiesOf(part).forEach(cavity -> bans.add(ban(part, cavity, asked))));
            }
        }
        return bans;
    }

    /** The unit's plan must stay off wherever its cavity is shallower. */
    private Ban ban(Part part, CavitySpace cavity, Reading asked) {
        Demand demand = Demand.maker(asked);
        String says = "a void " + Mm.text(demand.mm()) + " deep over " + part.title();
        Limit limit = new Limit(name() + "/" + asked.path(), name(), says, demand.mm(), demand.source());
        Body plan = Plan.flat(Plan.of(part.body()));
        return Ban.fromPlan(limit, cavity.path(), cavity.title(), depthMm -> {
            List<Outline> shallow = depthMm <= 0 ? List.of() : cavity.shallower(depthMm);
            return shallow.isEmpty() ? List.of() : List.of(new Ban.Apart(plan, Plan.tall(shallow), 0));
        });
    }
}
