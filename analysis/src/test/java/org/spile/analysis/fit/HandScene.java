package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Mouth;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Tie;
import org.spile.geometry.kernel.solid.Move;

/** One stance of a house made by hand; every unit blows forward, along x. */
final class HandScene implements Scene {
    private static final Map<String, Vector3D> FACES = Map.of(
            "front", Vector3D.Unit.PLUS_X,
            "rear", Vector3D.Unit.MINUS_X,
            "left", Vector3D.Unit.PLUS_Y,
            "right", Vector3D.Unit.MINUS_Y,
            "top", Vector3D.Unit.PLUS_Z,
            "bottom", Vector3D.Unit.MINUS_Z);

    private final String stance;
    private final List<Part> parts = new ArrayList<>();
    private final List<CavitySpace> cavities = new ArrayList<>();
    private final List<RoomSpace> rooms = new ArrayList<>();
    private final Map<Set<String>, Tie> ties = new HashMap<>();

    HandScene(String stance) {
        this.stance = stance;
    }

    HandScene put(PartKind kind, String id, String space, Box box) {
        parts.add(box.part(kind, id, space));
        return this;
    }

    HandScene cavity(CavitySpace cavity) {
        cavities.add(cavity);
        return this;
    }

    HandScene room(RoomSpace room) {
        rooms.add(room);
        return this;
    }

    HandScene tie(String one, String other, boolean overlaps) {
        ties.put(Set.of(one, other), new Tie("by hand", overlaps));
        return this;
    }

    /** Puts the parts in another order. */
    void reverse() {
        java.util.Collections.reverse(parts);
    }

    @Override
    public String stance() {
        return stance;
    }

    @Override
    public boolean road() {
        return false;
    }

    @Override
    public List<Part> parts() {
        return parts;
    }

    @Override
    public Optional<Part> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    @Override
    public List<CavitySpace> cavities() {
        return cavities;
    }

    @Override
    public List<RoomSpace> rooms() {
        return rooms;
    }

    @Override
    public List<Mouth> mouths() {
        return List.of();
    }

    @Override
    public List<TrailerPlace> trailers() {
        return List.of(new TrailerPlace("bunk", Move.identity()));
    }

    @Override
    public Optional<Tie> tie(Part one, Part other) {
        return Optional.ofNullable(ties.get(Set.of(one.id(), other.id())));
    }

    @Override
    public Optional<Vector3D> outward(String unit, String face) {
        return Optional.ofNullable(FACES.get(face));
    }
}
