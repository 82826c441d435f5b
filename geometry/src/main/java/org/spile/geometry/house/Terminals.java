package org.spile.geometry.house;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Places terminals: on a face of what they are in, or, without a face, standing in it with the duct on top; filters, flaps
 * and dampers that a {@code through} names sit in their duct and take no room of their own.
 */
final class Terminals {
    private final Map<String, TerminalPlace> places = new LinkedHashMap<>();
    private final Map<String, ToldTerminal> told;
    private final Spaces spaces;
    private final Readings readings;
    private final Troubles troubles;

    Terminals(
            Map<String, ToldTerminal> told, Set<String> devices, Spaces spaces, Readings readings, Troubles troubles) {
        this.told = told;
        this.spaces = spaces;
        this.readings = readings;
        this.troubles = troubles;
        for (ToldTerminal terminal : told.values()) {
            boolean unplaced = terminal.face().isEmpty()
                    && terminal.placed().at().isEmpty()
                    && terminal.placed().in().isEmpty();
            if (!unplaced) {
                spaces.of(terminal.placed(), false)
                        .flatMap(in -> place(terminal, in))
                        .ifPresent(place -> places.put(terminal.placed().id(), place));
            } else if (!devices.contains(terminal.placed().id())) {
                troubles.wrong(
                        terminal.placed().path(),
                        "has no place and no run names it in a through",
                        "Write face: and at:, or name it in the leg it sits in.");
            }
        }
    }

    Map<String, TerminalPlace> places() {
        return places;
    }

    boolean knows(String id) {
        return told.containsKey(id);
    }

    Set<String> ids() {
        return told.keySet();
    }

    private Optional<TerminalPlace> place(ToldTerminal terminal, Enclosure in) {
        return terminal.face().isEmpty() ? standing(terminal, in) : onFace(terminal, in);
    }

    private Optional<TerminalPlace> onFace(ToldTerminal terminal, Enclosure in) {
        boolean weather = spaces.trailers().containsKey(in.id());
        Optional<Block> flat = block(terminal, in, weather, Stack.ZERO);
        if (flat.isEmpty()) {
            return Optional.empty();
        }
        Way face = in.face(terminal.face()).orElseThrow().outward();
        boolean room = spaces.rooms().containsKey(in.id());
        Vector3D intoDuct = room ? face.unit() : face.opposite().unit();
        Axis wide = OnFace.wide(face);
        Axis high = Slabs.third(face.axis(), wide);
        boolean round = terminal.placed().sizes().roundMm().isPresent();
        Opening opening = opening(
                terminal,
                in,
                flat.get().middle(),
                intoDuct,
                wide.unit(),
                flat.get().get(wide).size(),
                flat.get().get(high).size(),
                round);
        Optional<Shape> body = terminal.out()
                .map(readings::of)
                .filter(out -> out.valueMm() > 0)
                .flatMap(out -> block(terminal, in, weather, out))
                .map(block -> round ? Stood.rod(block, face.axis()) : block.shape());
        return Optional.of(new TerminalPlace(terminal, in, opening, body));
    }

    private Optional<Block> block(ToldTerminal terminal, Enclosure in, boolean weather, Stack out) {
        return new OnFace(readings, troubles)
                .block(new OnFace.Wish(
                        terminal.placed().path(),
                        terminal.face(),
                        out,
                        weather,
                        false,
                        terminal.placed().sizes(),
                        terminal.placed().at(),
                        in,
                        Unsaid.CENTRED));
    }

    /** A hood: its duct leaves upwards from its top. */
    private Optional<TerminalPlace> standing(ToldTerminal terminal, Enclosure in) {
        ToldSizes sizes = terminal.placed().sizes();
        Map<Axis, Stack> known = new EnumMap<>(Axis.class);
        Set<Axis> round = EnumSet.noneOf(Axis.class);
        sizes.longMm().ifPresent(size -> known.put(Axis.X, readings.of(size)));
        sizes.wideMm().ifPresent(size -> known.put(Axis.Y, readings.of(size)));
        sizes.roundMm().map(readings::of).ifPresent(size -> {
            known.putIfAbsent(Axis.X, size);
            known.putIfAbsent(Axis.Y, size);
            round.addAll(EnumSet.of(Axis.X, Axis.Y));
        });
        known.put(Axis.Z, sizes.highMm().map(readings::of).orElse(Stack.ZERO));
        Asked asked = new Asked(
                terminal.placed().path(), terminal.placed().at(), known, round, Asked.ownWords(), in, Unsaid.STANDS);
        return new Placing(readings, troubles).block(asked).map(block -> {
            Spot top = block.middle().with(Axis.Z, block.z().high());
            Opening opening = opening(
                    terminal,
                    in,
                    top,
                    Vector3D.Unit.PLUS_Z,
                    Axis.Y.unit(),
                    block.y().size(),
                    block.x().size(),
                    !round.isEmpty());
            boolean body = sizes.highMm().isPresent() && block.z().positive();
            return new TerminalPlace(
                    terminal,
                    in,
                    opening,
                    body ? Optional.of(round.isEmpty() ? block.shape() : Stood.rod(block, Axis.Z)) : Optional.empty());
        });
    }

    private static Opening opening(
            ToldTerminal terminal,
            Enclosure in,
            Spot centre,
            Vector3D intoDuct,
            Vector3D side,
            Stack wide,
            Stack high,
            boolean round) {
        return new Opening(
                terminal.placed().path(),
                terminal.placed().path(),
                terminal.placed().title(),
                in.trailer(),
                centre,
                intoDuct,
                side,
                UnitFittings.sized(wide),
                UnitFittings.sized(high),
                round);
    }
}
