package org.spile.analysis.duct;

import java.util.function.DoubleBinaryOperator;
import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.kernel.measure.Written;

/**
 * A straight duct of one section with air in it: what friction takes per metre, for any flow.
 *
 * <p>The loss is continuous and rises with the flow. It holds for air that has settled; in the first 10 to 40 diameters after
 * a bend it is higher, so no short piece in a house is known better than give or take 15 %.
 */
public final class StraightDuct {
    /** Up to this speed (m/s), a tenth of sound's, air is as good as incompressible; our own bound. */
    public static final double MOST_SPEED_MS = 34;

    private static final double MM = 1e-3;

    private final Section section;
    private final double roughM;
    private final Air air;
    private final Opinions opinions;

    private StraightDuct(Section section, double roughM, Air air) {
        this.section = section;
        this.roughM = roughM;
        this.air = air;
        this.opinions = Opinions.on(section);
    }

    /**
     * A duct.
     *
     * @param section its clear section
     * @param roughMm absolute roughness of its inner face (mm), up to 1/20 of the hydraulic diameter
     * @param air in it
     */
    public static Reckoning<StraightDuct> of(Section section, double roughMm, Air air) {
        var duct = new StraightDuct(section, roughMm * MM, air);
        double roughness = duct.roughM / duct.opinions.leastDiameterM();
        if (Outside.is(roughness, 0, ColebrookFriction.MOST_ROUGHNESS)) {
            return Outside.refused(
                    "A relative roughness", roughness, 0, ColebrookFriction.MOST_ROUGHNESS, "", "Colebrook's formula");
        }
        return Reckoning.of(duct);
    }

    /** Its clear section. */
    public Section section() {
        return section;
    }

    /** The air in it. */
    public Air air() {
        return air;
    }

    /** Absolute roughness of its inner face (mm). */
    public double roughMm() {
        return roughM / MM;
    }

    /** The most flow that this holds for (m3/s): at {@link #MOST_SPEED_MS}. */
    public double mostFlowM3s() {
        return MOST_SPEED_MS * section.areaMm2() * MM * MM;
    }

    /**
     * The loss with all that goes with it.
     *
     * @param flowM3s more than nothing, up to {@link #mostFlowM3s} (m3/s)
     */
    public Reckoning<FrictionLoss> at(double flowM3s) {
        if (!(flowM3s > 0)) {
            return Reckoning.none("A flow of " + flowM3s + " m3/s is none.");
        }
        double speed = speedMs(flowM3s);
        if (speed > MOST_SPEED_MS) {
            return Reckoning.none(
                    "At " + Written.number(speed, 1) + " m/s air is compressed, which is not reckoned above "
                            + Written.number(MOST_SPEED_MS, 0) + " m/s.");
        }
        double reynolds = speed * HydraulicDiameter.mm(section) * MM / air.kinematicM2S();
        double equivalent = opinions.best().reynolds(flowM3s, air);
        return Reckoning.of(new FrictionLoss(
                speed,
                reynolds,
                equivalent,
                Regime.at(equivalent),
                spread(flowM3s, Regime.at(reynolds), Regime.at(equivalent))));
    }

    /** True mean speed (m/s). */
    public double speedMs(double flowM3s) {
        return flowM3s / (section.areaMm2() * MM * MM);
    }

    /**
     * What friction takes by the method we go by (Pa/m).
     *
     * @param flowM3s nothing or more (m3/s); {@link #at} says up to where it is worth something
     * @throws IllegalArgumentException if it is negative or not a number
     */
    public double paPerM(double flowM3s) {
        return loss(opinions.best(), flowM3s, FrictionPolicy::at);
    }

    /**
     * The careful loss for sizing (Pa/m): turbulent however slow the flow.
     *
     * @throws IllegalArgumentException as {@link #paPerM}
     */
    public double sizingPaPerM(double flowM3s) {
        return loss(opinions.best(), flowM3s, ColebrookFriction::at);
    }

    /** The highest that any method gives, turbulent however slow the flow, with its scatter (Pa/m). */
    double safePaPerM(double flowM3s) {
        double most = sizingPaPerM(flowM3s) * (1 + opinions.scatter());
        for (Bore other : opinions.others()) {
            most = Math.max(most, loss(other, flowM3s, ColebrookFriction::at));
        }
        return most;
    }

    /** Methods D and H are for turbulent flow: where it is laminar by either Reynolds number they have no say. */
    private Spread spread(double flowM3s, Regime plain, Regime equivalent) {
        double ours = paPerM(flowM3s);
        Spread spread = Spread.exact(ours).with(ours * (1 - opinions.scatter())).with(ours * (1 + opinions.scatter()));
        if (plain != Regime.LAMINAR) {
            for (Bore other : opinions.others()) {
                spread = spread.with(loss(other, flowM3s, FrictionPolicy::at));
            }
        }
        if (equivalent != Regime.TRANSITIONAL) {
            return spread;
        }
        double share = FrictionPolicy.TRANSITION_SHARE;
        return spread.with(ours * (1 - share)).with(ours * (1 + share)).with(sizingPaPerM(flowM3s));
    }

    private double loss(Bore bore, double flowM3s, DoubleBinaryOperator law) {
        if (!(flowM3s >= 0) || Double.isInfinite(flowM3s)) {
            throw new IllegalArgumentException("a flow is nothing or more, not " + flowM3s + " m3/s");
        }
        return bore.paPerM(flowM3s, roughM, air, law);
    }
}
