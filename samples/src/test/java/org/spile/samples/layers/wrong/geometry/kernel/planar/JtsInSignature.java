package org.spile.samples.layers.wrong.geometry.kernel.planar;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** Hands a library's type out, hidden in a list. */
public final class JtsInSignature {

    private JtsInSignature() {}

    /** The areas of some shapes, given in the library's own type. */
    public static List<Double> areasMm2(List<Geometry> shapes) {
        return shapes.stream().map(Geometry::getArea).toList();
    }
}
