package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldHouse;

/** Everything as pieces in the order of the file, with its openings and ties. */
final class Things {
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final Ties ties;

    Things(
            ToldHouse told,
            Spaces spaces,
            Map<String, Stood> fixtures,
            Movers movers,
            List<UnitPlace> units,
            Terminals terminals,
            List<Pathway> paths,
            Devices devices,
            Readings readings,
            Names names) {
        Whereabouts whereabouts = new Whereabouts(spaces);
        spaces.trailers().values().forEach(trailer -> pieces.addAll(new Shells(readings, trailer).pieces()));
        spaces.cavities().values().forEach(cavity -> pieces.addAll(new Linings(cavity).pieces()));
        fixtures.values().forEach(stood -> pieces.addAll(whereabouts.pieces(stood, PartKind.FIXTURE)));
        pieces.addAll(movers.pieces());
        for (UnitPlace unit : units) {
            pieces.addAll(unit.pieces(whereabouts.spaces(unit.stood())));
            openings.addAll(unit.openings().values());
        }
        for (TerminalPlace terminal : terminals.places().values()) {
            terminal.body()
                    .map(body -> whereabouts.spaces(terminal.in(), body))
                    .flatMap(terminal::piece)
                    .ifPresent(pieces::add);
            openings.add(terminal.opening());
        }
        Passage passage = new Passage(spaces);
        paths.forEach(path -> pieces.addAll(path.pieces(passage)));
        TieMaker maker = new TieMaker(readings, names, pieces);
        fixtures.values().forEach(maker::setAgainst);
        movers.places().values().forEach(place -> maker.setAgainst(place.stood()));
        movers.places().values().forEach(place -> movers.face(place).ifPresent(face -> maker.leaf(place, face)));
        told.movers().values().forEach(maker::rides);
        for (UnitPlace unit : units) {
            maker.unit(unit.told());
            maker.setAgainst(unit.stood());
        }
        terminals.places().values().forEach(maker::terminal);
        paths.forEach(maker::path);
        devices.places().forEach(device -> maker.device(device, devices.runs().get(device.id())));
        this.ties = maker.ties();
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<Opening> openings() {
        return openings;
    }

    Ties ties() {
        return ties;
    }
}
