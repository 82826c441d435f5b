package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.kernel.clearance.GlidePlane;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/**
 * How high a unit comes to stand wherever it is put, by the same rule that places it.
 *
 * <p>Under a level surface that is one height. Under one with a fall the height follows the nearest place of the surface over
 * the unit's box, which is a plane wherever that place slides along one piece of the surface; it breaks where an edge of the
 * box passes a corner of the surface, or where the nearest place jumps from one edge of the box to the other. The first are
 * known beforehand, the second are where the planes on either side meet.
 */
final class RestingHeights {
    /** Heights that agree within this lie on one plane (mm). */
    private static final double SAME_MM = 1e-6;

    /** Places narrower than this aren't told apart (mm). */
    private static final double NARROW_MM = 1e-5;

    private final UnitPlace unit;
    private final Unsaid unsaid;
    private final Readings readings;

    RestingHeights(UnitPlace unit, Unsaid unsaid, Readings readings) {
        this.unit = unit;
        this.unsaid = unsaid;
        this.readings = readings;
    }

    Optional<List<RestingPlace>> over(
            double minX, double minY, double maxX, double maxY, double alongXMm, double alongYMm) {
        List<Double> xs = breaks(Axis.X, minX, maxX, alongXMm);
        List<Double> ys = breaks(Axis.Y, minY, maxY, alongYMm);
        Over over = new Over(alongXMm, alongYMm);
        List<RestingPlace> places = new ArrayList<>();
        for (int i = 0; i + 1 < xs.size(); i++) {
            for (int j = 0; j + 1 < ys.size(); j++) {
                if (!over.cell(xs.get(i), ys.get(j), xs.get(i + 1), ys.get(j + 1), places)) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(places);
    }

    /** Where an edge of the box passes a corner of a surface or the rim of a patch. */
    private List<Double> breaks(Axis axis, double from, double to, double sizeMm) {
        Set<Double> breaks = new TreeSet<>();
        for (Surface surface : surfaces()) {
            corners(surface.at(), axis, breaks);
            for (Surface.Patch patch : surface.patches()) {
                Span span = axis == Axis.X ? patch.x() : patch.y();
                breaks.add(span.low().valueMm());
                breaks.add(span.high().valueMm());
                corners(patch.at(), axis, breaks);
            }
        }
        List<Double> all = new ArrayList<>(List.of(from));
        Set<Double> moved = new TreeSet<>();
        for (double at : breaks) {
            moved.add(at - sizeMm / 2);
            moved.add(at + sizeMm / 2);
        }
        for (double at : moved) {
            if (at > all.get(all.size() - 1) + NARROW_MM && at < to - NARROW_MM) {
                all.add(at);
            }
        }
        all.add(to);
        return all;
    }

    private static void corners(Slope slope, Axis axis, Set<Double> into) {
        if (!slope.isLevel() && slope.along() == axis) {
            slope.knots().forEach(knot -> into.add(knot.at().valueMm()));
        }
    }

    /** What its height is measured from. */
    private List<Surface> surfaces() {
        Enclosure in = unit.stood().in();
        List<Surface> surfaces = new ArrayList<>();
        for (FaceDistance distance : upright()) {
            in.face(distance.face()).filter(face -> face.axis() == Axis.Z).ifPresent(surfaces::add);
        }
        if (surfaces.isEmpty()) {
            (unsaid.upright() == Asked.Upright.HANGS ? in.hanging() : in.resting()).ifPresent(surfaces::add);
        }
        return surfaces;
    }

    private List<FaceDistance> upright() {
        return unit.told().placed().at().stream()
                .filter(Freed.upright(unit.stood().in()))
                .toList();
    }

    /** A box of one extent, put over the plan. */
    private final class Over {
        private final double alongXMm;
        private final double alongYMm;

        Over(double alongXMm, double alongYMm) {
            this.alongXMm = alongXMm;
            this.alongYMm = alongYMm;
        }

        /** Splits a cell further where planes meet; false if some height isn't known. */
        boolean cell(double x0, double y0, double x1, double y1, List<RestingPlace> into) {
            List<Double> xs = new ArrayList<>(List.of(x0));
            List<Double> ys = new ArrayList<>(List.of(y0));
            boolean known = meetings(x -> height(x, (y0 + y1) / 2), x0, x1, xs);
            known &= meetings(y -> height((x0 + x1) / 2, y), y0, y1, ys);
            for (int i = 0; known && i + 1 < xs.size(); i++) {
                for (int j = 0; known && j + 1 < ys.size(); j++) {
                    Optional<GlidePlane> plane = plane(xs.get(i), ys.get(j), xs.get(i + 1), ys.get(j + 1));
                    known = plane.isPresent();
                    if (known) {
                        into.add(new RestingPlace(
                                Outline.rectangle(xs.get(i), ys.get(j), xs.get(i + 1), ys.get(j + 1)), plane.get()));
                    }
                }
            }
            return known;
        }

        /** The ends of straight pieces after the start, the end among them. */
        private boolean meetings(DoubleUnaryOperator height, double from, double to, List<Double> into) {
            double inset = Math.min(1e-3, (to - from) / 8);
            double a = from + inset;
            double b = to - inset;
            double atA = height.applyAsDouble(a);
            double atB = height.applyAsDouble(b);
            double off = height.applyAsDouble((a + b) / 2) - (atA + atB) / 2;
            double offQuarter = height.applyAsDouble(a + (b - a) / 4) - (3 * atA + atB) / 4;
            if (Double.isNaN(off) || Double.isNaN(offQuarter)) {
                return false;
            }
            boolean straight = Math.abs(off) < SAME_MM && Math.abs(offQuarter) < SAME_MM;
            if (straight || to - from < 8 * NARROW_MM) {
                into.add(to);
                return true;
            }
            double step = inset / 2;
            double riseA = (height.applyAsDouble(a + step) - atA) / step;
            double riseB = (atB - height.applyAsDouble(b - step)) / step;
            double met =
                    Math.abs(riseA - riseB) < 1e-9 ? Double.NaN : (atB - atA + riseA * a - riseB * b) / (riseA - riseB);
            double at = met > from + NARROW_MM && met < to - NARROW_MM ? met : (from + to) / 2;
            return meetings(height, from, at, into) && meetings(height, at, to, into);
        }

        private Optional<GlidePlane> plane(double x0, double y0, double x1, double y1) {
            double x = (x0 + x1) / 2;
            double y = (y0 + y1) / 2;
            double dx = (x1 - x0) / 4;
            double dy = (y1 - y0) / 4;
            double middle = height(x, y);
            double perX = level((height(x + dx, y) - height(x - dx, y)) / (2 * dx));
            double perY = level((height(x, y + dy) - height(x, y - dy)) / (2 * dy));
            double off = height(x + dx, y + dy) - (middle + perX * dx + perY * dy);
            boolean flat = Math.abs(off) < SAME_MM && Math.abs(perX) <= 10 && Math.abs(perY) <= 10;
            return flat ? Optional.of(new GlidePlane(middle - perX * x - perY * y, perX, perY)) : Optional.empty();
        }

        /** What is only arithmetic is no slope. */
        private static double level(double rise) {
            return Math.abs(rise) < 1e-10 ? 0 : rise;
        }

        /** The height of the middle of its box; NaN if it isn't known. */
        private double height(double x, double y) {
            return middle(x, y).orElse(Double.NaN);
        }

        private OptionalDouble middle(double x, double y) {
            Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
            sizes.put(Axis.X, Stack.constant(alongXMm));
            sizes.put(Axis.Y, Stack.constant(alongYMm));
            sizes.put(Axis.Z, unit.stood().own().z().size());
            List<FaceDistance> at = new ArrayList<>(upright());
            String path = unit.path();
            Map<Axis, Span> known = new EnumMap<>(Axis.class);
            known.put(Axis.X, Span.round(Stack.constant(x), sizes.get(Axis.X)));
            known.put(Axis.Y, Span.round(Stack.constant(y), sizes.get(Axis.Y)));
            Enclosure in = unit.stood().in();
            Asked asked = new Asked(path, at, sizes, round(), Asked.ownWords(), in, unsaid);
            Troubles troubles = new Troubles(Map.of());
            return new AxisPlacing(readings, troubles, asked, Axis.Z, known)
                    .span()
                    .map(span -> OptionalDouble.of(span.middle().valueMm()))
                    .orElse(OptionalDouble.empty());
        }

        /** A round thing that lies is measured upright to its middle. */
        private Set<Axis> round() {
            Optional<Axis> rod = Standing.rod(unit.told().placed().sizes());
            return rod.isPresent() && rod.get() != Axis.Z ? EnumSet.of(Axis.Z) : EnumSet.noneOf(Axis.class);
        }
    }
}
