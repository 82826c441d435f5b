package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;

/**
 * The width that carries like a pipe where nobody says how much flows: between that at a quiet speed in the pipe and that at a
 * brisk one. It changes little, so it is worth telling.
 */
public final class AnyFlow {
    /** A quiet speed in a pipe (m/s); common practice, no source. */
    public static final double QUIET_MS = 1;

    /** A brisk speed in a pipe (m/s); common practice, no source. */
    public static final double BRISK_MS = 5;

    private static final double MM2 = 1e-6;

    private AnyFlow() {}

    /** The width (mm): the least and the most, and the middle between them. */
    public static Reckoning<Spread> widthMm(StraightDuct pipe, SectionShape shape, double depthMm) {
        return width(pipe, shape, depthMm, QUIET_MS)
                .then(quiet -> width(pipe, shape, depthMm, BRISK_MS)
                        .map(brisk -> new Spread(Math.min(quiet, brisk), (quiet + brisk) / 2, Math.max(quiet, brisk))));
    }

    private static Reckoning<Double> width(StraightDuct pipe, SectionShape shape, double depthMm, double speedMs) {
        return CarryingWidth.mm(pipe, shape, depthMm, flowM3s(pipe.section(), speedMs));
    }

    private static double flowM3s(Section section, double speedMs) {
        return speedMs * section.areaMm2() * MM2;
    }
}
