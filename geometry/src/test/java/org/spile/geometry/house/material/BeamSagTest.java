package org.spile.geometry.house.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A softwood joist 45 x 145 on edge, E 11 000 MPa, over 2400 mm; by the formulas of any strength-of-materials text. */
class BeamSagTest {
    private static final double SHOWN = 5e-5;

    @Test
    void joist_underItsMiddleAndUnderAnEvenLoad() {
        double second = BeamSag.rectangleMm4(45, 145);
        assertEquals(11_432_344, second, 1);
        assertEquals(1.0306, BeamSag.underMidLoadMm(450, 2400, 11_000, second), SHOWN);
        assertEquals(1.0306, BeamSag.underEvenLoadMm(0.3, 2400, 11_000, second), SHOWN);
    }

    /** pi d^4 / 64 of 20 is 7853.98. */
    @Test
    void round_hasItsOwnSecondMoment() {
        assertEquals(7853.98, BeamSag.roundMm4(20), 5e-3);
    }
}
