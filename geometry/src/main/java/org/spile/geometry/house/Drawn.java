package org.spile.geometry.house;

import java.util.Optional;
import org.spile.geometry.house.told.ToldOutline;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.OutlineFault;

/** Makes outlines of told corners, or says what is wrong with them. */
final class Drawn {
    private Drawn() {}

    static Optional<Outline> outline(ToldOutline told, Troubles troubles) {
        Optional<OutlineFault> fault = Outline.check(told.corners());
        if (fault.isPresent()) {
            troubles.wrong(
                    told.path(),
                    fault.get().reason() + " at "
                            + AxisPlacing.number(fault.get().at().getX()) + " forward, "
                            + AxisPlacing.number(fault.get().at().getY()) + " to the left",
                    "An outline goes once round, without crossing or touching itself.");
            return Optional.empty();
        }
        return Optional.of(Outline.of(told.corners()));
    }
}
