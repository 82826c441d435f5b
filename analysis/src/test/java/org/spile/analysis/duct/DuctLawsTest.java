package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.analysis.duct.Reckoned.AIR;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.spile.geometry.house.duct.Section;

/** Laws that hold for every straight duct. Each law stands apart from the runner that draws its cases. */
class DuctLawsTest {
    private static final int TRIES = 400;
    private static final double ROUNDING = 1e-11;

    /** A duct, a flow in it, and a number a little above 1. */
    private record Case(Section section, double roughMm, double flowM3s, double more) {
        StraightDuct duct() {
            return known(StraightDuct.of(section, roughMm, AIR));
        }
    }

    @Property(tries = TRIES)
    void moreFlow_losesMore(@ForAll("cases") Case given) {
        moreFlowLosesMore(given);
    }

    @Property(tries = TRIES)
    void rougher_neverLosesLess(@ForAll("cases") Case given) {
        rougherNeverLosesLess(given);
    }

    @Property(tries = TRIES)
    void friction_isContinuous(@ForAll("cases") Case given) {
        frictionIsContinuous(given);
    }

    @Property(tries = TRIES)
    void wider_neverCarriesLess(@ForAll("cases") Case given) {
        widerNeverCarriesLess(given);
    }

    @Property(tries = TRIES)
    void turned_isTheSame(@ForAll("cases") Case given) {
        turnedIsTheSame(given);
    }

    @Property(tries = TRIES)
    void band_holdsOurs(@ForAll("cases") Case given) {
        bandHoldsOurs(given);
    }

    @Property(tries = TRIES)
    void equalFriction_losesTheSame(@ForAll("cases") Case given) {
        equalFrictionLosesTheSame(given);
    }

    @Property(tries = TRIES)
    void equalFrictionOfARound_isItself(@ForAll("cases") Case given) {
        equalFrictionOfARoundIsItself(given);
    }

    @Property(tries = TRIES)
    void equalFriction_isBetweenHydraulicAndEqualArea(@ForAll("cases") Case given) {
        equalFrictionIsBetween(given);
    }

    @Property(tries = TRIES / 4)
    void manySmall_neverFewerForMore(@ForAll("cases") Case given) {
        manySmallNeverFewerForMore(given);
    }

    private static void moreFlowLosesMore(Case given) {
        StraightDuct duct = given.duct();
        assertTrue(duct.paPerM(given.flowM3s() * given.more()) > duct.paPerM(given.flowM3s()));
        assertTrue(duct.sizingPaPerM(given.flowM3s() * given.more()) > duct.sizingPaPerM(given.flowM3s()));
        assertTrue(duct.sizingPaPerM(given.flowM3s()) > 0 && duct.paPerM(given.flowM3s()) > 0);
    }

    private static void rougherNeverLosesLess(Case given) {
        double rougherMm = given.roughMm() * given.more();
        StraightDuct.of(given.section(), rougherMm, AIR).result().ifPresent(rougher -> {
            assertTrue(rougher.paPerM(given.flowM3s()) >= given.duct().paPerM(given.flowM3s()) * (1 - ROUNDING));
            assertTrue(rougher.sizingPaPerM(given.flowM3s())
                    >= given.duct().sizingPaPerM(given.flowM3s()) * (1 - ROUNDING));
        });
    }

    /** In the transition the loss grows with at most the sixth power of the flow; a jump would break any such bound. */
    private static void frictionIsContinuous(Case given) {
        double hair = 1e-7;
        double here = given.duct().paPerM(given.flowM3s());
        double next = given.duct().paPerM(given.flowM3s() * (1 + hair));
        assertTrue(next > here && next <= here * (1 + 6 * hair), here + " to " + next);
    }

    private static void widerNeverCarriesLess(Case given) {
        Section section = given.section();
        // An oval that is a circle is reckoned as one, without the scatter of an oval.
        if (section instanceof Section.Round || Aspect.of(section) == 1) {
            return;
        }
        Section wider = SectionShape.like(section).of(section.wideMm() * given.more(), section.highMm());
        StraightDuct wide = known(StraightDuct.of(wider, given.roughMm(), AIR));
        assertTrue(wide.paPerM(given.flowM3s()) <= given.duct().paPerM(given.flowM3s()) * (1 + ROUNDING));
        assertTrue(wide.sizingPaPerM(given.flowM3s()) <= given.duct().sizingPaPerM(given.flowM3s()) * (1 + ROUNDING));
        assertTrue(wide.safePaPerM(given.flowM3s()) <= given.duct().safePaPerM(given.flowM3s()) * (1 + ROUNDING));
    }

