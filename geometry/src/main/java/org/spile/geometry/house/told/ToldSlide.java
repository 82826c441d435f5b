package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/** A slide: the way it goes (forward, aft, left, right, up, down) and the whole travel (mm). */
public record ToldSlide(String path, String way, Reading travel) {}
