package org.spile.geometry.house.told;

import java.util.List;

/**
 * A spigot or port on a face of a unit: its size is the inside of the duct that fits it; in the middle of the face where
 * not placed.
 */
public record ToldSpigot(String path, String id, String face, ToldSizes sizes, List<FaceDistance> at) {
    /** Copies the distances. */
    public ToldSpigot {
        at = List.copyOf(at);
    }
}
