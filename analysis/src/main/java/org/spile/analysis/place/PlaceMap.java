package org.spile.analysis.place;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.FreePlan;
import org.spile.geometry.kernel.solid.Box3;

/**
 * Every place of a unit at one yaw.
 *
 * @param yawDeg how far its front is turned from its trailer's forward to the left
 * @param free where the middle of its box may be, in its trailer's frame (mm); borders belong to it
 * @param best the roomiest of these places, with the height of the box's middle there
 * @param roomMm how far it may go from there any way
 * @param box the box round the unit, as turned, about its middle
 */
public record PlaceMap(double yawDeg, FreePlan free, Optional<Vector3D> best, double roomMm, Box3 box) {}
