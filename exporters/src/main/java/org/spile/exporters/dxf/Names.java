package org.spile.exporters.dxf;

import org.spile.exporters.drawing.LineType;
import org.spile.geometry.kernel.measure.Written;

/** Names of table entries that more than one section uses. */
final class Names {
    static final String APP = "SPILE";
    static final String TEXT_STYLE = "Spile";
    static final String POINTS_LAYER = "Defpoints";

    private Names() {}

    /** The line type's name; the format fixes one of them. */
    static String of(LineType type) {
        return type == LineType.CONTINUOUS ? "Continuous" : type.words();
    }

    /** The dimension style for a scale: {@code spile-1-20}. */
    static String dimensionStyle(double unit) {
        return unit >= 1
                ? "spile-1-" + Written.number(unit, 3).replace('.', '_')
                : "spile-" + Written.number(1 / unit, 3).replace('.', '_') + "-1";
    }
}
