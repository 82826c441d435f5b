package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Give;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldMover;
import org.spile.geometry.house.told.ToldUnit;

/** Finds out which parts owe each other nothing; the rule stands at {@link Ties}. */
final class TieMaker {
    private static final double SET_AGAINST_MM = 1e-6;

    private final Ties ties = new Ties();
    private final Readings readings;
    private final Names names;
    private final List<Piece> pieces;

    /**
     * @param pieces every piece of the house
     */
    TieMaker(Readings readings, Names names, List<Piece> pieces) {
        this.readings = readings;
        this.names = names;
        this.pieces = pieces;
    }

    Ties ties() {
        return ties;
    }

    private List<Piece> built(String trailer) {
        return pieces.stream()
                .filter(piece -> piece.trailer().equals(trailer))
                .filter(piece -> piece.kind() == PartKind.LINING || piece.kind() == PartKind.SHELL)
                .toList();
    }

    /** What carries a unit, and what it joins. */
    void unit(ToldUnit unit) {
        String path = unit.placed().path();
        for (String carrier : unit.hungFrom()) {
            if (!carrier.equals("top")) {
                ties.things(path, names.path(carrier), "carries it", false);
            }
        }
        unit.standsOn().forEach(carrier -> ties.things(path, names.path(carrier), "carries it", false));
        if (!unit.joins().isEmpty()) {
            ties.things(path, names.path(Units.hostOf(unit)), "joined at " + unit.joins(), false);
        }
    }

    void rides(ToldMover mover) {
        if (!mover.rides().isEmpty()) {
            ties.things(mover.placed().path(), names.path(mover.rides()), "carries it", false);
        }
    }

    /** A thing set against a surface with 0: it may touch it, and goes through the lining in front of it. */
    void setAgainst(Stood stood) {
        for (FaceDistance distance : stood.placed().at()) {
            Optional<Surface> face = stood.in().face(distance.face());
            if (face.isEmpty() || Math.abs(readings.now(distance.near()).value()) > SET_AGAINST_MM) {
                continue;
            }
            Way out = face.get().outward();
            for (Piece piece : built(stood.in().trailer())) {
                if (piece.kind() == PartKind.LINING) {
                    lining(stood, distance, piece, out);
                } else if (looks(piece, out)) {
                    ties.parts(stood.placed().path(), piece.id(), "fixed to it", false);
                }
            }
        }
    }

    private void lining(Stood stood, FaceDistance distance, Piece piece, Way out) {
        boolean own = piece.id().equals("cavities." + stood.in().id() + "." + distance.face());
        boolean ceiling = out == Way.UP
                && distance.face().equals("ceiling")
                && piece.spaces().contains(stood.in().id());
        if (own || ceiling) {
            boolean cutsIn = distance.out() || piece.shown().isPresent();
            ties.parts(
                    stood.placed().path(),
                    piece.id(),
                    cutsIn && (own || distance.out()) ? "set into it" : "fixed to it",
                    cutsIn && (own || distance.out()));
        }
    }

    private static boolean looks(Piece shell, Way out) {
        return shell.id().endsWith(".walls." + out.face())
                || (shell.id().endsWith(".roof") && out == Way.UP)
                || (shell.id().endsWith(".floor") && out == Way.DOWN);
    }

    /** A leaf and whatever wall, roof or lining its middle lies in or at. */
    void leaf(MoverPlace place, Way face) {
        Vector3D middle = place.stood().shape().body().bounds().middle();
        for (Piece piece : built(place.stood().in().trailer())) {
            boolean wall = piece.kind() == PartKind.SHELL && looks(piece, face);
            if (wall || piece.shape().give().outsideMm(middle) <= SET_AGAINST_MM) {
                ties.parts(place.path(), piece.id(), "set into it", true);
            }
        }
    }

    /** A terminal and the lining, wall or roof its opening lies in. */
    void terminal(TerminalPlace place) {
        Vector3D centre = place.opening().centre().at();
        boolean weather = place.in().spaces().isEmpty();
        for (Piece piece : built(place.in().trailer())) {
            boolean shell = weather
                    && piece.kind() == PartKind.SHELL
                    && place.in()
                            .face(place.told().face())
                            .filter(surface -> looks(piece, surface.outward()))
                            .isPresent();
            if (shell || piece.shape().give().outsideMm(centre) <= SET_AGAINST_MM) {
                ties.parts(place.path(), piece.id(), "set into it", true);
            }
        }
    }

    /** A run or line, its ends, its corners and its holes. */
    void path(Pathway path) {
        String thing = path.course().path();
        List<Leg> legs = path.legs();
        String first = legs.get(0).path();
        String last = legs.get(legs.size() - 1).path();
        joint(thing, first, path.start().thing());
        joint(thing, last, path.target().thing());
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            if (i > 0) {
                ties.parts(legs.get(i - 1).path(), leg.path(), "same path, at its corner", true);
            }
            for (Piece piece : built(leg.trailer())) {
                Give give = piece.shape().give();
                if (give.meets(leg.from().at(), leg.to().at())) {
                    ties.parts(leg.path(), piece.id(), "passes through it", true);
                }
            }
        }
    }

    private void joint(String path, String leg, String thing) {
        if (thing.isEmpty()) {
            return;
        }
        ties.things(path, thing, "joined", false);
        for (Piece piece : pieces) {
            boolean line = path.startsWith("lines.");
            if (piece.thing().equals(thing) && piece.kind() != PartKind.SERVICE) {
                ties.parts(leg, piece.id(), "joined", true);
            } else if (piece.thing().equals(thing) && line) {
                ties.parts(leg, piece.id(), "has to leave there", true);
            }
        }
    }

    void device(UnitPlace device, String run) {
        ties.things(device.path(), run, "sits in it", true);
    }
}
