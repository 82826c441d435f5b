package org.spile.geometry.house.duct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Solid;

/**
 * The outside of a leg in the parts that it is made of.
 *
 * @param bendBefore its half of a radius bend before it
 * @param straight what the bends leave of it
 * @param bendAfter its half of a radius bend after it
 */
public record LegBodies(Optional<Body> bendBefore, Optional<Body> straight, Optional<Body> bendAfter) {
    /** All of it that is there. */
    Body whole() {
        return union(bendBefore, straight, bendAfter);
    }

    @SafeVarargs
    static Body union(Optional<Body>... parts) {
        List<Solid> solids = new ArrayList<>();
        for (Optional<Body> part : parts) {
            part.ifPresent(body -> solids.addAll(body.solids()));
        }
        return new Body(solids);
    }
}
