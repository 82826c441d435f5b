package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/**
 * How a trailer stands when docked: its face against a face of another trailer.
 *
 * @param face this trailer's face: rear, front, left or right
 * @param to the other trailer's id
 * @param toFace the other trailer's face
 * @param apart gap between the two faces (mm)
 * @param aside shift along the joint, to the left of the other trailer's outward direction positive (mm)
 * @param level this deck above the other (mm)
 * @param turn out of parallel, nose to the left positive (deg)
 */
public record ToldDock(
        String path,
        String face,
        String to,
        String toFace,
        Reading apart,
        Reading aside,
        Reading level,
        Reading turn) {}
