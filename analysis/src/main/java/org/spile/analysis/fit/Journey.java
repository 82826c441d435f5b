package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Where;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Tie;
import org.spile.geometry.house.Travels.Approach;
import org.spile.geometry.house.Travels.Mover;
import org.spile.geometry.kernel.clearance.Slide;
import org.spile.geometry.kernel.clearance.Travel;
import org.spile.geometry.kernel.clearance.TravelGap;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;

/**
 * One thing's way through a house in which all else stands still, and what it comes nearest to on it.
 *
 * <p>The gaps are those of {@link TravelGap}, for the whole way; tolerances are counted where a gap is least, with the house
 * worked out for that place.
 */
final class Journey {
    /** Who comes no nearer than this beyond what is asked is only told if nothing comes nearer. */
    private static final double WORTH_TELLING_MM = 25;

    private static final double SLIDE_APART_MM = 1e-6;
    private static final int BOUNDS_AT = 16;
    private static final double ROUNDING = 1000;

    private final String subject;
    private final String title;
    private final String unit;
    private final String stance;
    private final Demand general;
    private final Set<String> moving;
    private final Optional<Travel> travel;
    private final double from;
    private final double to;
    private final DoubleFunction<Scene> at;

    private Journey(
            House house,
            String subject,
            String title,
            String unit,
            String stance,
            Set<String> moving,
            Optional<Travel> travel,
            double from,
            double to,
            DoubleFunction<Scene> at) {
        this.subject = subject;
        this.title = title;
        this.unit = unit;
        this.stance = stance;
        this.general = Demand.general(house);
        this.moving = moving;
        this.travel = travel;
        this.from = from;
        this.to = to;
        this.at = at;
    }

    /**
     * A mover's way.
     *
     * @param others where every mover stands
     */
    static Journey ofMover(
            House house, String stance, Map<String, Double> others, Mover mover, double from, double to) {
        return new Journey(
                house,
                mover.path(),
                mover.title(),
                mover.unit(),
                stance,
                new HashSet<>(house.travels().carried(mover.id())),
                house.travels().motion(stance, others, mover.id()),
                from,
                to,
                position -> {
                    Map<String, Double> positions = new LinkedHashMap<>(others);
                    positions.put(mover.id(), position);
                    return house.travels().scene(stance, positions);
                });
    }

    /** A trailer's way from its dock, which is the way to it. */
    static Journey ofTrailer(House house, String stance, Approach approach, double farMm) {
        Scene docked = house.travels().drawnAway(stance, approach.trailer(), 0);
        Set<String> moving = new HashSet<>();
        docked.parts().stream()
                .filter(part -> part.trailer().equals(approach.trailer()))
                .forEach(part -> moving.add(part.id()));
        return new Journey(
                house,
                approach.path(),
                approach.trailer(),
                "mm",
                stance,
                moving,
                Optional.of(Slide.along(approach.away(), farMm)),
                0,
                farMm,
                mm -> house.travels().drawnAway(stance, approach.trailer(), mm));
    }

    /**
     * What it comes nearest to.
     *
     * @param check name of the question
     * @param once behind its name, as ", once hatch has moved"
     */
    Answer worst(String check, String once) {
        if (travel.isEmpty()) {
            return nothing(check, once, ", whose trailer isn't there");
        }
        List<Met> met = new ArrayList<>(met(at.apply(0)));
        met.sort(Comparator.comparingDouble(Met::spareMm).thenComparing(near -> near.other));
        Answer worst = null;
        for (int i = 0; i < met.size(); i++) {
            if (i == 0 || met.get(i).spareMm() <= Math.max(met.get(0).spareMm(), 0) + WORTH_TELLING_MM) {
                Answer answer = answer(check, once, met.get(i));
                worst = worst == null || Worst.FIRST.compare(answer, worst) < 0 ? answer : worst;
            }
        }
        return worst == null ? nothing(check, once, "") : worst;
    }

    /** A pair that comes near: by their ids, how much, and the demand. */
    private record Met(String part, String other, TravelGap gap, Demand demand) {
        double spareMm() {
            return gap.lowerMm() - demand.mm();
        }
    }

