package org.spile.geometry.house;

import org.spile.geometry.kernel.clearance.GlidePlane;
import org.spile.geometry.kernel.planar.Outline;

/**
 * How high a unit comes to stand over a part of the plan.
 *
 * @param over where the middle of its box is, in the frame of its trailer (mm)
 * @param height of that middle above the trailer's deck
 */
public record RestingPlace(Outline over, GlidePlane height) {}
