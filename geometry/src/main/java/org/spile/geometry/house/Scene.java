package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.solid.Move;

/**
 * The house in one stance: everything in the site frame (the first trailer's own frame unless a stance says otherwise).
 */
public interface Scene {
    /** The stance's id. */
    String stance();

    /** Whether it is a stance on the road. */
    boolean road();

    /** Every part that is there, in the order of the file. */
    List<Part> parts();

    /** The part of that id, if it is there. */
    Optional<Part> part(String id);

    /** The cavities that are there, in the order of the file. */
    List<CavitySpace> cavities();

    /** The rooms that are there, in the order of the file. */
    List<RoomSpace> rooms();

    /** The trailers that are there and how each is placed on the site. */
    List<TrailerPlace> trailers();

    /** Why two parts owe each other nothing, if they don't; symmetric. */
    Optional<Tie> tie(Part a, Part b);

    /**
     * A trailer on the site.
     *
     * @param id its id
     * @param toSite from its own frame to the site's
     */
    record TrailerPlace(String id, Move toSite) {}
}
