package org.spile.geometry.file;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * How a corner is made.
 *
 * @param kind radius, mitred or vanes
 * @param radius of the middle line (mm), if said
 */
record Bend(String kind, Optional<Reading> radius) {}
