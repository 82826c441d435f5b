package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Places units, each after what it joins or stands on; what sits in a duct is placed with the duct.
 *
 * <p>A unit that joins a spigot has its own axes along those of the unit it joins, its clear inside ending in the spigot's
 * plane, middle to middle; that face of it has no layers.
 */
final class Units {
    private final Map<String, ToldUnit> told;
    private final Spaces spaces;
    private final Carriers carriers;
    private final Names names;
    private final Moved moved;
    private final Readings readings;
    private final Troubles troubles;
    private final Set<String> devices;
    private final Map<String, Optional<UnitPlace>> placed = new LinkedHashMap<>();
    private final Set<String> underWay = new LinkedHashSet<>();

    /**
     * @param devices ids named by a {@code through}
     */
    Units(
            Map<String, ToldUnit> told,
            Set<String> devices,
            Spaces spaces,
            Carriers carriers,
            Names names,
            Moved moved,
            Readings readings,
            Troubles troubles) {
        this.told = told;
        this.devices = devices;
        this.spaces = spaces;
        this.carriers = carriers;
        this.names = names;
        this.moved = moved;
        this.readings = readings;
        this.troubles = troubles;
    }

    /** Every unit that could be placed, in the order of the file. */
    List<UnitPlace> all() {
        List<UnitPlace> all = new ArrayList<>();
        told.keySet().forEach(id -> get(id).ifPresent(all::add));
        return all;
    }

    boolean knows(String id) {
        return told.containsKey(id);
    }

    Set<String> ids() {
        return told.keySet();
    }

    ToldUnit told(String id) {
        return told.get(id);
    }

    /** Whether it has no place of its own but in a duct. */
    boolean inDuct(String id) {
        ToldUnit unit = told.get(id);
        return unit != null
                && devices.contains(id)
                && unit.placed().in().isEmpty()
                && unit.placed().at().isEmpty()
                && unit.joins().isEmpty();
    }

    /** The unit of that id in its place; nothing if it couldn't be placed or sits in a duct. */
    Optional<UnitPlace> get(String id) {
        Optional<UnitPlace> there = placed.get(id);
        if (there != null) {
            return there;
        }
        if (!told.containsKey(id) || inDuct(id)) {
            return Optional.empty();
        }
        if (!underWay.add(id)) {
            troubles.wrong(
                    told.get(id).placed().path(),
                    "is placed by itself, in a circle: " + String.join(", ", underWay),
                    "Give one of them a place with at:.");
            return Optional.empty();
        }
        Optional<UnitPlace> made = made(told.get(id));
        underWay.remove(id);
        placed.put(id, made);
        return made;
    }

    private Optional<UnitPlace> made(ToldUnit unit) {
        Stack within = readings.of(layers(unit, true));
        Stack wrap = readings.of(layers(unit, false));
        UnitFittings fittings = new UnitFittings(readings, troubles);
        if (!unit.joins().isEmpty()) {
            return joined(unit, within, wrap).map(joined -> fittings.fitted(unit, joined.stood(), joined.inner()));
        }
        Optional<Enclosure> in = spaces.of(unit.placed(), true);
        if (in.isEmpty()) {
            return Optional.empty();
        }
        Optional<Unsaid> unsaid = unsaid(unit, in.get());
        return unsaid.flatMap(
                        u -> new Standing(readings, troubles).stand(unit.placed(), in.get(), u, front(unit), wrap))
                .map(stood -> stood.lifted(sag(unit)))
                .map(stood -> fittings.fitted(
                        unit, stood, stood.own().wrapped(within.plus(wrap).times(-1))));
    }

    /** What hangs from a rail goes down with it, with the one that sags most; what stands on it does so by itself. */
    private Stack sag(ToldUnit unit) {
        Stack most = Stack.ZERO;
        for (String carrier : unit.hungFrom()) {
            Stack sag = moved.sag(carrier);
            most = sag.worstLow() < most.worstLow() ? sag : most;
        }
        return most;
    }

    static List<ToldLayer> layers(ToldUnit unit, boolean within) {
        int n = unit.layersWithin();
        return within
                ? unit.layers().subList(0, n)
                : unit.layers().subList(n, unit.layers().size());
    }

    private static Way front(ToldUnit unit) {
        return Way.named(unit.blows()).orElse(Way.FORWARD);
    }

    private Optional<Unsaid> unsaid(ToldUnit unit, Enclosure in) {
        if (!unit.standsOn().isEmpty()) {
            return carriers.top(unit.standsOn(), unit.placed().path() + ".stands-on", this)
                    .map(Unsaid::standsOn);
        }
        for (String carrier : unit.hungFrom()) {
            if (!carrier.equals("top") && !carriers.knows(carrier) && !knows(carrier)) {
                names.missing(
                        unit.placed().path() + ".hung-from",
                        carrier,
                        carriers.ids(),
                        "something to hang from",
                        troubles);
            }
        }
        return Optional.of(hangsOrStands(unit, spaces.cavities().containsKey(in.id()), readings));
    }

