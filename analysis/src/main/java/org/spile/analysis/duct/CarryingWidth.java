package org.spile.analysis.duct;

import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.kernel.measure.Written;

/**
 * How wide a duct of a given depth must be to carry like a given round pipe: to lose no more per metre at the same flow.
 *
 * <p>Turbulent friction throughout: where a wide slot would flow laminar it would do with less, but only as long as no fan,
 * bend or screen stirs it.
 */
public final class CarryingWidth {
    /** No wider than so many times the depth; our own bound, far beyond what anyone builds. */
    public static final double MOST_ASPECT = 200;

    private static final double LEAST_ASPECT = 0.05;
    private static final double WIDER = 1.1;

    private CarryingWidth() {}

    /**
     * The width (mm) by the method we size by: J for a rectangle.
     *
     * @param pipe the round pipe, its roughness and air
     * @param shape of the duct
     * @param depthMm clear depth of the duct (mm)
     * @param flowM3s inside the range of the pipe's {@link StraightDuct#at}
     */
    public static Reckoning<Double> mm(StraightDuct pipe, SectionShape shape, double depthMm, double flowM3s) {
        return width(pipe, shape, depthMm, flowM3s, duct -> duct.sizingPaPerM(flowM3s));
    }

    /** The width (mm) at which no method, with its scatter, says any more that the duct loses more than the pipe. */
    public static Reckoning<Double> surelyMm(StraightDuct pipe, SectionShape shape, double depthMm, double flowM3s) {
        return width(pipe, shape, depthMm, flowM3s, duct -> duct.safePaPerM(flowM3s));
    }

    private static Reckoning<Double> width(
            StraightDuct pipe,
            SectionShape shape,
            double depthMm,
            double flowM3s,
            ToDoubleFunction<StraightDuct> loss) {
        return pipe.at(flowM3s).then(any -> narrowest(pipe, shape, depthMm)).then(narrow -> {
            double paPerM = pipe.sizingPaPerM(flowM3s);
            DoubleUnaryOperator over = log -> {
                StraightDuct duct =
                        duct(pipe, shape, Math.exp(log), depthMm).result().orElseThrow();
                return Math.log(loss.applyAsDouble(duct) / paPerM);
            };
            // The loss falls as the width grows.
            double low = Math.log(narrow.section().wideMm());
            double high = Math.log(MOST_ASPECT * depthMm);
            return over.applyAsDouble(low) < 0 || over.applyAsDouble(high) > 0
                    ? Reckoning.none("At a depth of " + Written.number(depthMm, 1) + " mm no width from 1/20 to "
                            + Written.number(MOST_ASPECT, 0) + " times that carries like it.")
                    : Reckoning.of(Math.exp(Roots.between(low, high, over)));
        });
    }

    /** The narrowest duct of that depth whose roughness is in range; a wider one feels it less. */
    private static Reckoning<StraightDuct> narrowest(StraightDuct pipe, SectionShape shape, double depthMm) {
        double wideMm = LEAST_ASPECT * depthMm;
        Reckoning<StraightDuct> narrow = duct(pipe, shape, wideMm, depthMm);
        while (narrow.result().isEmpty() && wideMm < MOST_ASPECT * depthMm) {
            wideMm *= WIDER;
            narrow = duct(pipe, shape, wideMm, depthMm);
        }
        return narrow;
    }

    private static Reckoning<StraightDuct> duct(StraightDuct pipe, SectionShape shape, double wideMm, double depthMm) {
        return StraightDuct.of(shape.of(wideMm, depthMm), pipe.roughMm(), pipe.air());
    }
}
