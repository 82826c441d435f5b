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

    /** The body that the other part meets; empty if nothing is built there. */
    static Optional<Body> body(Part part, Part other) {
        boolean beside = part.spaces().stream().anyMatch(other.spaces()::contains);
        return part.kind() != PartKind.LINING || beside ? Optional.of(part.body()) : part.shown();
    }
}