    /** Where a unit goes upright that nobody gave a height and nothing carries. */
    static Unsaid hangsOrStands(ToldUnit unit, boolean inCavity, Readings readings) {
        Stack gap = Optional.ofNullable(unit.clearance().get("top"))
                .map(readings::of)
                .orElse(Stack.ZERO);
        return inCavity || !unit.hungFrom().isEmpty() ? Unsaid.hangs(gap) : Unsaid.STANDS;
    }

    private record Joined(Stood stood, Block inner) {}

    private Optional<Joined> joined(ToldUnit unit, Stack within, Stack wrap) {
        Optional<Opening> spigot = spigot(unit);
        if (spigot.isEmpty()) {
            return Optional.empty();
        }
        String path = unit.placed().path();
        if (!unit.placed().at().isEmpty()) {
            troubles.wrong(path + ".at", "it joins " + unit.joins() + ", which places it already", "Leave at: out.");
        }
        ToldSizes sizes = unit.placed().sizes();
        if (sizes.longMm().isEmpty()
                || sizes.wideMm().isEmpty()
                || sizes.highMm().isEmpty()) {
            String word = sizes.longMm().isEmpty() ? "long" : sizes.wideMm().isEmpty() ? "wide" : "high";
            troubles.wrong(path, "has no " + word, "A unit that joins another needs long, wide and high.");
            return Optional.empty();
        }
        Stood host = get(hostOf(unit)).orElseThrow().stood();
        boolean sideways = front(unit).axis() == Axis.Y;
        Stack along = readings.of(sizes.longMm().get()).minus(within.times(2));
        Stack across = readings.of(sizes.wideMm().get()).minus(within.times(2));
        Stack up = readings.of(sizes.highMm().get()).minus(within.times(2));
        Rigid back = host.turn().inverse();
        Spot centre = back.apply(spigot.get().centre());
        Way out = Way.nearest(back.nominal().applyDirection(spigot.get().outward()));
        Block inner = new Block(
                Span.round(centre.x(), sideways ? across : along),
                Span.round(centre.y(), sideways ? along : across),
                Span.round(centre.z(), up));
        inner = inner.with(
                out.axis(), beyond(centre.get(out.axis()), inner.get(out.axis()).size(), out));
        Block outer = inner.wrapped(within.plus(wrap));
        outer = outer.with(out.axis(), openEnd(outer.get(out.axis()), inner.get(out.axis()), out));
        Stood stood =
                new Stood(unit.placed(), host.in(), outer, host.turn(), Optional.empty(), Optional.empty(), List.of());
        return Optional.of(new Joined(stood, inner));
    }

    private static Span beyond(Stack plane, Stack size, Way out) {
        return out.sign() > 0 ? new Span(plane, plane.plus(size)) : new Span(plane.minus(size), plane);
    }

    private static Span openEnd(Span outer, Span inner, Way out) {
        return out.sign() > 0 ? new Span(inner.low(), outer.high()) : new Span(outer.low(), inner.high());
    }

    static String hostOf(ToldUnit unit) {
        return unit.joins().split("\\.", 2)[0];
    }

    private Optional<Opening> spigot(ToldUnit unit) {
        String path = unit.placed().path() + ".joins";
        return opening(unit.joins(), path);
    }

    /** The spigot or port that {@code unit.name} names. */
    Optional<Opening> opening(String name, String path) {
        String[] words = name.split("\\.", 2);
        if (!knows(words[0])) {
            names.missing(path, words[0], ids(), "a unit", troubles);
            return Optional.empty();
        }
        ToldUnit unit = told.get(words[0]);
        Set<String> there = new LinkedHashSet<>(unit.spigots().keySet());
        there.addAll(unit.ports().keySet());
        String wanted = words.length > 1 ? words[1] : "";
        if (!there.contains(wanted)) {
            if (words.length == 1 && there.size() == 1) {
                wanted = there.iterator().next();
            } else {
                troubles.wrong(
                        path,
                        words[0] + " has no spigot or port \"" + wanted + "\"",
                        there.isEmpty() ? "It has none." : "It has: " + String.join(", ", there) + ".");
                return Optional.empty();
            }
        }
        String key = wanted;
        return get(words[0]).flatMap(place -> place.opening(key));
    }

    /** Direction of a face of a unit, in its trailer's frame. */
    Optional<Vector3D> outward(String id, String face) {
        return get(id).flatMap(place -> place.outward(face));
    }
}
