package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.rectangle;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.round;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EqualFrictionTest {
    /**
     * The same ducts the other way round: widths that carry like a 100 mm pipe by method J with the transition policy,
     * python3-fluids 1.0.22, Colebrook and scipy's brentq; printed to a millimetre of width.
     */
    @ParameterizedTest
    @CsvSource({
        "25, 441, 10",
        "40, 253, 10",
        "60, 148, 10",
        "20, 659, 20",
        "25, 519, 20",
        "40, 263, 20",
        "60, 147, 20",
        "20, 802, 40",
        "25, 550, 40",
        "40, 259, 40",
        "60, 147, 40"
    })
    void round_carryingWidths(double highMm, double wideMm, double flowLs) {
        within(
                100,
                known(EqualFriction.roundMm(rectangle(wideMm, highMm), flowLs * 1e-3))
                        .value(),
                2e-3);
    }

    @Test
    void round_bandIsThatOfTheLoss() {
        Spread mm = known(EqualFriction.roundMm(rectangle(314, 25), 0.02));
        Spread pa = known(rectangle(314, 25).at(0.02)).paPerM();
        within(pa.high(), round(mm.low()).paPerM(0.02), 1e-9);
        within(pa.low(), round(mm.high()).paPerM(0.02), 1e-9);
        assertTrue(mm.low() < mm.value() && mm.value() < mm.high());
    }

    /** Handbooks' millimetre table: a square of 100 carries like 109 at ordinary speeds; J and H differ by 1 % there. */
    @ParameterizedTest
    @CsvSource({"100, 100, 109", "100, 200, 152", "100, 400, 207", "150, 300, 229"})
    void round_nearTheHandbooks(double aMm, double bMm, double printedMm) {
        within(
                printedMm,
                known(EqualFriction.roundMm(rectangle(aMm, bMm), aMm * bMm * 4e-6))
                        .value(),
                0.01);
    }

    @Test
    void sizing_isTurbulentThroughout() {
        StraightDuct slot = rectangle(862, 20);
        within(100, known(EqualFriction.sizingRoundMm(slot, 0.01)), 1e-3);
        assertTrue(known(EqualFriction.roundMm(slot, 0.01)).value() > 100);
    }

    @Test
    void round_ofARound_isItself() {
        Spread mm = known(EqualFriction.roundMm(round(125), 0.03));
        within(125, mm.value(), 1e-11);
        assertEquals(mm.low(), mm.high());
    }

    @Test
    void round_outsideRange_refused() {
        refused(EqualFriction.roundMm(rectangle(100, 50), 0), "none");
        refused(EqualFriction.sizingRoundMm(rectangle(100, 50), 1), "m/s");
    }
}
