package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColebrookFrictionTest {
    /** python3-fluids 1.0.22, friction.Colebrook(Re, eD): at 4000, 10 000, 20 000, 50 000 and 100 000. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.03991, 0.03088, 0.02588, 0.02089, 0.01799",
        "0.0001, 0.04001, 0.03104, 0.02610, 0.02125, 0.01851",
        "0.0009, 0.04081, 0.03224, 0.02775, 0.02374, 0.02183",
        "0.005, 0.04471, 0.03763, 0.03447, 0.03217, 0.03131",
        "0.01, 0.04908, 0.04313, 0.04071, 0.03908, 0.03850",
        "0.03, 0.06408, 0.06011, 0.05867, 0.05778, 0.05748"
    })
    void factor_table(double roughness, double f4, double f10, double f20, double f50, double f100) {
        assertEquals(f4, known(ColebrookFriction.factor(4e3, roughness)), 6e-6);
        assertEquals(f10, known(ColebrookFriction.factor(1e4, roughness)), 6e-6);
        assertEquals(f20, known(ColebrookFriction.factor(2e4, roughness)), 6e-6);
        assertEquals(f50, known(ColebrookFriction.factor(5e4, roughness)), 6e-6);
        assertEquals(f100, known(ColebrookFriction.factor(1e5, roughness)), 6e-6);
    }

    /** python3-fluids 1.0.22, friction.Colebrook(Re, eD), all digits; the corners of the range among them. */
    @ParameterizedTest
    @CsvSource({
        "4000, 0, 0.039907014055635",
        "4000, 0.05, 0.076986834889225",
        "8454, 0.0009, 0.033555238222642",
        "1e5, 0.005, 0.031306382937087",
        "1e8, 1e-6, 0.006432556519692",
        "1e8, 0.05, 0.071550904091083"
    })
    void factor_allDigits(double reynolds, double roughness, double factor) {
        within(factor, known(ColebrookFriction.factor(reynolds, roughness)), 1e-12);
    }

    /** White, Fluid Mechanics, example 6.18: three pipes of water, f as printed beside their relative roughness. */
    @ParameterizedTest
    @CsvSource({"3.46, 0.08, 0.003, 0.0267", "2.55, 0.06, 0.002, 0.0246", "2.52, 0.04, 0.005, 0.0313"})
    void factor_textbook(double speedMs, double diameterM, double roughness, double factor) {
        within(factor, known(ColebrookFriction.factor(speedMs * diameterM / 1.02e-6, roughness)), 3e-3);
    }

    /** The equation itself, Colebrook 1939: what is left of it is rounding. */
    @Property(tries = 500)
    void factor_solvesTheEquation(
            @ForAll @DoubleRange(min = 3.6021, max = 8) @Scale(6) double log,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double roughness) {
        double reynolds = Math.pow(10, log);
        double x = 1 / Math.sqrt(known(ColebrookFriction.factor(reynolds, roughness)));
        double right = -2 * Math.log10(roughness / 3.7 + 2.51 * x / reynolds);
        assertEquals(right, x, 2e-13);
    }

    @Test
    void factor_outsideRange_refused() {
        refused(ColebrookFriction.factor(3999, 0.001), "3999", "from 4000");
        refused(ColebrookFriction.factor(1.1e8, 0.001), "110000000");
        refused(ColebrookFriction.factor(1e4, 0.051), "roughness of 0.051");
        refused(ColebrookFriction.factor(1e4, -1e-3), "-0.001");
        refused(ColebrookFriction.factor(Double.NaN, 0), "NaN");
    }
}
