package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.spot.Shape;

/**
 * A part before it is put in a scene: in the frame of its trailer, its movers shut.
 *
 * @param shown what is really there of it, if anything
 * @param mover id of the mover it moves with; empty if it stays
 * @param needs id of another trailer without which it is taken out; empty if none
 */
record Piece(
        String id,
        String thing,
        PartKind kind,
        String title,
        List<String> spaces,
        String trailer,
        Shape shape,
        Optional<Shape> shown,
        String mover,
        String needs) {
    Piece {
        spaces = List.copyOf(spaces);
    }

    /** A piece that stays where it is and is drawn as it is. */
    static Piece of(
            String id, String thing, PartKind kind, String title, List<String> spaces, String trailer, Shape shape) {
        return new Piece(id, thing, kind, title, spaces, trailer, shape, Optional.of(shape), "", "");
    }

    Piece movedBy(String id) {
        return new Piece(this.id, thing, kind, title, spaces, trailer, shape, shown, id, needs);
    }

    /** A piece that comes out when its trailer parts from another. */
    Piece needing(String other) {
        return new Piece(id, thing, kind, title, spaces, trailer, shape, shown, mover, other);
    }
}
