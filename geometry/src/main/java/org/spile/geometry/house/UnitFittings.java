package org.spile.geometry.house;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldService;
import org.spile.geometry.house.told.ToldSpigot;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.measure.Stack;

/** Puts a unit's spigots, ports and rooms for service on the faces of its body. */
final class UnitFittings {
    private final Readings readings;
    private final OnFace onFace;

    UnitFittings(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.onFace = new OnFace(readings, troubles);
    }

    /** The unit with everything on its faces; spigots lie in the faces of its clear inside, as its runs end there. */
    UnitPlace fitted(ToldUnit told, Stood stood, Block inner) {
        Enclosure within = Enclosure.body(told.placed().id(), stood.in().trailer(), inner.x(), inner.y(), inner.z());
        Map<String, Opening> openings = new LinkedHashMap<>();
        told.spigots()
                .forEach((name, spigot) ->
                        opening(told, stood, within, spigot, true).ifPresent(o -> openings.put(name, o)));
        told.ports()
                .forEach((name, port) ->
                        opening(told, stood, stood.faces(), port, false).ifPresent(o -> openings.put(name, o)));
        Map<String, Block> service = new LinkedHashMap<>();
        told.service()
                .forEach((purpose, room) ->
                        service(room, stood.faces()).ifPresent(block -> service.put(purpose, block)));
        return new UnitPlace(told, stood, inner, service, openings);
    }

    private Optional<Opening> opening(ToldUnit told, Stood stood, Enclosure in, ToldSpigot spigot, boolean fills) {
        OnFace.Wish wish = new OnFace.Wish(
                spigot.path(), spigot.face(), Stack.ZERO, true, fills, spigot.sizes(), spigot.at(), in, Unsaid.CENTRED);
        return onFace.block(wish).map(block -> {
            Way face = in.face(spigot.face()).orElseThrow().outward();
            Axis wide = OnFace.wide(face);
            Axis high = Slabs.third(face.axis(), wide);
            return new Opening(
                    spigot.path(),
                    told.placed().path(),
                    spigot.id() + " of " + told.placed().title(),
                    stood.in().trailer(),
                    stood.turn().apply(block.middle()),
                    stood.toTrailer(face),
                    stood.toTrailer(Way.of(wide, 1)),
                    sized(block.get(wide).size()),
                    sized(block.get(high).size()),
                    spigot.sizes().roundMm().isPresent());
        });
    }

    static Optional<Stack> sized(Stack size) {
        return size.valueMm() > 0 ? Optional.of(size) : Optional.empty();
    }

    private Optional<Block> service(ToldService room, Enclosure faces) {
        return onFace.block(new OnFace.Wish(
                room.path(),
                room.face(),
                readings.of(room.out()),
                true,
                true,
                room.sizes(),
                room.at(),
                faces,
                Unsaid.CENTRED));
    }
}
