package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldMover;
import org.spile.geometry.house.told.ToldOpening;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Places movers and the leaves of hinged and sliding openings. */
final class Movers {
    /** Thickness of a leaf that doesn't say its own (mm): common practice, no source. */
    static final double LEAF_MM = 40;

    private final Map<String, MoverPlace> places = new LinkedHashMap<>();
    private final Map<String, ToldOpening> openings = new LinkedHashMap<>();
    private final Spaces spaces;
    private final Names names;
    private final Readings readings;
    private final Troubles troubles;

    Movers(ToldHouse told, Spaces spaces, Names names, Readings readings, Troubles troubles) {
        this.spaces = spaces;
        this.names = names;
        this.readings = readings;
        this.troubles = troubles;
        for (ToldRoom room : told.rooms().values()) {
            room.openings().values().forEach(opening -> leaf(room, opening));
        }
        told.movers().values().forEach(this::mover);
        told.movers().values().forEach(mover -> rides(mover, told));
    }

    Map<String, MoverPlace> places() {
        return places;
    }

    /** The opening whose leaf that is, if it is one. */
    Optional<ToldOpening> opening(String id) {
        return Optional.ofNullable(openings.get(id));
    }

    private void mover(ToldMover told) {
        Optional<Stood> stood = spaces.of(told.placed(), false)
                .flatMap(in -> new Standing(readings, troubles).stand(told.placed(), in, Unsaid.STANDS));
        if (stood.isEmpty()) {
            return;
        }
        new Motions(readings, troubles)
                .of(told.placed().path(), stood.get().own(), told.slides(), told.hinge(), setIn(told))
                .ifPresent(motion -> places.put(
                        told.placed().id(),
                        new MoverPlace(told.placed().id(), told.placed().path(), stood.get(), motion, told.rides())));
    }

    /** Whether it lies in a surface: outwards from it, with nothing between. */
    private boolean setIn(ToldMover told) {
        return told.placed().at().stream()
                .anyMatch(distance ->
                        distance.out() && readings.now(distance.near()).value() == 0);
    }

    private void leaf(ToldRoom room, ToldOpening told) {
        if (told.hinge().isEmpty() && told.slides().isEmpty()) {
            return;
        }
        Optional<Enclosure> in = spaces.made(room.placed().id());
        if (in.isEmpty()) {
            return;
        }
        String path = told.placed().path();
        Optional<Axis> square = in.get().face(told.face()).map(Surface::axis);
        Optional<Reading> thick = square.flatMap(axis -> switch (axis) {
            case X -> told.placed().sizes().longMm();
            case Y -> told.placed().sizes().wideMm();
            case Z -> told.placed().sizes().highMm();
        });
        String key = square.map(Axis::size).orElse("wide");
        Stack out = readings.of(thick.orElseGet(() -> Reading.byDefault(path + "." + key, Kind.LENGTH, LEAF_MM)));
        OnFace.Wish wish = new OnFace.Wish(
                path,
                told.face(),
                out,
                true,
                true,
                told.placed().sizes(),
                told.placed().at(),
                in.get(),
                Unsaid.STANDS);
        Optional<Block> block = new OnFace(readings, troubles).block(wish);
        if (block.isEmpty()) {
            return;
        }
        Block leaf = raised(block.get(), told);
        Stood stood =
                new Stood(told.placed(), in.get(), leaf, Rigid.NONE, Optional.empty(), Optional.empty(), List.of());
        new Motions(readings, troubles)
                .of(path, leaf, told.slides().map(List::of).orElse(List.of()), told.hinge(), true)
                .ifPresent(motion -> {
                    openings.put(told.placed().id(), told);
                    places.put(told.placed().id(), new MoverPlace(told.placed().id(), path, stood, motion, ""));
                });
    }

    /** An undercut takes the leaf off the floor. */
    private Block raised(Block leaf, ToldOpening told) {
        return told.undercut()
                .map(gap -> leaf.with(
                        Axis.Z,
                        new Span(leaf.z().low().plus(readings.of(gap)), leaf.z().high())))
                .orElse(leaf);
    }

    private void rides(ToldMover told, ToldHouse house) {
        if (told.rides().isEmpty()) {
            return;
        }
        if (!house.movers().containsKey(told.rides()) && !places.containsKey(told.rides())) {
            names.missing(
                    told.placed().path() + ".rides",
                    told.rides(),
                    house.movers().keySet(),
                    "a mover",
                    troubles);
            return;
        }
        Set<String> chain = new LinkedHashSet<>();
        String at = told.placed().id();
        while (!at.isEmpty()) {
            if (!chain.add(at)) {
                troubles.wrong(
                        told.placed().path() + ".rides",
                        "rides itself, in a circle: " + String.join(", ", chain),
                        "One of them has to ride nothing.");
                return;
            }
            ToldMover next = house.movers().get(at);
            at = next == null ? "" : next.rides();
        }
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (MoverPlace place : places.values()) {
            Stood stood = place.stood();
            var shapes = stood.shapes();
            for (int i = 0; i < shapes.size(); i++) {
                String id = i == 0 ? place.path() : place.path() + ".bodies[" + i + "]";
                pieces.add(Piece.of(
                                id,
                                place.path(),
                                PartKind.MOVER,
                                stood.placed().title(),
                                stood.in().spaces(),
                                stood.in().trailer(),
                                shapes.get(i))
                        .movedBy(place.id()));
            }
        }
        return pieces;
    }

    /** The way out of the room's face an opening is in. */
    Optional<Way> face(MoverPlace place) {
        return opening(place.id())
                .flatMap(told -> place.stood().in().face(told.face()))
                .map(Surface::outward);
    }
}
