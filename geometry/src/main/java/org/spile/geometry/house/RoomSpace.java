package org.spile.geometry.house;

import org.spile.geometry.kernel.planar.Outline;

/** A room in place: its plan outline, and how high it is under its ceilings at every place. */
public interface RoomSpace {
    /** The room's id. */
    String id();

    /** Its path, as {@code rooms.lobby}. */
    String path();

    /** Its plan outline (site frame, mm). */
    Outline outline();

    /**
     * The least height under a footprint, from the finished floor up to the underside of what is above it: the ceiling of
     * a cavity, the room's own ceiling or the roof, each with its linings.
     *
     * @param footprint in the site frame; must meet the room's outline
     * @throws IllegalArgumentException if the footprint lies outside
     */
    CavitySpace.Depth leastHeight(Outline footprint);
}
