package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/**
 * The screws round each joint of a run.
 *
 * @param tip how far each stands in (mm)
 * @param thick diameter of each (mm)
 * @param apart from screw to screw round the joint, at most (mm)
 */
public record ToldScrews(Reading tip, Reading thick, Reading apart) {}
