package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Slope.Knot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/**
 * What a leaning side leaves of an upright line.
 *
 * @param way the way the side looks
 * @param side its offset over the height
 * @param across where the line stands, along the side's axis (mm)
 */
record SideCut(Way way, Slope side, double across) {

    /** The longest piece of the line that is inside the side; nothing is left where it stands wholly behind it. */
    Depths.At cut(Depths.At whole) {
        List<Stack> heights = heights(whole);
        Stack bestLow = whole.low();
        Stack bestHigh = whole.low();
        Stack low = null;
        for (int i = 0; i < heights.size(); i++) {
            boolean last = i + 1 == heights.size();
            if (low == null && insideAbove(heights, i)) {
                low = heights.get(i);
            }
            if (low != null && (last || !insideAbove(heights, i))) {
                Stack high = heights.get(i);
                if (high.valueMm() - low.valueMm() > bestHigh.valueMm() - bestLow.valueMm()) {
                    bestLow = low;
                    bestHigh = high;
                }
                low = null;
            }
        }
        return new Depths.At(whole.place(), bestLow, bestHigh);
    }

    /** Whether the line is inside between this height and the next. */
    private boolean insideAbove(List<Stack> heights, int i) {
        if (i + 1 == heights.size()) {
            return false;
        }
        double middle = (heights.get(i).valueMm() + heights.get(i + 1).valueMm()) / 2;
        double edge = side.at(Stack.constant(middle)).valueMm();
        return way.sign() * (edge - across) > 0;
    }

    /** The ends of the line and every height between at which the side crosses it, ascending. */
    private List<Stack> heights(Depths.At whole) {
        List<Stack> heights = new ArrayList<>();
        double floor = whole.low().valueMm();
        double top = whole.high().valueMm();
        heights.add(whole.low());
        List<Knot> knots = side.knots();
        for (int i = 0; i + 1 < knots.size(); i++) {
            Knot a = knots.get(i);
            Knot b = knots.get(i + 1);
            double from = a.value().valueMm() - across;
            double to = b.value().valueMm() - across;
            if (from * to < 0 || to == 0) {
                Stack height = crossing(a, b);
                double z = height.valueMm();
                if (z > floor && z < top) {
                    heights.add(height);
                }
            }
        }
        heights.add(whole.high());
        return heights;
    }

    private Stack crossing(Knot a, Knot b) {
        Stack run = b.value().minus(a.value());
        if (run.valueMm() == 0) {
            return b.at();
        }
        Stack share = FirstOrder.quotient(Stack.constant(across).minus(a.value()), run);
        return a.at().plus(FirstOrder.product(share, b.at().minus(a.at())));
    }

    /** Where, along an axis, a leaning side meets a surface that is level or slopes along the same axis. */
    static List<Double> meetings(Slope side, Slope surface, Axis axis) {
        List<Double> meetings = new ArrayList<>();
        if (surface.isLevel()) {
            meetings.add(side.at(surface.knots().get(0).value()).valueMm());
            return meetings;
        }
        List<Knot> knots = surface.knots();
        for (int i = 0; surface.along() == axis && i + 1 < knots.size(); i++) {
            for (int j = 0; j + 1 < side.knots().size(); j++) {
                meeting(
                        knots.get(i),
                        knots.get(i + 1),
                        side.knots().get(j),
                        side.knots().get(j + 1),
                        meetings);
            }
        }
        return meetings;
    }

    /** Two straight pieces in the plane of across and up; the side's pieces have them the other way round. */
    private static void meeting(Knot a, Knot b, Knot c, Knot d, List<Double> into) {
        double ux = b.at().valueMm() - a.at().valueMm();
        double uz = b.value().valueMm() - a.value().valueMm();
        double vx = d.value().valueMm() - c.value().valueMm();
        double vz = d.at().valueMm() - c.at().valueMm();
        double turn = ux * vz - uz * vx;
        if (turn != 0) {
            double wx = c.value().valueMm() - a.at().valueMm();
            double wz = c.at().valueMm() - a.value().valueMm();
            double t = (wx * vz - wz * vx) / turn;
            if (t >= 0 && t <= 1) {
                into.add(a.at().valueMm() + t * ux);
            }
        }
    }
}
