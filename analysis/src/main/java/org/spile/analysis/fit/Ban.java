package org.spile.analysis.fit;

import java.util.List;
import java.util.function.DoubleFunction;
import org.spile.geometry.kernel.solid.Body;

/**
 * What a limit keeps a unit away from: wherever the unit goes, something of it must stay out of something else.
 *
 * <p>A unit's place is good if no ban is broken there. This is the same question that the check asks of the place where the
 * unit stands, with the same bodies and the same exemptions; both come from one class.
 */
public final class Ban {
    private final Limit limit;
    private final String against;
    private final String title;
    private final boolean byPlan;
    private final DoubleFunction<List<Apart>> rule;

    private Ban(Limit limit, String against, String title, boolean byPlan, DoubleFunction<List<Apart>> rule) {
        this.limit = limit;
        this.against = against;
        this.title = title;
        this.byPlan = byPlan;
        this.rule = rule;
    }

    /** A ban whose bodies depend on how much is asked. */
    static Ban of(Limit limit, String against, String title, DoubleFunction<List<Apart>> rule) {
        return new Ban(limit, against, title, false, rule);
    }

    /** A ban from a part of the plan that is the larger, the more is asked. */
    static Ban fromPlan(Limit limit, String against, String title, DoubleFunction<List<Apart>> rule) {
        return new Ban(limit, against, title, true, rule);
    }

    /** A ban between two bodies, at a distance that is what is asked. */
    static Ban round(Limit limit, String against, String title, Body moving, Body fixed) {
        return new Ban(limit, against, title, false, askedMm -> List.of(new Apart(moving, fixed, askedMm)));
    }

    /** Who asks, and how much. */
    public Limit limit() {
        return limit;
    }

    /** The id of what must be kept away from; empty if that is no thing. */
    public String against() {
        return against;
    }

    /** Whether what must be kept away from is a body, not a part of the plan. */
    public boolean isThing() {
        return !byPlan && !against.startsWith("rooms.");
    }

    /** What that is called. */
    public String title() {
        return title;
    }

    /**
     * What must stay apart, in the site frame, with the unit as it stands.
     *
     * @param askedMm how much is asked, instead of what the limit says; less than nothing where things would share room
     */
    public List<Apart> at(double askedMm) {
        return rule.apply(askedMm);
    }

    /**
     * What must stay apart even if everything may be so much nearer: what is left of the ban when nothing has moved by more.
     *
     * @param byMm how much nearer, 0 or more
     */
    public List<Apart> relaxed(double byMm) {
        if (byPlan) {
            return at(limit.askedMm() - byMm);
        }
        return at(limit.askedMm()).stream()
                .map(apart -> new Apart(apart.moving, apart.fixed, apart.distanceMm - byMm))
                .toList();
    }

    /**
     * Two bodies and how far they must be apart.
     *
     * @param moving goes with the unit
     * @param fixed stays
     * @param distanceMm the Euclidean distance; negative if they may share room so deep
     */
    public record Apart(Body moving, Body fixed, double distanceMm) {}
}
