package org.spile.geometry.kernel.planar;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Why a list of corners is not an outline, and where.
 *
 * @param reason a short plain clause, such as "sides 1 and 3 cross"; corners and sides are counted from 1
 * @param at the place of the fault, in mm
 */
public record OutlineFault(String reason, Vector2D at) {}
