package org.spile.analysis.duct;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.spile.analysis.finding.Reckoning;

/**
 * The round duct that loses as much per metre at the same flow: the size that a duct is worth.
 *
 * <p>Its roughness and air are the duct's.
 */
public final class EqualFriction {
    private static final double MM = 1e-3;
    private static final double MARGIN = 1.5;

    private EqualFriction() {}

    /**
     * Its diameter (mm) with its band: the least where the duct loses the most.
     *
     * @param duct the duct it stands for
     * @param flowM3s inside the range of {@link StraightDuct#at}
     */
    public static Reckoning<Spread> roundMm(StraightDuct duct, double flowM3s) {
        return duct.at(flowM3s).map(loss -> {
            Spread paPerM = loss.paPerM();
            DoubleUnaryOperator round = pa -> diameterMm(duct, flowM3s, pa, FrictionPolicy::at);
            return paPerM.low() == paPerM.high()
                    ? Spread.exact(round.applyAsDouble(paPerM.value()))
                    : paPerM.falling(round);
        });
    }

    /**
     * The careful one for sizing (mm), with turbulent friction in both however slow the flow.
     *
     * @param flowM3s inside the range of {@link StraightDuct#at}
     */
    public static Reckoning<Double> sizingRoundMm(StraightDuct duct, double flowM3s) {
        return duct.at(flowM3s)
                .map(loss -> diameterMm(duct, flowM3s, duct.sizingPaPerM(flowM3s), ColebrookFriction::at));
    }

    /**
     * The loss falls as the diameter grows, at least with its fourth power, so there is one answer. It is never less than the
     * duct's hydraulic diameter: a circle of that size has the smaller area. So its roughness is in range if the duct's is.
     */
    private static double diameterMm(StraightDuct duct, double flowM3s, double paPerM, DoubleBinaryOperator law) {
        DoubleUnaryOperator over = log -> {
            Bore round = Bore.round(Math.exp(log) * MM);
            return Math.log(round.paPerM(flowM3s, duct.roughMm() * MM, duct.air(), law) / paPerM);
        };
        double leastMm = HydraulicDiameter.mm(duct.section()) / MARGIN;
        double mostMm = EqualArea.roundMm(duct.section().areaMm2()) * MARGIN;
        return Math.exp(Roots.between(Math.log(leastMm), Math.log(mostMm), over));
    }
}
