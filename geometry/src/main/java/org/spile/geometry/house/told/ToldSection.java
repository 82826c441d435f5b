package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A duct's section as typed: wide and high (or long, on an upright leg), or round; flat oval where {@code oval}.
 */
public record ToldSection(
        String path,
        Optional<Reading> wide,
        Optional<Reading> high,
        Optional<Reading> longMm,
        Optional<Reading> round,
        boolean oval) {}
