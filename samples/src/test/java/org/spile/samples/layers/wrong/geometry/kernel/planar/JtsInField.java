package org.spile.samples.layers.wrong.geometry.kernel.planar;

import org.locationtech.jts.geom.PrecisionModel;

/** Shows a library's type as a constant. */
public final class JtsInField {

    /** The grid, in the library's own type. */
    public static final PrecisionModel GRID = new PrecisionModel(1000);

    private JtsInField() {}
}
