package org.spile.samples.layers.wrong.geometry.house.duct;

import org.spile.samples.layers.wrong.geometry.house.told.RoundAbout;

/**
 * The other half of the circle.
 *
 * @param about the first half
 */
public record RoundBack(RoundAbout about) {}
