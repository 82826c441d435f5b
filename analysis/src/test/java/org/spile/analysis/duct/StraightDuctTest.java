package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.analysis.duct.Reckoned.AIR;
import static org.spile.analysis.duct.Reckoned.duct;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.rectangle;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.round;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.house.duct.Section;

class StraightDuctTest {
    /** python3-fluids 1.0.22, Colebrook then Darcy-Weisbach: speed, Re, loss. */
    @ParameterizedTest
    @CsvSource({
        "100, 10, 0.09, 1.273, 8454, 0.3275",
        "100, 20, 0.09, 2.546, 16907, 1.1207",
        "100, 40, 0.09, 5.093, 33815, 3.9383",
        "125, 30, 0.09, 2.445, 20289, 0.7861",
        "80, 12, 0.03, 2.387, 12680, 1.2724",
        "150, 60, 0.09, 3.395, 33815, 1.1323",
        "100, 20, 0.9, 2.546, 16907, 1.5635",
        "100, 20, 3, 2.546, 16907, 2.3009"
    })
    void round_table(double diameterMm, double flowLs, double roughMm, double speed, double reynolds, double paPerM) {
        FrictionLoss loss = known(duct(new Section.Round(diameterMm), roughMm).at(flowLs * 1e-3));
        within(speed, loss.speedMs(), 3e-4);
        within(reynolds, loss.reynolds(), 1e-4);
        within(paPerM, loss.paPerM().value(), 1e-4);
        assertEquals(loss.paPerM().low(), loss.paPerM().high());
    }

    /** Chart readings of a worked duct problem, in.wg per 100 ft; they are read to 10 %, and Darcy lies below each. */
    @ParameterizedTest
    @CsvSource({"10, 400, 0.09, 0.0854", "9, 280, 0.08, 0.0746", "6, 120, 0.12, 0.1155"})
    void round_chart(double inches, double cfm, double chart, double darcy) {
        double flowM3s = cfm * 0.028316846592 / 60;
        double paPerM = duct(new Section.Round(inches * 25.4), 0.09).paPerM(flowM3s);
        double inWgPer100Ft = paPerM * 30.48 / 249.08891;
        within(chart, inWgPer100Ft, 0.1);
        within(darcy, inWgPer100Ft, 2e-3);
    }

    /** Same area, not the same duct: python3-fluids 1.0.22, methods J, D and H; 0.5 %. */
    @ParameterizedTest
    @CsvSource({
        "60, 131, 10, 6952, 6885, 0.421, 0.420, 0.416",
        "40, 196, 10, 5627, 4696, 0.583, 0.556, 0.541",
        "25, 314, 10, 3917, 2886, 0.689, 0.868, 0.833",
        "20, 393, 10, 3215, 2290, 0.716, 0.911, 1.053",
        "60, 131, 20, 13905, 13771, 1.435, 1.432, 1.428",
        "40, 196, 20, 11253, 9393, 1.967, 1.890, 1.861",
        "25, 314, 20, 7834, 5772, 3.218, 2.998, 2.884",
        "20, 393, 20, 6430, 4579, 4.180, 3.856, 3.658",
        "60, 131, 40, 27809, 27541, 5.031, 5.023, 5.036",
        "40, 196, 40, 22507, 18785, 6.828, 6.612, 6.590",
        "25, 314, 40, 15668, 11544, 11.054, 10.440, 10.281",
        "20, 393, 40, 12861, 9159, 14.294, 13.395, 13.089"
    })
    void rectangle_table(
            double highMm, double wideMm, double flowLs, double re, double star, double j, double d, double h) {
        FrictionLoss loss = known(rectangle(wideMm, highMm).at(flowLs * 1e-3));
        within(re, loss.reynolds(), 1e-4);
        within(star, loss.equivalentReynolds(), 2e-4);
        within(j, loss.paPerM().value(), 2e-3);
        assertTrue(loss.paPerM().low() <= 0.95 * j * 1.002);
        assertTrue(loss.paPerM().high() >= 1.05 * j * 0.998);
        boolean flat = wideMm > 8 * highMm;
        boolean between = Math.min(d, h) * 1.005 >= loss.paPerM().low()
                && Math.max(d, h) * 0.995 <= loss.paPerM().high();
        assertTrue(between || !flat, loss.toString());
        Bore plain =
                new Bore(HydraulicDiameter.mm(wideMm * highMm, 2 * (wideMm + highMm)) / 1e3, wideMm * highMm / 1e6, 1);
        within(d, plain.paPerM(flowLs * 1e-3, 9e-5, AIR, FrictionPolicy::at), 2e-3);
        Bore handbook = Bore.round(HuebscherEquivalent.beyondTestsMm(wideMm, highMm) / 1e3);
        within(h, handbook.paPerM(flowLs * 1e-3, 9e-5, AIR, FrictionPolicy::at), 2e-3);
    }

