package org.spile.analysis.fit;

import java.util.Optional;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.told.ToldTrailer;

/**
 * Which things ask for the clearance round everything, and who speaks where two of them meet: units before ducts before
 * lines before movers before docking trailers.
 */
final class Subjects {
    private Subjects() {}

    /** A part's rank, 0 first; empty if it asks for nothing itself. */
    static Optional<Integer> rank(House house, Part part) {
        return switch (part.kind()) {
            case UNIT -> Optional.of(0);
            case DUCT -> Optional.of(1);
            case LINE -> Optional.of(2);
            case MOVER -> Optional.of(3);
            case SHELL -> docks(house, part) ? Optional.of(4) : Optional.empty();
            case SERVICE, TERMINAL, FIXTURE, LINING -> Optional.empty();
        };
    }

    /** A docking trailer moves as a whole, so it only asks room of what belongs to others. */
    static boolean asks(Part subject, Part other) {
        return subject.kind() != PartKind.SHELL || !subject.trailer().equals(other.trailer());
    }

    private static boolean docks(House house, Part part) {
        ToldTrailer trailer = house.told().trailers().get(part.trailer());
        return trailer != null && trailer.dock().isPresent();
    }
}
