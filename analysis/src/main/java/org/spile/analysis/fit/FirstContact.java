package org.spile.analysis.fit;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.clearance.ExitInterval;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Solid;

/** How far a body travels before it meets another; negative if it has to go back to come clear. */
final class FirstContact {
    private FirstContact() {}

    /**
     * The least travel at which they meet.
     *
     * @param leastMm what is met only by going back further than this lies behind, not ahead
     */
    static OptionalDouble of(Body moving, Vector3D direction, Body fixed, double leastMm) {
        double first = Double.POSITIVE_INFINITY;
        for (Solid one : moving.solids()) {
            for (Solid other : fixed.solids()) {
                for (ExitInterval met : ExitInterval.all(one, other, direction, 0)) {
                    if (met.fromMm() >= leastMm) {
                        first = Math.min(first, met.fromMm());
                    }
                }
            }
        }
        return first < Double.POSITIVE_INFINITY ? OptionalDouble.of(first) : OptionalDouble.empty();
    }
}
