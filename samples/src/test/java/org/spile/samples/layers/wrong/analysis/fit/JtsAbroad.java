package org.spile.samples.layers.wrong.analysis.fit;

import org.locationtech.jts.geom.Coordinate;

/** Keeps a coordinate of a library that isn't its own. */
record JtsAbroad(Coordinate at) {}
