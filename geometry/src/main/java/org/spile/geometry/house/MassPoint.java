package org.spile.geometry.house;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A known load at a point of a trailer.
 *
 * @param path of the thing it belongs to
 * @param trailer id of the trailer that carries it
 * @param at in that trailer's own frame (mm)
 * @param mass kg
 * @param store whether it is what a store holds when full
 */
public record MassPoint(String path, String trailer, Vector3D at, Reading mass, boolean store) {}
