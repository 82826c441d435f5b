package org.spile.analysis.place;

import java.util.IdentityHashMap;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/**
 * A stance's bodies in the frame of the unit's trailer: what stays in its place, what goes with the unit turned as asked and
 * with the middle of the unit's box at the origin.
 */
final class Setting {
    private final Move toTrailer;
    private final Move toOrigin;
    private final IdentityHashMap<Body, Body> fixed = new IdentityHashMap<>();
    private final IdentityHashMap<Body, Body> moving = new IdentityHashMap<>();
    private final Box3 box;

    private Setting(Move toTrailer, Move toOrigin, Box3 box) {
        this.toTrailer = toTrailer;
        this.toOrigin = toOrigin;
        this.box = box;
    }

    /** A stance's bodies; nothing if the unit's trailer is away. */
    static Optional<Setting> of(FreeUnit unit, String path, Scene scene, double yawDeg) {
        Optional<Part> part = scene.part(path);
        return part.map(first -> {
            Move toTrailer = scene.trailers().stream()
                    .filter(place -> place.id().equals(unit.trailer()))
                    .map(place -> place.toSite().inverse())
                    .findFirst()
                    .orElseGet(Move::identity);
            double turnRad = Math.toRadians(yawDeg - unit.yawDeg());
            Move turned = toTrailer.then(Move.turn(turnRad, unit.place()));
            Box3 there = first.body().moved(turned).bounds();
            Move toOrigin = turned.then(Move.shift(there.middle().negate()));
            return new Setting(toTrailer, toOrigin, first.body().moved(toOrigin).bounds());
        });
    }

    Body fixed(Body body) {
        return fixed.computeIfAbsent(body, one -> one.moved(toTrailer));
    }

    Body moving(Body body) {
        return moving.computeIfAbsent(body, one -> one.moved(toOrigin));
    }

    Vector3D toTrailer(Vector3D onSite) {
        return toTrailer.apply(onSite);
    }

    Move toTrailer() {
        return toTrailer;
    }

    /** The box round the unit's first body, as turned, about the origin. */
    Box3 box() {
        return box;
    }
}
