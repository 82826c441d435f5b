package org.spile.geometry.kernel.clearance;

import java.util.List;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Move;

/**
 * A continuous motion with one parameter, as a slide in millimetres or a hinge in degrees.
 *
 * <p>At parameter 0 a slide and a hinge leave things where they are. Immutable.
 */
public sealed interface Travel permits Slide, Hinge, Chain {
    /**
     * The motion from where things lie to a parameter.
     *
     * @throws IllegalArgumentException if it is out of range
     */
    Move at(double parameter);

    /**
     * No point moves faster than this.
     *
     * @param bounds of what moves, where it lies
     * @param strayMm how far its points may lie beyond those bounds
     * @return mm for one of the parameter
     */
    double speedMm(Box3 bounds, double strayMm);

    /**
     * The greatest reach of a core in a fixed direction over a range of the parameter; perhaps a little more, never less.
     *
     * @param core what moves, where it lies; its rounding left out
     * @param nx unit direction
     * @param ny unit direction
     * @param nz unit direction
     * @param from start of the range
     * @param to end of the range, not below its start
     * @return mm, as {@link ConvexCore#reach}
     */
    double reachMm(ConvexCore core, double nx, double ny, double nz, double from, double to);

    /**
     * The parameters within a range at which the motion turns, the range's ends among them.
     *
     * @return at least two, ascending
     */
    List<Double> knots(double from, double to);
}
