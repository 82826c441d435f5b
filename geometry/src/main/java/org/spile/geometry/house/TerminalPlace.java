package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.told.ToldTerminal;

/**
 * A terminal in its place.
 *
 * @param in what it is placed in
 * @param opening where its run ends
 * @param body the room it takes, if it takes any
 */
record TerminalPlace(ToldTerminal told, Enclosure in, Opening opening, Optional<Shape> body) {
    String path() {
        return told.placed().path();
    }

    Optional<Piece> piece(List<String> spaces) {
        return body.map(shape ->
                Piece.of(path(), path(), PartKind.TERMINAL, told.placed().title(), spaces, in.trailer(), shape));
    }
}
