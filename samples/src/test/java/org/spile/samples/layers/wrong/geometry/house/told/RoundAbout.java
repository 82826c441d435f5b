package org.spile.samples.layers.wrong.geometry.house.told;

import org.spile.samples.layers.wrong.geometry.house.duct.RoundBack;

/**
 * One half of a circle.
 *
 * @param back the other half
 */
public record RoundAbout(RoundBack back) {}
