package org.spile.exporters.drawing;

import java.util.List;

/**
 * Parallel lines of a hatch pattern, in millimetres on paper.
 *
 * @param angleDeg direction of the lines, degrees from the x axis
 * @param startMm how far the first line lies from the origin, across the lines
 * @param spacingMm distance between lines, across them, above 0
 * @param shiftMm how far each line's dashes start after those of the line before
 * @param dashesMm dash, gap, dash, gap …; empty for continuous lines
 */
public record HatchFamily(double angleDeg, double startMm, double spacingMm, double shiftMm, List<Double> dashesMm) {
    /** Copies the dashes; spacing follows ISO 128: no less than 0.7. */
    public HatchFamily {
        dashesMm = List.copyOf(dashesMm);
        if (!(spacingMm >= 0.7)) {
            throw new IllegalArgumentException("hatch lines " + spacingMm + " mm apart: ISO 128 asks for 0.7 at least");
        }
        if (dashesMm.size() % 2 != 0 || dashesMm.stream().anyMatch(dash -> !(dash > 0))) {
            throw new IllegalArgumentException("dashes " + dashesMm + " are not pairs of lengths above 0");
        }
    }

    static HatchFamily lines(double angleDeg, double spacingMm) {
        return new HatchFamily(angleDeg, 0, spacingMm, 0, List.of());
    }

    static HatchFamily dashed(double angleDeg, double spacingMm, double shiftMm, double dashMm, double gapMm) {
        return new HatchFamily(angleDeg, 0, spacingMm, shiftMm, List.of(dashMm, gapMm));
    }

    HatchFamily from(double mm) {
        return new HatchFamily(angleDeg, mm, spacingMm, shiftMm, dashesMm);
    }
}
