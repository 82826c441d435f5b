package org.spile.geometry.house.duct;

/** A change of direction. */
public sealed interface Bend extends DuctPiece permits RadiusBend, MitredBend {}
