package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * An end of a run or line.
 *
 * @param name {@code unit.spigot}, a unit's port, a terminal, a fixture, {@code outside}, or the run it takes off from
 * @param onRun whether {@code name} is a run
 * @param after how far along that run (mm)
 * @param side the side of that run it leaves from; empty if not on a run
 */
public record ToldEnd(String path, String name, boolean onRun, Optional<Reading> after, String side) {}
