package org.spile.geometry.house.told;

import java.util.List;

/** A further box of a thing, placed from the faces of its first body. */
public record ToldBox(String path, List<FaceDistance> at, ToldSizes sizes) {
    /** Copies the distances. */
    public ToldBox {
        at = List.copyOf(at);
    }
}
