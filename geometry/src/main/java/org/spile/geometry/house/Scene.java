package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Move;

/**
 * The house in one stance: everything in the site frame, which is the first trailer's own frame.
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

    /** Where air or a service enters or leaves: spigots, ports, terminals; those that are there. */
    List<Mouth> mouths();

    /** The trailers that are there and how each is placed on the site. */
    List<TrailerPlace> trailers();

    /** Why two parts owe each other no clearance, if they don't; symmetric. */
    Optional<Tie> tie(Part a, Part b);

    /**
     * The way out of a unit's face, where the unit now stands.
     *
     * @param unit its id
     * @param face rear, front, left, right, bottom or top, as the unit blows
     * @return unit vector in the site frame; nothing if the unit isn't there or has no such face
     */
    Optional<Vector3D> outward(String unit, String face);

    /**
     * A trailer on the site.
     *
     * @param id its id
     * @param toSite from its own frame to the site's
     */
    record TrailerPlace(String id, Move toSite) {}
}