    private List<Met> met(Scene scene) {
        List<Part> still = new ArrayList<>();
        List<Part> movers = new ArrayList<>();
        for (Part part : scene.parts()) {
            if (part.kind() != PartKind.SERVICE) {
                (moving.contains(part.id()) ? movers : still).add(part);
            }
        }
        List<Met> met = new ArrayList<>();
        for (Part mover : movers) {
            Box3 swept = swept(mover.body());
            for (Part other : still) {
                Optional<Tie> tie = scene.tie(mover, other);
                boolean near = other.body().bounds().gapTo(swept) <= Nearest.LARGEST_TOLERANCE_MM;
                if (near && (tie.isEmpty() || !tie.get().overlaps())) {
                    met(mover, other, tie.isPresent()).ifPresent(met::add);
                }
            }
        }
        return met;
    }

    /** Tied things may touch, so they are told only if they cut into each other. */
    private Optional<Met> met(Part mover, Part other, boolean tied) {
        Optional<Body> one = Facing.body(mover, other);
        Optional<Body> two = Facing.body(other, mover);
        if (one.isEmpty() || two.isEmpty()) {
            return Optional.empty();
        }
        double apart = travel.get() instanceof Slide ? SLIDE_APART_MM : TravelGap.SHOWN_MM;
        TravelGap gap = TravelGap.least(one.get(), travel.get(), from, to, two.get(), apart);
        return tied && gap.lowerMm() >= -apart
                ? Optional.empty()
                : Optional.of(new Met(mover.id(), other.id(), gap, tied ? Demand.TOUCH : general));
    }

    /** A box round the whole way. */
    private Box3 swept(Body body) {
        double step = (to - from) / BOUNDS_AT;
        Box3 swept = body.moved(travel.get().at(from)).bounds();
        for (int i = 1; i <= BOUNDS_AT; i++) {
            swept = swept.with(body.moved(travel.get().at(from + i * step)).bounds());
        }
        return swept.grown(travel.get().speedMm(body.bounds(), 0) * step / 2);
    }

    private Answer answer(String check, String once, Met met) {
        double position = met.gap.parameter();
        Scene there = at.apply(position);
        Part mover = there.part(met.part).orElseThrow();
        Part other = there.part(met.other).orElseThrow();
        Pair pair = Gauge.apart(mover, other).map(Gauge::atWorst).orElseThrow();
        Pair whole = new Pair(
                pair.subject(),
                pair.against(),
                pair.keep(),
                pair.met(),
                Math.min(met.gap.lowerMm(), pair.lowMm()),
                Math.max(met.gap.upperMm(), Math.min(met.gap.lowerMm(), pair.lowMm())),
                pair.ends(),
                pair.normal(),
                pair.stack());
        Question question =
                Question.of(check, subject, Named.against(other), stance).about(subject);
        String place = " at " + Written.number(position, 1) + " " + unit;
        String name = mover.thing().equals(subject) || mover.title().equals(title)
                ? title
                : title + " (" + mover.title() + ")";
        String head = whole.highMm() < 0
                ? name + ", on its way, cuts " + Mm.shortBy(whole.highMm()) + " into " + other.title() + place + once
                : Mm.besides(whole.lowMm(), met.demand.mm()) + " between " + name + ", on its way, and " + other.title()
                        + place + once;
        Where where = new Where(subject, "on its way", new Quantity(Math.rint(position * ROUNDING) / ROUNDING, unit));
        return Answer.of(question, whole, met.demand, Optional.of(where), head);
    }

    private Answer nothing(String check, String once, String why) {
        Question question = Question.of(check, subject, stance);
        double mm = Nearest.LARGEST_TOLERANCE_MM;
        return new Answer(
                question,
                Outcome.of(Stack.constant(Math.max(mm, general.mm())), general),
                false,
                Optional.empty(),
                Optional.empty(),
                "nothing comes within " + Written.number(mm, 0) + " mm of " + title + " on its way" + once + why,
                Optional.empty(),
                Optional.empty());
    }
}
