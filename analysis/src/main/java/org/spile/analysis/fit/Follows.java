package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.measure.Layer;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/** How a part goes along when a reading grows, such as a ceiling's drop. */
enum Follows {
    /** Straight down with it, as a whole. */
    WHOLE,
    /** Not at all. */
    NOT,
    /** In part, or some other way: it has to be worked out again. */
    STRETCHES;

    private static final double SAME = 1e-9;
    private static final Vector3D LEVEL = Vector3D.of(0.8, 0.6, 0);

    /** How a part follows the reading of a path. */
    static Follows of(Part part, String path) {
        boolean whole = true;
        boolean not = true;
        for (Solid solid : part.body().solids()) {
            for (ConvexCore core : solid.cores()) {
                for (int corner = 0; corner < core.count(); corner++) {
                    Vector3D point = Vector3D.of(core.x(corner), core.y(corner), core.z(corner));
                    double up = factor(part, point, Vector3D.Unit.PLUS_Z, path);
                    double aside = up == 0 ? 0 : Math.abs(factor(part, point, LEVEL, path));
                    whole &= Math.abs(up + 1) < SAME && aside < SAME;
                    not &= Math.abs(up) < SAME && aside < SAME;
                }
            }
        }
        return whole ? WHOLE : not ? NOT : STRETCHES;
    }

    private static double factor(Part part, Vector3D point, Vector3D direction, String path) {
        return part.flex().along(point, direction).layers().stream()
                .filter(layer -> layer.reading().path().equals(path))
                .mapToDouble(Layer::factor)
                .sum();
    }
}
