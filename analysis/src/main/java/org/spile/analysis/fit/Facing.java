package org.spile.analysis.fit;

import java.util.Optional;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.kernel.solid.Body;

/**
 * What of a part another part meets.
 *
 * <p>A lining's body reaches beyond what was measured, so that what pokes through it from its own cavity is caught; a
 * ceiling's ends at the face that its room sees. From anywhere else only what is really built counts.
 */
final class Facing {
    private Facing() {}

    /** The body of a part that is met by one that comes; empty if nothing is built there. */
    static Optional<Body> body(Part met, Part comer) {
        boolean beside = met.spaces().stream().anyMatch(comer.spaces()::contains);
        return met.kind() != PartKind.LINING || beside ? Optional.of(met.body()) : met.shown();
    }
}
