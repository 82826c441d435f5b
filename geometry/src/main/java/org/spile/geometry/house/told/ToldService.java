package org.spile.geometry.house.told;

import java.util.List;
import org.spile.geometry.kernel.measure.Reading;

/**
 * Room for service at a face of a unit: the face, how far out (mm), and its sizes and place along the face (the whole
 * face where not given).
 *
 * @param purpose electric, filter, drain, air, pan, hand ...
 */
public record ToldService(
        String path, String purpose, String face, Reading out, ToldSizes sizes, List<FaceDistance> at) {
    /** Copies the distances. */
    public ToldService {
        at = List.copyOf(at);
    }
}
