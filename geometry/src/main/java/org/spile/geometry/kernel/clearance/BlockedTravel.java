package org.spile.geometry.kernel.clearance;

/**
 * Travels that one pair of bodies forbids.
 *
 * @param moving index of the moving body
 * @param fixed index of the fixed body
 * @param interval the travels, in mm; its ends are free
 */
public record BlockedTravel(int moving, int fixed, ExitInterval interval) {}
