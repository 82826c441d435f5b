package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Body;

/**
 * Two parts and the room between them.
 *
 * @param subject the part that asks for room
 * @param against the part that may take it
 * @param keep how the room is measured
 * @param met the body of the other that it was measured to
 * @param lowMm the gap is at least this; negative: how deep they cut into each other
 * @param highMm and at most this
 * @param ends where it was measured: on the subject, on the other
 * @param normal unit vector from the subject to the other, square to the surfaces that face each other
 * @param stack the gap as a sum of readings
 */
record Pair(
        Part subject,
        Part against,
        Keep keep,
        Body met,
        double lowMm,
        double highMm,
        Ends ends,
        Vector3D normal,
        Stack stack) {

    /** How much the tolerances may take away. */
    double downMm() {
        return stack.valueMm() - stack.worstLow();
    }

    /** Whether they share room. */
    boolean overlaps() {
        return highMm < 0;
    }
}
