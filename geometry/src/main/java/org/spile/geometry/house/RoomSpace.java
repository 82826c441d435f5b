package org.spile.geometry.house;

import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** A room in place: its plan outline, and its clear height at every place. */
public interface RoomSpace {
    /** The room's id. */
    String id();

    /** Its path, as {@code rooms.lobby}. */
    String path();

    /** What people call it. */
    String title();

    /** Id of the trailer it is in. */
    String trailer();

    /** Its plan outline (site frame, mm). */
    Outline outline();

    /** Height of its finished floor in the site frame (mm). */
    Stack floor();

    /**
     * The least clear height, finished floor to the ceiling or roof over it, under a footprint: fixtures and movers are left
     * out.
     *
     * @param footprint in the site frame; must meet the room's outline
     * @throws IllegalArgumentException if the footprint lies outside
     */
    CavitySpace.Depth leastHeight(Outline footprint);
}
