package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Cavity.Lined;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Makes one cavity: its plan, the surfaces below and above it, its sides and all their linings. */
final class CavityMaker {
    private final Readings readings;
    private final Troubles troubles;
    private final ToldCavity told;
    private final Trailer trailer;
    private final Optional<Room> room;
    private final Optional<Room> over;
    private final Enclosure in;

    /**
     * @param room whose finished floor heights count from, if it is over or in one
     * @param over the room it lies over, if any
     * @param in what its place is measured in
     */
    CavityMaker(
            Readings readings,
            Troubles troubles,
            ToldCavity told,
            Trailer trailer,
            Optional<Room> room,
            Optional<Room> over,
            Enclosure in) {
        this.readings = readings;
        this.troubles = troubles;
        this.told = told;
        this.trailer = trailer;
        this.room = room;
        this.over = over;
        this.in = in;
    }

    Optional<Cavity> cavity() {
        Optional<Plan> plan =
                wholeRoom() ? over.map(Room::plan) : new PlanPlacing(readings, troubles).plan(told.placed(), in);
        if (plan.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Surface> faces = Room.sides(plan.get());
        Optional<Limits> limits = limits(faces);
        if (limits.isEmpty()) {
            return Optional.empty();
        }
        Map<Way, Lined> leaning = leaning(plan.get(), faces);
        Slope bottom = limits.get().lower();
        Slope top = limits.get().upper();
        Lined lower = new Lined(bottom, offset(bottom, plan.get(), linings(told.below()), 1));
        Lined upper = new Lined(top, offset(top, plan.get(), linings(told.top()), -1));
        Cavity cavity =
                new Cavity(told, trailer, over, plan.get(), clear(plan.get(), leaning.keySet()), lower, upper, leaning);
        return open(cavity) ? Optional.of(cavity) : Optional.empty();
    }

    private boolean wholeRoom() {
        return over.isPresent()
                && told.placed().at().isEmpty()
                && told.placed().sizes().longMm().isEmpty()
                && told.placed().sizes().wideMm().isEmpty()
                && told.placed().sizes().outline().isEmpty();
    }

    /** The surfaces below and above, as measured. */
    private record Limits(Slope lower, Slope upper) {}

    private Optional<Limits> limits(Map<String, Surface> faces) {
        Stack base = room.map(Room::floor).orElse(Stack.ZERO);
        SurfaceReader reader = new SurfaceReader(readings, troubles);
        Stack drop = readings.of(told.below()
                .flatMap(ToldSurface::drop)
                .orElseGet(() -> Reading.byDefault(told.placed().path() + ".ceiling.drop", Kind.LENGTH, 0)));
        Optional<Slope> below = told.below().flatMap(surface -> reader.upright(surface, faces, base));
        Optional<Slope> above = told.top().flatMap(surface -> reader.upright(surface, faces, base));
        Optional<Stack> high = told.placed().sizes().highMm().map(readings::of);
        Optional<Slope> ceiling = room.flatMap(Room::upper).or(trailer::under);
        if (saysHeight()) {
            return placedUpright(high, drop);
        }
        Optional<Slope> lower =
                below.or(() -> inferredBelow(base, above, high, ceiling).map(slope -> slope.plus(drop.times(-1))));
        Optional<Slope> upper = above.or(() -> inferredAbove(below, base, high, ceiling));
        if (upper.isEmpty()) {
            troubles.wrong(
                    told.placed().path(),
                    "nothing says how high it is: there is no high, no top and no roof",
                    "Write high:.");
        }
        return lower.flatMap(low -> upper.map(up -> new Limits(low, up)));
    }

    private boolean saysHeight() {
        return told.placed().at().stream()
                .anyMatch(d -> d.face().equals("z")
                        || in.face(d.face())
                                .filter(face -> face.axis() == Axis.Z)
                                .isPresent());
    }

    private Optional<Limits> placedUpright(Optional<Stack> high, Stack drop) {
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        told.placed().sizes().longMm().ifPresent(size -> sizes.put(Axis.X, readings.of(size)));
        told.placed().sizes().wideMm().ifPresent(size -> sizes.put(Axis.Y, readings.of(size)));
        high.ifPresent(size -> sizes.put(Axis.Z, size));
        Asked asked = new Asked(
                told.placed().path(), told.placed().at(), sizes, Set.of(), Asked.ownWords(), in, Asked.Unsaid.CENTRED);
        return new Placing(readings, troubles)
                .block(asked)
                .map(box -> new Limits(
                        Slope.level(box.z().low().minus(drop)),
                        Slope.level(box.z().high())));
    }

    private Optional<Slope> inferredBelow(
            Stack base, Optional<Slope> above, Optional<Stack> high, Optional<Slope> ceiling) {
        if (high.isPresent() && above.isPresent()) {
            return above.map(slope -> slope.plus(high.get().times(-1)));
        }
        if (high.isPresent() && over.isPresent() && ceiling.isPresent()) {
            return ceiling.map(slope -> slope.plus(high.get().times(-1)));
        }
        if (over.isPresent()
                && over.get().told().ceiling().isPresent()
                && trailer.under().isPresent()) {
            return over.get().upper();
        }
        return Optional.of(Slope.level(base));
    }

    private Optional<Slope> inferredAbove(
            Optional<Slope> below, Stack base, Optional<Stack> high, Optional<Slope> ceiling) {
        if (high.isPresent() && below.isPresent()) {
            return below.map(slope -> slope.plus(high.get()));
        }
        if (high.isPresent() && (over.isEmpty() || ceiling.isEmpty())) {
            return Optional.of(Slope.level(base.plus(high.get())));
        }
        boolean aboveItsCeiling = over.isPresent()
                && below.isEmpty()
                && high.isEmpty()
                && over.get().told().ceiling().isPresent()
                && trailer.under().isPresent();
        return aboveItsCeiling ? trailer.under() : ceiling;
    }

    private Map<Way, Lined> leaning(Plan plan, Map<String, Surface> faces) {
        Map<Way, Lined> leaning = new EnumMap<>(Way.class);
        Stack base = room.map(Room::floor).orElse(Stack.ZERO);
        for (Way way : List.of(Way.LEFT, Way.RIGHT, Way.AFT, Way.FORWARD)) {
            ToldSurface side = told.sides().get(way.face());
            Optional<Slope> bare = side == null
                    ? Optional.empty()
                    : new SurfaceReader(readings, troubles).side(side, way, faces, base);
            if (bare.isPresent() && !plan.isRectangle()) {
                troubles.wrong(
                        side.path(),
                        "a side with a profile needs a plan with four square corners",
                        "Split the cavity, or leave the outline out.");
            } else if (bare.isPresent()) {
                Stack lining = readings.of(side.linings());
                leaning.put(way, new Lined(bare.get(), bare.get().offset(lining, -way.sign())));
            }
        }
        return leaning;
    }

    private Plan clear(Plan plan, Set<Way> leaning) {
        Set<Way> plumb = EnumSet.allOf(Way.class);
        plumb.removeAll(leaning);
        List<Stack> by = new ArrayList<>();
        for (Plan.Side side : plan.sides()) {
            ToldSurface surface = told.sides().get(side.way().face());
            boolean lined = surface != null && plumb.contains(side.way());
            by.add(lined ? readings.of(surface.linings()) : Stack.ZERO);
        }
        return by.stream().allMatch(Stack.ZERO::equals) ? plan : plan.inset(by);
    }

    private static List<ToldLayer> linings(Optional<ToldSurface> surface) {
        return surface.map(ToldSurface::linings).orElse(List.of());
    }

    private Slope offset(Slope bare, Plan plan, List<ToldLayer> linings, int sign) {
        Span over = plan.extent(bare.isLevel() ? Axis.X : bare.along());
        return (bare.isLevel() ? bare : bare.over(over)).offset(readings.of(linings), sign);
    }

    /** Something must be left between the linings somewhere. */
    private boolean open(Cavity cavity) {
        Stack most = Depths.of(cavity).most(cavity.clear());
        if (most.valueMm() > 0) {
            return true;
        }
        troubles.wrong(
                cavity.path(),
                "its surfaces and linings leave " + AxisPlacing.number(most.valueMm()) + " between them",
                "Check the heights it is measured by.");
        return false;
    }
}
