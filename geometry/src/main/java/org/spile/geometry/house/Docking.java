package org.spile.geometry.house;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldDock;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Where trailers stand when docked. The first trailer's frame is the site's; another is put by its {@code dock}: face to
 * face with the other trailer's face, that far apart, aside to the left of that face's outward way, its deck that much
 * higher, turned about the joint's middle.
 */
final class Docking {
    private final Map<String, Trailer> trailers;
    private final Names names;
    private final Readings readings;
    private final Troubles troubles;
    private final Map<String, Optional<Rigid>> toSite = new LinkedHashMap<>();

    Docking(Map<String, Trailer> trailers, Names names, Readings readings, Troubles troubles) {
        this.trailers = trailers;
        this.names = names;
        this.readings = readings;
        this.troubles = troubles;
        Set<String> underWay = new LinkedHashSet<>();
        trailers.keySet().forEach(id -> place(id, underWay));
    }

    /** From a trailer's own frame to the site's when everything is docked; nothing if it docks nowhere. */
    Optional<Rigid> toSite(String trailer) {
        return toSite.getOrDefault(trailer, Optional.empty());
    }

    /** The first trailer, whose frame is the site's. */
    String first() {
        return trailers.keySet().iterator().next();
    }

    /** The trailer it docks to, if it does. */
    Optional<String> host(String trailer) {
        return dock(trailer).map(ToldDock::to);
    }

    /** Which way a trailer that docks leaves again, in the site's frame. */
    Optional<Travels.Approach> approach(String trailer) {
        return dock(trailer)
                .flatMap(dock -> toSite(dock.to())
                        .flatMap(host -> Way.outOf(dock.toFace())
                                .map(out -> new Travels.Approach(
                                        trailer,
                                        dock.path(),
                                        dock.to(),
                                        host.nominal().applyDirection(out.unit())))));
    }

    private Optional<ToldDock> dock(String trailer) {
        return Optional.ofNullable(trailers.get(trailer)).flatMap(Trailer::told).flatMap(ToldTrailer::dock);
    }

    private Optional<Rigid> place(String id, Set<String> underWay) {
        Optional<Rigid> known = toSite.get(id);
        if (known != null) {
            return known;
        }
        Optional<Rigid> placed = id.equals(first()) ? Optional.of(Rigid.NONE) : Optional.empty();
        Optional<ToldDock> dock = dock(id);
        if (placed.isEmpty() && dock.isPresent()) {
            if (!trailers.containsKey(dock.get().to())) {
                names.missing(dock.get().path() + ".to", dock.get().to(), trailers.keySet(), "a trailer", troubles);
            } else if (!underWay.add(id)) {
                troubles.wrong(
                        dock.get().path(), "docks to itself, in a circle", "One trailer has to stand by itself.");
            } else {
                Optional<Rigid> host = place(dock.get().to(), underWay);
                placed = host.flatMap(rigid -> docked(id, dock.get()).map(own -> own.then(rigid)));
            }
        }
        if (placed.isEmpty() && dock.isEmpty()) {
            placed = hosting(id);
        }
        toSite.put(id, placed);
        return placed;
    }

    /** The first trailer may itself dock to one that stands by itself. */
    private Optional<Rigid> hosting(String id) {
        return dock(first())
                .filter(dock -> dock.to().equals(id))
                .flatMap(dock -> docked(first(), dock))
                .map(Rigid::inverse);
    }

    /** From its own frame to that of the trailer it docks to. */
    private Optional<Rigid> docked(String id, ToldDock dock) {
        Optional<Way> face = face(dock.face(), dock.path() + ".face");
        Optional<Way> toFace = face(dock.toFace(), dock.path() + ".to");
        if (face.isEmpty() || toFace.isEmpty()) {
            return Optional.empty();
        }
        Vector3D out = toFace.get().unit();
        Vector3D left = Vector3D.Unit.PLUS_Z.cross(out);
        double quarter = Math.toDegrees(angle(out.negate()) - angle(face.get().unit()));
        Spot mine = middle(trailers.get(id), face.get());
        Spot joint = middle(trailers.get(dock.to()), toFace.get())
                .plus(out, readings.of(dock.apart()))
                .plus(left, readings.of(dock.aside()))
                .plus(Vector3D.Unit.PLUS_Z, readings.of(dock.level()));
        Stack turn = readings.of(dock.turn()).plus(Math.rint(quarter));
        return Optional.of(Rigid.shift(mine.times(-1))
                .then(Rigid.turn(Spot.ORIGIN, Vector3D.Unit.PLUS_Z, turn))
                .then(Rigid.shift(joint)));
    }

    private static double angle(Vector3D level) {
        return Math.atan2(level.getY(), level.getX());
    }

    private static Spot middle(Trailer trailer, Way face) {
        Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
        return Spot.ORIGIN
                .with(face.axis(), trailer.edge(face))
                .with(across, trailer.deck().extent(across).middle());
    }

    private Optional<Way> face(String word, String path) {
        Optional<Way> way = Way.outOf(word).filter(w -> w.axis() != Axis.Z);
        if (way.isEmpty()) {
            troubles.wrong(
                    path, "a trailer can't dock by its \"" + word + "\"", "Faces that dock: rear, front, left, right.");
        }
        return way;
    }
}
