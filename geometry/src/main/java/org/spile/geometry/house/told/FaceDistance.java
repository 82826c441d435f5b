package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * One distance off a tape: from a named face inwards (or outwards), or a coordinate.
 *
 * @param path where it was typed, as {@code units.cooler.at.top}
 * @param face rear, front, left, right, floor, ceiling, top, bottom, deck, roof; or x, y, z for coordinates
 * @param near the distance to the near edge of a box, or to the middle of a round thing (mm)
 * @param far the second running dimension off the same hook, if both edges were read (mm)
 * @param out whether the distance runs outwards from the face
 */
public record FaceDistance(String path, String face, Reading near, Optional<Reading> far, boolean out) {}
