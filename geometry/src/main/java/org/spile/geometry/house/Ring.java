package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/**
 * The outside of a leg at one of its ends, as corners round it.
 *
 * <p>Rings that are to be joined have equally many corners in the same order. A round section is the polygon round its
 * circle (24 sides: at most 0.86 % of the radius outside it), so that every error is on the safe side; a rectangular one
 * repeats each corner as often as needed.
 */
final class Ring {
    /** Corners of a round ring; a multiple of four. */
    private static final int ROUND = 24;

    private final Spot middle;
    private final Cross outside;
    private final boolean fine;

    /**
     * @param middle of the end
     * @param outside section over all layers
     * @param fine whether it has as many corners as a round ring
     */
    Ring(Spot middle, Cross outside, boolean fine) {
        this.middle = middle;
        this.outside = outside;
        this.fine = fine;
    }

    /** A corner's offsets from the middle along the section's two axes. */
    private record Off(Stack first, Stack second) {}

    private List<Off> offs() {
        Stack first = outside.size(Cross.first(outside.main())).times(0.5);
        Stack second = outside.size(Cross.second(outside.main())).times(0.5);
        List<Off> offs = new ArrayList<>();
        int n = fine ? ROUND : 4;
        for (int k = 0; k < n; k++) {
            double angle = 2 * Math.PI * (k + 0.5) / n;
            double c = Math.signum(Math.cos(angle));
            double s = Math.signum(Math.sin(angle));
            offs.add(
                    fine && outside.form() != Cross.Form.RECTANGULAR
                            ? curved(first, second, angle)
                            : new Off(first.times(c), second.times(s)));
        }
        return offs;
    }

    /** Round about the middle, or about the ends of the flat of an oval. */
    private static Off curved(Stack first, Stack second, double angle) {
        double longer = 1 / Math.cos(Math.PI / ROUND);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        boolean wide = first.valueMm() > second.valueMm();
        Stack radius = wide ? second : first;
        Stack flat = wide ? first.minus(second) : second.minus(first);
        Stack along = radius.times(longer * c).plus(wide ? flat.times(Math.signum(c)) : Stack.ZERO);
        Stack up = radius.times(longer * s).plus(wide ? Stack.ZERO : flat.times(Math.signum(s)));
        return new Off(along, up);
    }

    /** Square to the leg's axis. */
    List<Spot> square() {
        Vector3D first = Cross.first(outside.main()).unit();
        Vector3D second = Cross.second(outside.main()).unit();
        return offs().stream()
                .map(off -> middle.plus(first, off.first()).plus(second, off.second()))
                .toList();
    }

    /**
     * Cut by the plane halfway between this leg and its neighbour at a right angle: a corner that lies {@code t} towards the
     * neighbour's way lies {@code t} back along this leg's.
     *
     * @param out the way along this leg out of this end
     * @param other the way along the neighbour away from the corner
     */
    List<Spot> mitred(Way out, Way other) {
        Axis first = Cross.first(outside.main());
        List<Spot> ring = new ArrayList<>();
        List<Spot> square = square();
        List<Off> offs = offs();
        for (int k = 0; k < square.size(); k++) {
            Stack toward =
                    (other.axis() == first ? offs.get(k).first() : offs.get(k).second()).times(other.sign());
            ring.add(square.get(k).plus(out.unit(), toward.times(-1)));
        }
        return ring;
    }
}
