package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/**
 * The turning vanes of a run's corners.
 *
 * @param apart from vane to vane along the mitre (mm)
 * @param thick of each, seen edge on (mm)
 */
public record ToldVanes(Reading apart, Reading thick) {}
