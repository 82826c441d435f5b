package org.spile.geometry.house.told;

import org.spile.geometry.kernel.measure.Reading;

/** One point of a sloping surface: a distance from a face, and the height there (mm). */
public record ProfilePoint(FaceDistance from, Reading up) {}
