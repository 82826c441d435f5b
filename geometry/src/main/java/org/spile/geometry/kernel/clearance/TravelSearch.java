package org.spile.geometry.kernel.clearance;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Branch and bound for the least signed distance of convex pairs over a travel.
 *
 * <p>The signed distance of a convex pair is the greatest separation over all directions n. So the direction certified at one
 * place of the way bounds the distance from below at every other: by −reach of A there − reach of B against n. Over a
 * range that bound is {@link Travel#reachMm}; besides, no distance falls faster than the fastest point moves
 * (conservative advancement: Mirtich, Impulse-based Dynamic Simulation, 1996). The range with the lowest bound is
 * halved until that bound is close enough to the least distance found. On a slide both bounds of a range are straight lines and
 * the distance is convex, so their crossing is taken instead of the middle (Kelley, J. SIAM 8, 1960, 703).
 */
final class TravelSearch {
    private static final int MOST_PLACES = 4000;
    private static final double LEAST_SHARE = 1e-3;

    private final Travel travel;
    private final double from;
    private final double to;
    private final double apartMm;
    private final PairDistance distance = new PairDistance();

    private double upper = Double.POSITIVE_INFINITY;
    private double lower = Double.POSITIVE_INFINITY;
    private double best;

    TravelSearch(Travel travel, double from, double to, double apartMm) {
        this.travel = travel;
        this.from = from;
        this.to = to;
        this.apartMm = apartMm;
        this.best = from;
    }

    double lowerMm() {
        return lower;
    }

    double parameter() {
        return best;
    }

    /** A place of the way, with the direction in which the two are the farther apart there. */
    private record Place(double at, double lowerMm, Vector3D direction) {}

    /** A part of the way, with a lower bound of the distance on it. */
    private record Range(Place start, Place end, double lowerMm) {}

    /** Takes one more convex pair into account. */
    void pair(Solid moving, Solid fixed) {
        Pair pair = new Pair(moving, fixed);
        PriorityQueue<Range> open = new PriorityQueue<>(Comparator.comparingDouble(Range::lowerMm)
                .thenComparingDouble(r -> r.start().at()));
        List<Double> knots = travel.knots(from, to);
        Place last = pair.place(knots.get(0));
        double bound = last.lowerMm();
        for (double knot : knots.subList(1, knots.size())) {
            Place next = pair.place(knot);
            open.add(pair.range(last, next));
            last = next;
        }
        int places = knots.size();
        while (!open.isEmpty() && open.peek().lowerMm() < upper - apartMm && places < MOST_PLACES) {
            Range range = open.poll();
            Place middle = pair.place(pair.cut(range));
            places++;
            open.add(pair.range(range.start(), middle));
            open.add(pair.range(middle, range.end()));
        }
        bound = open.isEmpty() ? bound : open.peek().lowerMm();
        lower = Math.min(lower, bound);
    }

    /** One convex pair. */
    private final class Pair {
        private final Solid moving;
        private final Solid fixed;
        private final ConvexCore core;
        private final ConvexCore other;
        private final double speed;

        Pair(Solid moving, Solid fixed) {
            this.moving = moving;
            this.fixed = fixed;
            this.core = moving.cores().get(0);
            this.other = fixed.cores().get(0);
            this.speed = travel.speedMm(moving.bounds(), 0);
        }

        Place place(double at) {
            distance.measure(moving.moved(travel.at(at)), fixed);
            if (distance.upperMm() < upper) {
                upper = distance.upperMm();
                best = at;
            }
            return new Place(at, distance.lowerMm(), distance.gap().direction());
        }

        Range range(Place start, Place end) {
            double way = end.at() - start.at();
            double slow = (start.lowerMm() + end.lowerMm() - speed * way) / 2;
            double bound =
                    Math.max(slow, Math.max(over(start.direction(), start, end), over(end.direction(), start, end)));
            if (travel instanceof Slide) {
                bound = Math.max(bound, crossing(start, end)[1]);
            }
            // No bound of a part is better than what was found at its ends.
            return new Range(start, end, Math.min(bound, Math.min(start.lowerMm(), end.lowerMm())));
        }

        /** The least separation along a direction over a range. */
        private double over(Vector3D n, Place start, Place end) {
            double reach = travel.reachMm(core, n.getX(), n.getY(), n.getZ(), start.at(), end.at());
            return -reach - back(n);
        }

        private double back(Vector3D n) {
            return other.reach(-n.getX(), -n.getY(), -n.getZ()) + core.roundMm() + other.roundMm();
        }

        /** Where the two lines of a leg's ends cross, and how high; the lower of their ends if they don't. */
        private double[] crossing(Place start, Place end) {
            double way = end.at() - start.at();
            double fall = separation(start.direction(), end.at()) - separation(start.direction(), start.at());
            double rise = separation(end.direction(), end.at()) - separation(end.direction(), start.at());
            double high = separation(start.direction(), start.at()) - separation(end.direction(), start.at());
            double share = rise == fall ? 0.5 : high / (rise - fall);
            if (!(share > 0 && share < 1)) {
                return new double[] {start.at() + way / 2, Double.NEGATIVE_INFINITY};
            }
            return new double[] {start.at() + share * way, separation(start.direction(), start.at()) + share * fall};
        }

        private double separation(Vector3D n, double at) {
            return -travel.reachMm(core, n.getX(), n.getY(), n.getZ(), at, at) - back(n);
        }

        double cut(Range range) {
            double start = range.start().at();
            double way = range.end().at() - start;
            if (travel instanceof Slide) {
                double at = crossing(range.start(), range.end())[0];
                double margin = LEAST_SHARE * way;
                return Math.max(start + margin, Math.min(range.end().at() - margin, at));
            }
            return start + way / 2;
        }
    }
}
