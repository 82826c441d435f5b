package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A known load at a point.
 *
 * @param mass its mass (kg), or
 * @param holds what a store holds when full (kg)
 */
public record ToldMass(Placed placed, Optional<Reading> mass, Optional<Reading> holds) {}
