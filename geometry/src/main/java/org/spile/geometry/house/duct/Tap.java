package org.spile.geometry.house.duct;

/**
 * An end of a run at the side of another.
 *
 * @param run path of the other run
 * @param side the side of it
 * @param wallMm how thick that run's wall is, all layers: as long as the collar through it
 */
public record Tap(String run, String side, double wallMm) {}
