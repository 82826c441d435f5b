package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/** The state of one thing in a stance or situation: a word, or a position (mm or deg). */
public record ToldState(String path, String word, Optional<Reading> position) {}