    private static void turnedIsTheSame(Case given) {
        if (given.section() instanceof Section.Round) {
            return;
        }
        Section turned = SectionShape.like(given.section())
                .of(given.section().highMm(), given.section().wideMm());
        StraightDuct duct = known(StraightDuct.of(turned, given.roughMm(), AIR));
        within(given.duct().paPerM(given.flowM3s()), duct.paPerM(given.flowM3s()), ROUNDING);
    }

    private static void bandHoldsOurs(Case given) {
        Spread pa = known(given.duct().at(given.flowM3s())).paPerM();
        assertEquals(given.duct().paPerM(given.flowM3s()), pa.value());
        assertTrue(pa.low() > 0 && pa.low() <= pa.value() && pa.value() <= pa.high());
        // No further out than the transition's share, or what the dearest method gives for turbulent flow throughout.
        double most = Math.max(
                pa.value() * (1 + FrictionPolicy.TRANSITION_SHARE), given.duct().safePaPerM(given.flowM3s()));
        assertTrue(pa.high() <= most * (1 + ROUNDING), pa.toString());
        assertTrue(pa.low() > pa.value() / 2, pa.toString());
    }

    private static void equalFrictionLosesTheSame(Case given) {
        double mm = known(EqualFriction.roundMm(given.duct(), given.flowM3s())).value();
        StraightDuct round = known(StraightDuct.of(new Section.Round(mm), given.roughMm(), AIR));
        within(given.duct().paPerM(given.flowM3s()), round.paPerM(given.flowM3s()), 1e-9);
    }

    private static void equalFrictionOfARoundIsItself(Case given) {
        double diameterMm = Math.max(given.section().wideMm(), given.section().highMm());
        StraightDuct round = known(StraightDuct.of(new Section.Round(diameterMm), given.roughMm(), AIR));
        within(diameterMm, known(EqualFriction.roundMm(round, given.flowM3s())).value(), 1e-10);
        within(diameterMm, known(EqualFriction.sizingRoundMm(round, given.flowM3s())), 1e-10);
    }

    /** A flat oval's laminar polynomial is good for 0.03 %, which shows next to a circle. */
    private static void equalFrictionIsBetween(Case given) {
        double fit = 3e-4;
        double mm = known(EqualFriction.sizingRoundMm(given.duct(), given.flowM3s()));
        assertTrue(mm >= HydraulicDiameter.mm(given.section()) * (1 - fit));
        assertTrue(mm <= EqualArea.roundMm(given.section().areaMm2()) * (1 + fit));
    }

    private static void manySmallNeverFewerForMore(Case given) {
        double smallMm = HydraulicDiameter.mm(given.section()) / given.more();
        int count = SmallRounds.count(given.duct(), smallMm, given.flowM3s())
                .result()
                .orElse(Integer.MAX_VALUE);
        int smaller = SmallRounds.count(given.duct(), smallMm / given.more(), given.flowM3s())
                .result()
                .orElse(Integer.MAX_VALUE);
        assertTrue(1 <= count && count <= smaller);
    }

    @Provide
    Arbitrary<Case> cases() {
        return Combinators.combine(sections(), shares(), shares(), shares()).as((section, rough, flow, more) -> {
            double roughMm = rough * rough * rough * 0.03 * HydraulicDiameter.mm(section);
            StraightDuct duct = known(StraightDuct.of(section, roughMm, AIR));
            // From 1/1000 of the most that is reckoned, each decade as likely, so that every regime is met.
            double flowM3s = 0.5 * duct.mostFlowM3s() * Math.pow(1000, flow - 1);
            return new Case(section, roughMm, flowM3s, 1 + 0.001 + more * 0.5);
        });
    }

    private static Arbitrary<Section> sections() {
        Arbitrary<Double> sides = shares().map(share -> 15 * Math.pow(40, share));
        return Combinators.combine(Arbitraries.integers().between(0, 2), sides, sides)
                .as((shape, wide, high) -> switch (shape) {
                    case 0 -> new Section.Round(wide);
                    case 1 -> new Section.FlatOval(wide, high);
                    default -> new Section.Rectangular(wide, high);
                });
    }

    private static Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(0, 1).ofScale(4).withoutEdgeCases();
    }
}