    /** Laminar, method J gives Shah and London's solution within 2 %. */
    @ParameterizedTest
    @CsvSource({"60, 60", "120, 60", "240, 30", "200, 10"})
    void rectangle_laminar(double wideMm, double highMm) {
        double flow = 5e-4;
        FrictionLoss loss =
                known(duct(new Section.Rectangular(wideMm, highMm), 0).at(flow));
        assertEquals(Regime.LAMINAR, loss.regime());
        double product = known(ShahLondonLaminar.factorTimesReynolds(highMm / wideMm));
        double hydraulicM = HydraulicDiameter.mm(new Section.Rectangular(wideMm, highMm)) / 1e3;
        double exact = DarcyWeisbach.paPerM(product / loss.reynolds(), hydraulicM, 1.204, loss.speedMs());
        within(exact, loss.paPerM().value(), 0.02);
    }

    /** Depth 25 to 22 mm at 314 mm and 20 L/s costs 47 %: python3-fluids 1.0.22, Colebrook with method J. */
    @Test
    void rectangle_losesDepthDearly() {
        within(1.47, rectangle(314, 22).paPerM(0.02) / rectangle(314, 25).paPerM(0.02), 5e-3);
    }

    @Test
    void band_inTheTransition_isThirtyPercentAndTheTurbulentValue() {
        StraightDuct duct = rectangle(196, 40);
        FrictionLoss loss = known(duct.at(0.0065));
        assertEquals(Regime.TRANSITIONAL, loss.regime());
        within(0.7 * loss.paPerM().value(), loss.paPerM().low(), 1e-12);
        within(
                Math.max(1.3 * loss.paPerM().value(), duct.sizingPaPerM(0.0065)),
                loss.paPerM().high(),
                1e-12);
    }

    @Test
    void flatOval_laminar_isPoissons() {
        var oval = new Section.FlatOval(200, 50);
        FrictionLoss loss = known(duct(oval, 0.09).at(1e-3));
        assertEquals(Regime.LAMINAR, loss.regime());
        double hydraulicM = HydraulicDiameter.mm(oval) / 1e3;
        double poisson = DarcyWeisbach.paPerM(77.6485 / loss.reynolds(), hydraulicM, 1.204, loss.speedMs());
        within(poisson, loss.paPerM().value(), 1e-3);
        within(0.95 * poisson, loss.paPerM().low(), 1e-3);
        within(1.05 * poisson, loss.paPerM().high(), 1e-3);
    }

    /** Turbulent, Heyt and Diaz' equivalent, tested in the wind, lies in the band; and an oval that is a circle is one. */
    @Test
    void flatOval_turbulent_hearsTheHandbook() {
        var oval = new Section.FlatOval(200, 50);
        Spread pa = known(duct(oval, 0.09).at(0.03)).paPerM();
        double handbook = round(known(HeytDiazEquivalent.mm(oval))).paPerM(0.03);
        assertTrue(pa.low() <= handbook && handbook <= pa.high());
        within(pa.value(), handbook, 0.06);
        assertEquals(
                known(round(80).at(0.01)),
                known(duct(new Section.FlatOval(80, 80), 0.09).at(0.01)));
    }

    /** Laminar by both Reynolds numbers, only method J has a say; between them the others are heard. */
    @Test
    void rectangle_veryFlat_laminar() {
        Spread quiet = known(rectangle(393, 20).at(0.005)).paPerM();
        within(1.05 * quiet.value(), quiet.high(), 1e-12);
        FrictionLoss loss = known(rectangle(393, 20).at(0.01));
        assertEquals(Regime.LAMINAR, loss.regime());
        within(1.053, loss.paPerM().high(), 2e-3);
    }

    @Test
    void limits_saidNotStretched() {
        refused(StraightDuct.of(new Section.Round(50), 2.6, AIR), "0.052");
        refused(StraightDuct.of(new Section.Round(50), -0.1, AIR), "-0.002");
        refused(round(100).at(0), "none");
        refused(round(100).at(Double.NaN), "NaN");
        refused(round(100).at(0.3), "38.2 m/s", "34 m/s");
        within(34 * Math.PI * 0.0025, round(100).mostFlowM3s(), 1e-12);
        assertEquals(0, round(100).paPerM(0));
        assertThrows(IllegalArgumentException.class, () -> round(100).paPerM(-1e-3));
        assertThrows(IllegalArgumentException.class, () -> round(100).sizingPaPerM(Double.POSITIVE_INFINITY));
    }
}
