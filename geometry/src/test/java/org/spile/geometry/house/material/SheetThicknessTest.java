package org.spile.geometry.house.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.kernel.measure.Tolerance;

/** Against the printed tables named in each {@link SheetThickness#source()}. */
class SheetThicknessTest {
    @ParameterizedTest
    @CsvSource({
        "0.5, 1000, 0.03", "0.6, 1200, 0.03", "0.6, 1201, 0.04", "0.61, 1000, 0.04", "0.8, 1600, 0.06",
                "1.0, 1500, 0.06",
        "1.2, 1000, 0.06", "1.5, 1250, 0.09", "2.0, 2000, 0.12", "2.5, 1500, 0.13", "3.0, 1250, 0.15", "3.0, 1600, 0.16"
    })
    void coldRolled_en10131(double thickMm, double widthMm, double eitherMm) {
        assertEquals(Optional.of(new Tolerance(eitherMm, eitherMm)), SheetThickness.COLD_ROLLED.of(thickMm, widthMm));
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 1000, 0.04", "0.6, 1200, 0.04", "0.6, 1500, 0.05", "0.7, 1000, 0.05", "0.8, 1600, 0.07",
                "1.0, 1500, 0.07",
        "1.2, 1000, 0.07", "1.5, 1250, 0.11", "2.0, 2000, 0.14", "2.5, 1500, 0.15", "3.0, 1250, 0.17", "3.0, 1600, 0.18"
    })
    void hotDipCoated_en10143(double thickMm, double widthMm, double eitherMm) {
        assertEquals(
                Optional.of(new Tolerance(eitherMm, eitherMm)), SheetThickness.HOT_DIP_COATED.of(thickMm, widthMm));
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 1000, 0.045", "0.59, 1250, 0.05", "0.6, 1000, 0.05", "0.8, 1000, 0.055", "0.99, 1500, 0.06",
        "1.0, 1250, 0.07", "1.2, 1000, 0.07", "1.5, 1500, 0.10", "2.0, 1000, 0.09", "2.49, 1500, 0.11"
    })
    void stainless_en10259(double thickMm, double widthMm, double eitherMm) {
        assertEquals(Optional.of(new Tolerance(eitherMm, eitherMm)), SheetThickness.STAINLESS.of(thickMm, widthMm));
    }

    @Test
    void aBoundTypedInInches_isTheSameBound() {
        double inches = 0.02362204724409449;
        assertEquals(
                SheetThickness.HOT_DIP_COATED.of(0.6, 1000), SheetThickness.HOT_DIP_COATED.of(inches * 25.4, 1000));
        assertEquals(SheetThickness.HOT_DIP_COATED.of(0.6, 1000), SheetThickness.HOT_DIP_COATED.of(0.6 - 1e-13, 1000));
    }

    @Test
    void outsideTheTable_nothing() {
        assertEquals(Optional.empty(), SheetThickness.COLD_ROLLED.of(0.4, 1000));
        assertEquals(Optional.empty(), SheetThickness.HOT_DIP_COATED.of(3.01, 1000));
        assertEquals(Optional.empty(), SheetThickness.STAINLESS.of(0.5, 1500));
        assertEquals(Optional.empty(), SheetThickness.STAINLESS.of(2.5, 1000));
        assertEquals(Optional.empty(), SheetThickness.STAINLESS.of(1.0, 1501));
        assertEquals(Optional.empty(), SheetThickness.COLD_ROLLED.of(Double.NaN, 1000));
    }
}
