package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.duct.Section;

/**
 * A duct held against the round pipe it stands in for, at the same flow, with the same face and air.
 *
 * @param duct the duct
 * @param pipe the pipe
 * @param flowM3s through either (m3/s)
 * @param ductLoss what the duct takes
 * @param pipeLoss what the pipe takes
 * @param roundMm the round that the duct is worth (mm)
 */
public record PipeComparison(
        StraightDuct duct,
        StraightDuct pipe,
        double flowM3s,
        FrictionLoss ductLoss,
        FrictionLoss pipeLoss,
        Spread roundMm) {
    // What the arithmetic leaves uncertain, far below what anybody measures.
    private static final double ROUNDING = 1e-9;

    /** Holds a duct against a pipe of a diameter (mm). */
    public static Reckoning<PipeComparison> of(StraightDuct duct, double pipeMm, double flowM3s) {
        return StraightDuct.of(new Section.Round(pipeMm), duct.roughMm(), duct.air())
                .then(pipe -> duct.at(flowM3s)
                        .then(ductLoss -> pipe.at(flowM3s)
                                .then(pipeLoss -> EqualFriction.roundMm(duct, flowM3s)
                                        .map(round ->
                                                new PipeComparison(duct, pipe, flowM3s, ductLoss, pipeLoss, round)))));
    }

    /**
     * Whether it carries like the pipe: <i>passes</i> where no method says that it loses more per metre, <i>fails</i> where all
     * say so, <i>tight</i> where they don't agree.
     */
    public Verdict verdict() {
        Spread duct = ductLoss.paPerM();
        Spread pipe = pipeLoss.paPerM();
        if (duct.high() <= pipe.low() * (1 + ROUNDING)) {
            return Verdict.PASSES;
        }
        return duct.low() > pipe.high() ? Verdict.FAILS : Verdict.TIGHT;
    }

    /** How many times the pipe's loss it takes. */
    public double ratio() {
        return ductLoss.paPerM().value() / pipeLoss.paPerM().value();
    }
}
