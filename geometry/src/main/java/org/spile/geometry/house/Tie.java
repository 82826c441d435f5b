package org.spile.geometry.house;

/**
 * Why two parts owe each other no clearance. A tie frees a pair from the general clearance and from clearances a maker
 * asks; {@code overlaps} says whether they may even share room (a duct in the hole it needs), or may touch only.
 *
 * @param why as "carries it", "joined at outlet", "passes through it", "same run"
 * @param overlaps whether they may overlap
 */
public record Tie(String why, boolean overlaps) {}
