package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.clearance.ExitInterval;
import org.spile.geometry.kernel.clearance.LeastTravel;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Solid;

/** Bodies that go straight down together, each held against one that stays; the first pair is the one to be cured. */
final class Descent {
    private final List<Body> moving = new ArrayList<>();
    private final List<Body> fixed = new ArrayList<>();
    private final List<Double> marginsMm = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();

    void add(Body moves, Body stays, double marginMm, String staysTitle) {
        moving.add(moves);
        fixed.add(stays);
        marginsMm.add(marginMm);
        titles.add(staysTitle);
    }

    /** The least travel at which every pair is clear (mm). */
    double least() {
        return least(moving.size());
    }

    /** The least travel at which the first pair is clear (mm). */
    double leastForFirst() {
        return least(1);
    }

    /** What stands in the way at a travel. */
    Optional<Stop> stopAt(double travelMm) {
        for (int i = 1; i < moving.size(); i++) {
            for (ExitInterval blocked : blocked(i)) {
                if (blocked.fromMm() < travelMm && travelMm < blocked.toMm()) {
                    return Optional.of(new Stop(titles.get(i), travelMm, Math.max(0, blocked.fromMm())));
                }
            }
        }
        return Optional.empty();
    }

    private double least(int pairs) {
        return LeastTravel.clear(
                        moving.subList(0, pairs),
                        fixed.subList(0, pairs),
                        Vector3D.Unit.MINUS_Z,
                        (m, f) -> m == f ? marginsMm.get(m) : Double.NEGATIVE_INFINITY)
                .travelMm();
    }

    private List<ExitInterval> blocked(int pair) {
        List<ExitInterval> blocked = new ArrayList<>();
        for (Solid moves : moving.get(pair).solids()) {
            for (Solid stays : fixed.get(pair).solids()) {
                blocked.addAll(ExitInterval.all(moves, stays, Vector3D.Unit.MINUS_Z, marginsMm.get(pair)));
            }
        }
        return blocked;
    }

    /**
     * What stops a ceiling on its way down.
     *
     * @param title of what stands in the way
     * @param neededMm how far the ceiling would have to go
     * @param fromMm how far it can
     */
    record Stop(String title, double neededMm, double fromMm) {}
}
