package org.spile.analysis.whole;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Box3;

/**
 * Where to hold a tape: from where it counts to what it measures.
 *
 * @param stance the stance in which it lies there
 * @param trailer id of the trailer it is in
 * @param from where it is hooked on (site frame, mm); the same as {@code to} where only the far end is known
 * @param to what it runs to (site frame, mm)
 * @param about the box round what it measures, anywhere along which it may be held (the trailer's own frame, mm)
 */
public record Tape(String stance, String trailer, Vector3D from, Vector3D to, Box3 about) {
    /** Whether both ends are known. */
    public boolean whole() {
        return from.distance(to) > 1e-6;
    }
}
