package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A face of something that holds things, for measuring from.
 *
 * @param outward the way out of the space through it
 * @param at the coordinate along that way's axis
 * @param patches where something else is in front of it, as a lowered ceiling under a roof
 */
record Surface(Way outward, Slope at, List<Patch> patches) {
    Surface {
        patches = List.copyOf(patches);
    }

    /** A piece in front of a surface, over a part of the plan. */
    record Patch(Span x, Span y, Slope at) {
        private boolean meets(Map<Axis, Span> thing) {
            return x.meets(thing.get(Axis.X)) && y.meets(thing.get(Axis.Y));
        }

        private boolean covers(Map<Axis, Span> thing) {
            return x.covers(thing.get(Axis.X)) && y.covers(thing.get(Axis.Y));
        }
    }

    static Surface level(Way outward, Stack at) {
        return of(outward, Slope.level(at));
    }

    static Surface of(Way outward, Slope at) {
        return new Surface(outward, at, List.of());
    }

    /** Whether it is known how far along it the thing lies that wants to be measured from it. */
    boolean reached(Map<Axis, Span> thing) {
        boolean all = patches.isEmpty() || (thing.containsKey(Axis.X) && thing.containsKey(Axis.Y));
        all &= at.isLevel() || thing.containsKey(at.along());
        return all;
    }

    /**
     * The place on it that is nearest to a thing.
     *
     * @param outside whether the thing is beyond it rather than inside
     * @param thing the thing's spans, as far as {@link #reached} wants them
     */
    Stack nearest(boolean outside, Map<Axis, Span> thing) {
        List<Slope> over = new ArrayList<>();
        boolean covered = false;
        for (Patch patch : patches) {
            if (patch.meets(thing)) {
                over.add(patch.at());
                covered |= patch.covers(thing);
            }
        }
        if (!covered) {
            over.add(at);
        }
        boolean greatest = outward.sign() > 0 == outside;
        return over.stream()
                .map(slope -> extreme(slope, greatest, thing))
                .reduce(greatest ? FirstOrder::greater : FirstOrder::lesser)
                .orElseThrow();
    }

    private static Stack extreme(Slope slope, boolean greatest, Map<Axis, Span> thing) {
        if (slope.isLevel()) {
            return slope.knots().get(0).value();
        }
        Span over = thing.get(slope.along());
        return greatest ? slope.greatest(over) : slope.least(over);
    }

    Axis axis() {
        return outward.axis();
    }
}
