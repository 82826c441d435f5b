package org.spile.analysis.fit;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.kernel.clearance.Sufficiency;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;

/**
 * The least drops of a ceiling that cure a gap: one as drawn, one with everything against it.
 *
 * <p>What follows the ceiling travels down as a whole; for each pair of it and of what stays, the travels at which they are
 * too near form an interval, and the answer is the least travel outside the union of all intervals. So the ceiling doesn't
 * come to rest in something that lies below it. Pairs that are too near already are other answers' business.
 */
final class LeastDrop {
    /** No room has more to give. */
    private static final double FAR_MM = 1000;

    private final Followers follow;
    private final Pair pair;
    private final Demand demand;

    private LeastDrop(Followers follow, Pair pair, Demand demand) {
        this.follow = follow;
        this.pair = pair;
        this.demand = demand;
    }

    /** How far to lower the surface whose drop is a lever on a gap; empty if the gap doesn't grow by it. */
    static Optional<Drops> of(Followers follow, Pair pair, Demand demand, Lever lever) {
        if (lever.factor() <= 0) {
            return Optional.empty();
        }
        LeastDrop search = new LeastDrop(follow, pair, demand);
        return Optional.of(search.movesApart() ? search.byIntervals() : search.byFactor(lever));
    }

    /** Whether one side goes down as a whole and the other stays. */
    private boolean movesApart() {
        Follows subject = follow.how(pair.subject());
        Follows against = follow.how(pair.against());
        return EnumSet.of(subject, against).equals(EnumSet.of(Follows.NOT, Follows.WHOLE));
    }

    /** What stretches is worked out again when it is tried; the factor is where to start. */
    private Drops byFactor(Lever lever) {
        double drawn = lever.changeFor(demand.mm() - pair.lowMm());
        double worst = lever.changeFor(demand.worstMm() + pair.downMm() - pair.lowMm());
        return new Drops(Math.max(0, drawn), Math.max(0, worst), Optional.empty());
    }

    private Drops byIntervals() {
        double drawnMm = forbidden(false).least();
        Descent worst = forbidden(true);
        double aloneMm = worst.leastForFirst();
        boolean held = worst.least() > aloneMm + GeometryTolerance.CONTACT_MM;
        return new Drops(drawnMm, worst.least(), held ? worst.stopAt(aloneMm) : Optional.empty());
    }

    private Descent forbidden(boolean worst) {
        Descent descent = new Descent();
        double askedMm = worst ? demand.worstMm() + pair.downMm() : demand.mm();
        double distanceMm = pair.keep().distanceMm(askedMm);
        Body kept = pair.keep().body(askedMm);
        if (follow.how(pair.against()) == Follows.WHOLE) {
            descent.add(pair.met(), kept, distanceMm, pair.subject().title());
        } else {
            descent.add(kept, pair.met(), distanceMm, pair.against().title());
        }
        for (Part follower : follow.whole()) {
            for (Part other : follow.site().near(follower.body().bounds(), FAR_MM)) {
                if (concerns(follower, other)) {
                    add(descent, follower, other, worst);
                }
            }
        }
        return descent;
    }

    private void add(Descent descent, Part follower, Part stays, boolean worst) {
        Demand asked = asks(follower) || asks(stays) ? follow.site().general() : Demand.TOUCH;
        Gauge.apart(follower, stays).ifPresent(now -> {
            double marginMm = worst ? asked.worstMm() + now.downMm() : asked.mm();
            if (Sufficiency.of(now.lowMm(), now.highMm(), marginMm) == Sufficiency.CLEAR) {
                descent.add(now.keep().body(marginMm), now.met(), marginMm, stays.title());
            }
        });
    }

    private boolean concerns(Part follower, Part other) {
        boolean bounds = other.kind() == PartKind.LINING || other.kind() == PartKind.SHELL;
        boolean bothBound = follower.kind() == PartKind.LINING && bounds;
        List<String> asked = List.of(pair.subject().id(), pair.against().id());
        boolean samePair = asked.contains(follower.id()) && asked.contains(other.id());
        return !bothBound && !samePair && !follow.site().free(follower, other) && follow.how(other) == Follows.NOT;
    }

    private boolean asks(Part part) {
        return Subjects.rank(follow.site().house(), part).isPresent();
    }

    /**
     * Both drops, 0 or more.
     *
     * @param asDrawnMm at which the gap is met as drawn
     * @param worstMm at which it is met with everything against it
     * @param stop what else the ceiling would come to rest in, if it were lowered for this gap alone
     */
    record Drops(double asDrawnMm, double worstMm, Optional<Descent.Stop> stop) {}
}
