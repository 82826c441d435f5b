package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HuebscherEquivalentTest {
    /** Millimetre table "Equivalent diameter" of a public engineering reference page; within 1 mm. */
    @ParameterizedTest
    @CsvSource({
        "100, 100, 109", "100, 150, 133", "100, 200, 152", "100, 250, 168", "100, 300, 183", "100, 400, 207",
        "100, 500, 227", "150, 150, 164", "150, 200, 189", "150, 250, 210", "150, 300, 229", "150, 500, 287",
        "150, 600, 310", "200, 200, 219", "200, 250, 244", "200, 300, 266", "200, 400, 305", "200, 500, 337",
        "200, 600, 365", "250, 250, 273", "250, 300, 299", "250, 400, 343", "250, 500, 381", "250, 600, 414",
        "250, 800, 470", "300, 300, 328", "300, 400, 378", "300, 500, 420", "300, 600, 457", "300, 800, 520",
        "300, 1000, 574"
    })
    void equivalent_printedMillimetres(double aMm, double bMm, double printedMm) {
        assertEquals(printedMm, known(HuebscherEquivalent.mm(aMm, bMm)), 1);
        assertEquals(printedMm, known(HuebscherEquivalent.mm(bMm, aMm)), 1);
    }

    /** Heating, Ventilating, Air Conditioning Guide 1956, chapter 32, table 1; inches, within 0.07. */
    @ParameterizedTest
    @CsvSource({
        "10, 3, 5.7", "12, 3, 6.2", "14, 3, 6.6", "16, 3, 7.0", "10, 4, 6.8", "12, 4, 7.3", "16, 4, 8.3",
        "10, 5, 7.6", "12, 5, 8.3", "16, 5, 9.4", "6, 6, 6.6", "8, 8, 8.8", "10, 10, 10.9", "12, 12, 13.1"
    })
    void equivalent_printedInches(double aIn, double bIn, double printedIn) {
        double inch = 25.4;
        assertEquals(printedIn, known(HuebscherEquivalent.mm(aIn * inch, bIn * inch)) / inch, 0.07);
    }

    /** Small and thin sizes worked out with python3-fluids 1.0.22's arithmetic; beyond 8:1 nobody tested any. */
    @ParameterizedTest
    @CsvSource({
        "100, 15, 38.4",
        "300, 15, 59.2",
        "200, 20, 60.2",
        "400, 25, 90.5",
        "150, 30, 68.1",
        "600, 40, 141.3",
        "300, 50, 122.5",
        "100, 60, 84.0",
        "600, 75, 206.5"
    })
    void equivalent_thin(double aMm, double bMm, double mm) {
        within(mm, HuebscherEquivalent.beyondTestsMm(aMm, bMm), 3e-3);
    }

    /** The formula worked out apart, in Python. */
    @Test
    void equivalent_allDigits() {
        within(182.653979503, known(HuebscherEquivalent.mm(100, 300)), 1e-11);
    }

    @Test
    void equivalent_flatterThanTested_refused() {
        within(206.5, known(HuebscherEquivalent.mm(600, 75)), 1e-3);
        refused(HuebscherEquivalent.mm(601, 75), "8.0133", "1 to 8");
        refused(HuebscherEquivalent.mm(25, 314), "12.56");
    }
}
