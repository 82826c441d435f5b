package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldUnit;

/**
 * A unit in its place.
 *
 * @param stood its body with its layers
 * @param inner the clear inside of its box, along its own axes; the body where it has no layers
 * @param service its rooms for service, along its own axes, by purpose
 * @param openings its spigots and ports by name
 */
record UnitPlace(ToldUnit told, Stood stood, Block inner, Map<String, Block> service, Map<String, Opening> openings) {
    UnitPlace {
        service = new LinkedHashMap<>(service);
        openings = new LinkedHashMap<>(openings);
    }

    String id() {
        return told.placed().id();
    }

    String path() {
        return told.placed().path();
    }

    String title() {
        return told.placed().title();
    }

    String trailer() {
        return stood.in().trailer();
    }

    Optional<Opening> opening(String name) {
        return Optional.ofNullable(openings.get(name));
    }

    /** The way a face of that word looks out, in the trailer's frame. */
    Optional<Vector3D> outward(String face) {
        return Way.outOf(face).map(stood::toTrailer);
    }

    List<Piece> pieces(List<String> spaces) {
        List<Piece> pieces = new ArrayList<>();
        var shapes = stood.shapes();
        for (int i = 0; i < shapes.size(); i++) {
            String id = i == 0 ? path() : path() + ".bodies[" + i + "]";
            String title = i == 0 ? title() : title() + ", body " + (i + 1);
            pieces.add(Piece.of(id, path(), PartKind.UNIT, title, spaces, trailer(), shapes.get(i)));
        }
        service.forEach((purpose, block) -> pieces.add(Piece.of(
                path() + ".service." + purpose,
                path(),
                PartKind.SERVICE,
                purpose + " room of " + title(),
                spaces,
                trailer(),
                block.shape().moved(stood.turn()))));
        return pieces;
    }
}
