package org.spile.analysis.fit;

import java.util.Optional;
import java.util.function.Predicate;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Box3;

/** What comes nearest to a part, of all that owes it room: in the worst case, not only as drawn. */
final class Nearest {
    /** No tolerance of a house is larger; what is farther than the nearest by this can't be worse. */
    static final double LARGEST_TOLERANCE_MM = 100;

    private Nearest() {}

    static Optional<Pair> to(Site site, Part part) {
        Box3 bounds = part.body().bounds();
        Pair nearest = null;
        for (Part other : site.solids()) {
            double limit = nearest == null ? Double.POSITIVE_INFINITY : nearest.lowMm() + LARGEST_TOLERANCE_MM;
            if (other.body().bounds().gapTo(bounds) <= limit && !site.free(part, other)) {
                nearest = Gauge.apart(part, other)
                        .map(Gauge::atWorst)
                        .filter(closerThan(nearest))
                        .orElse(nearest);
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** Of two that come equally near, as a pair of rails, the one whose name comes first. */
    private static Predicate<Pair> closerThan(Pair nearest) {
        return pair -> {
            if (nearest == null) {
                return true;
            }
            double closerMm = nearest.lowMm() - nearest.downMm() - (pair.lowMm() - pair.downMm());
            return Math.abs(closerMm) > GeometryTolerance.CONTACT_MM
                    ? closerMm > 0
                    : pair.against().id().compareTo(nearest.against().id()) < 0;
        };
    }
}
