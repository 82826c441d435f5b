package org.spile.analysis.duct;

import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DarcyWeisbachTest {
    /** python3-fluids 1.0.22, Colebrook then Darcy-Weisbach; f, v and the loss each to four digits. */
    @ParameterizedTest
    @CsvSource({
        "0.03356, 0.1, 1.273, 0.3275",
        "0.02522, 0.1, 5.093, 3.9383",
        "0.02731, 0.125, 2.445, 0.7861",
        "0.02967, 0.08, 2.387, 1.2724",
        "0.02447, 0.15, 3.395, 1.1323"
    })
    void loss_table(double factor, double diameterM, double speedMs, double paPerM) {
        within(paPerM, DarcyWeisbach.paPerM(factor, diameterM, 1.204, speedMs), 1e-3);
    }
}
