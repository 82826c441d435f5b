package org.spile.geometry.house;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** A cavity in place: its plan outline, and the clear depth between its linings at every place. */
public interface CavitySpace {
    /** The cavity's id. */
    String id();

    /** Its path, as {@code cavities.lobby-top}. */
    String path();

    /** What people call it. */
    String title();

    /** Id of the trailer it is in. */
    String trailer();

    /** The clear plan outline between its side linings, at the widest if a side isn't plumb (site frame, mm). */
    Outline outline();

    /**
     * The least clear depth, lining to lining along the upright, under a footprint.
     *
     * @param footprint in the site frame; must meet the cavity's outline
     * @throws IllegalArgumentException if the footprint lies outside
     */
    Depth leastDepth(Outline footprint);

    /**
     * Where it is less deep than asked, lining to lining.
     *
     * @param depthMm the depth asked
     * @return convex outlines within its own (site frame, mm), none if it is as deep everywhere
     */
    List<Outline> shallower(double depthMm);

    /** The parts that bound it: linings and what is behind them. */
    List<Part> linings();

    /** The path of the reading that lowers its ceiling (or floor), as {@code cavities.lobby-top.ceiling.drop}. */
    String dropPath();

    /** Whether a ceiling of a room below bounds it, so that lowering it makes sense. */
    boolean hasCeiling();

    /** Id of the room under it; empty if none. */
    String over();

    /**
     * A clear depth.
     *
     * @param low on the lower lining (site frame)
     * @param high on the upper lining, straight above
     * @param stack the depth as a sum of readings (mm)
     */
    record Depth(Vector3D low, Vector3D high, Stack stack) {}
}
