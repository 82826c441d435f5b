package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.Tie;
import org.spile.geometry.kernel.solid.Body;

/**
 * The clearance round everything: units, ducts with their wraps, lines, movers where the stance has them and docked
 * trailers, against all else and each other.
 *
 * <p>Only near pairs are told, and for each thing at least the one that comes nearest. Tied pairs owe no clearance; those
 * that may only touch are told if they cut into each other.
 */
final class GeneralClearance implements FitCheck {
    /** A gap larger than asked by this, with everything against it, is nobody's worry. */
    private static final double WORTH_TELLING_MM = 25;

    @Override
    public String name() {
        return "fit.clearance";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (int i = 0; i < site.solids().size(); i++) {
            answers.addAll(around(site, i));
        }
        return answers;
    }

    /** What comes nearest to each thing of which nothing was said yet. */
    @Override
    public List<Answer> otherwise(Site site, List<Answer> answers) {
        Set<String> met = new HashSet<>();
        for (Answer answer : answers) {
            answer.pair().ifPresent(pair -> {
                met.add(pair.subject().thing());
                if (answer.question().check().equals(name())) {
                    met.add(pair.against().thing());
                }
            });
        }
        Map<String, Answer> nearest = new LinkedHashMap<>();
        for (Part part : site.solids()) {
            boolean asks = Subjects.rank(site.house(), part).isPresent();
            if (asks && !met.contains(part.thing())) {
                Nearest.to(site, part)
                        .filter(pair -> Subjects.asks(part, pair.against()))
                        .map(pair -> held(site, pair, site.general()).fleeting())
                        .ifPresent(answer -> nearest.merge(part.thing(), answer, GeneralClearance::worse));
            }
        }
        return List.copyOf(nearest.values());
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        Limit apart = new Limit(
                name() + "/limits.clearance",
                name(),
                Mm.text(site.general().mm()) + " round everything",
                site.general().mm(),
                site.general().source());
        Limit touch = new Limit(name() + "/" + unit, name(), "things that may touch", 0, Demand.TOUCH.source());
        List<Ban> bans = new ArrayList<>();
        for (Part mine : site.solidsOf(unit)) {
            for (Part other : site.solidsBeside(unit)) {
                Optional<Tie> tie = site.scene().tie(mine, other);
                Optional<Body> met = Facing.body(other, mine);
                if (met.isPresent()
                        && site.asks(mine, other)
                        && tie.filter(Tie::overlaps).isEmpty()) {
                    Limit limit = tie.isPresent() ? touch : apart;
                    bans.add(Ban.round(limit, Named.against(other), other.title(), mine.body(), met.get()));
                }
            }
        }
        return bans;
    }

    private List<Answer> around(Site site, int index) {
        Part subject = site.solids().get(index);
        List<Answer> answers = new ArrayList<>();
        Optional<Integer> rank = Subjects.rank(site.house(), subject);
        if (rank.isEmpty()) {
            return answers;
        }
        double reachMm = site.general().worstMm() + WORTH_TELLING_MM + Nearest.LARGEST_TOLERANCE_MM;
        for (int other : site.nearIndices(subject.body().bounds(), reachMm)) {
            if (speaks(site, rank.get(), index, other)) {
                answer(site, subject, site.solids().get(other)).ifPresent(answers::add);
            }
        }
        return answers;
    }

    /** Each pair is asked about once, by the one that ranks first, then by the one whose name comes first. */
    private static boolean speaks(Site site, int rank, int index, int other) {
        Part subject = site.solids().get(index);
        Part against = site.solids().get(other);
        int otherRank = Subjects.rank(site.house(), against).orElse(Integer.MAX_VALUE);
        boolean first =
                rank < otherRank || (rank == otherRank && subject.thing().compareTo(against.thing()) < 0);
        return first
                && site.asks(subject, against)
                && !subject.thing().equals(against.thing())
                && Subjects.asks(subject, against);
    }

    private Optional<Answer> answer(Site site, Part subject, Part other) {
        Optional<Tie> tie = site.scene().tie(subject, other);
        if (tie.isPresent() && tie.get().overlaps()) {
            return Optional.empty();
        }
        Demand demand = tie.isPresent() ? Demand.TOUCH : site.general();
        return Gauge.apart(subject, other)
                .filter(pair -> tie.isPresent() ? pair.overlaps() : worthTelling(site, pair))
                .map(Gauge::atWorst)
                .map(pair -> held(site, pair, demand));
    }

    private static boolean worthTelling(Site site, Pair pair) {
        double spareMm = pair.lowMm() - pair.downMm() - site.general().worstMm();
        return spareMm <= WORTH_TELLING_MM && !spokenFor(site, pair);
    }

    private static boolean spokenFor(Site site, Pair pair) {
        return MakersClearance.speaksFor(site, pair.subject(), pair.normal())
                || MakersClearance.speaksFor(site, pair.against(), pair.normal().negate());
    }

    private Answer held(Site site, Pair pair, Demand demand) {
        Question question = Question.of(name(), pair.subject().thing(), Named.against(pair.against()), site.stance());
        String head = pair.overlaps()
                ? pair.subject().title() + " and " + pair.against().title() + " share room, "
                        + Mm.shortBy(pair.highMm()) + " deep"
                : Mm.besides(pair.lowMm(), demand.mm()) + " between "
                        + pair.subject().title() + " and " + pair.against().title();
        return Answer.of(question, pair, demand, Named.where(site, pair.subject(), pair.ends()), head);
    }

    private static Answer worse(Answer one, Answer other) {
        return Worst.FIRST.compare(other, one) < 0 ? other : one;
    }
}
