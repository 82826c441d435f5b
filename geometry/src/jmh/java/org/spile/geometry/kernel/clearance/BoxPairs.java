package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.kernel.solid.Move;

/** Random pairs of boxes from a seed: enough of them that the processor can't learn the branches. */
final class BoxPairs {
    /** Pairs in a set. */
    static final int COUNT = 2_000;

    private static final double REACH_MM = 500;

    final List<Twin> first = new ArrayList<>();
    final List<Twin> second = new ArrayList<>();
    /** Signed distance of each pair by trying all features. */
    final List<Double> plainMm = new ArrayList<>();

    private BoxPairs() {}

    /** Upright boxes at any yaw, all apart or all overlapping. */
    static BoxPairs yawed(boolean overlapping) {
        return drawn(new RandomSolids(17), true, overlapping);
    }

    /** Boxes in any rotation, all apart or all overlapping. */
    static BoxPairs turned(boolean overlapping) {
        return drawn(new RandomSolids(29), false, overlapping);
    }

    private static BoxPairs drawn(RandomSolids random, boolean upright, boolean overlapping) {
        BoxPairs pairs = new BoxPairs();
        BruteForce plain = new BruteForce();
        while (pairs.first.size() < COUNT) {
            Twin a = box(random, upright);
            Twin b = box(random, upright);
            double distance = plain.signedDistance(a.plain(), b.plain());
            if (overlapping ? distance < -1 : distance > 1) {
                pairs.first.add(a);
                pairs.second.add(b);
                pairs.plainMm.add(distance);
            }
        }
        return pairs;
    }

    private static Twin box(RandomSolids random, boolean upright) {
        Move turn = upright ? random.yaw() : random.anyTurn();
        return Twin.box(
                random.between(5, 400),
                random.between(5, 400),
                random.between(5, 400),
                turn.then(random.shift(REACH_MM)));
    }

    /** Holds an answer against the plain one. */
    void check(int pair, double lowerMm, double upperMm) {
        double plain = plainMm.get(pair);
        if (!(lowerMm <= plain + 1e-6 && upperMm >= plain - 1e-6 && upperMm - lowerMm <= 1e-6)) {
            throw new IllegalStateException(
                    "pair " + pair + ": [" + lowerMm + ", " + upperMm + "] mm, by all features " + plain);
        }
    }
}
