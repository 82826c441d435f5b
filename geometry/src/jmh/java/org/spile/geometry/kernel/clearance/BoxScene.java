package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/**
 * Slender boxes in a space that grows with their count, so that each has as many neighbours whatever the count: three in
 * four upright at any yaw, the fourth in any rotation. Overlaps are rare, as in a house.
 */
final class BoxScene {
    private static final double SPACING_MM = 310;

    final RandomSolids random;
    final double sideMm;
    final List<Twin> twins = new ArrayList<>();
    final List<Body> bodies = new ArrayList<>();
    final List<Box3> bounds = new ArrayList<>();

    BoxScene(int count, long seed) {
        random = new RandomSolids(seed);
        sideMm = SPACING_MM * Math.cbrt(count);
        while (twins.size() < count) {
            Twin next = part(twins.size() % 4 != 3);
            Box3 box = next.plain().bounds();
            if (random.between(0, 1) < 0.02 || bounds.stream().noneMatch(b -> b.gapTo(box) <= 0)) {
                twins.add(next);
                bodies.add(Body.of(next.solid()));
                bounds.add(next.solid().bounds());
            }
        }
    }

    /** A part somewhere in the space. */
    Twin part(boolean upright) {
        Move turn = upright ? random.yaw() : random.anyTurn();
        return Twin.box(
                random.between(20, 150),
                random.between(20, 150),
                random.between(50, 400),
                turn.then(random.shift(sideMm / 2)));
    }
}
