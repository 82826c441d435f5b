package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.rectangle;
import static org.spile.analysis.duct.Reckoned.refused;
import static org.spile.analysis.duct.Reckoned.round;
import static org.spile.analysis.duct.Reckoned.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.house.duct.Section;

class CarryingWidthTest {
    /** python3-fluids 1.0.22, Colebrook without blend, method J, as a 100 mm pipe carries; 10, 20 and 40 L/s; 1 %. */
    @ParameterizedTest
    @CsvSource({"20, 862, 830, 802", "25, 582, 565, 550", "40, 266, 263, 259", "60, 148, 147, 147"})
    void width_table(double depthMm, double at10, double at20, double at40) {
        within(at10, width(depthMm, 0.01), 4e-3);
        within(at20, width(depthMm, 0.02), 4e-3);
        within(at40, width(depthMm, 0.04), 4e-3);
    }

    private static double width(double depthMm, double flowM3s) {
        return known(CarryingWidth.mm(round(100), SectionShape.RECTANGULAR, depthMm, flowM3s));
    }

    @Test
    void width_losesWhatThePipeLoses() {
        within(round(100).paPerM(0.02), rectangle(width(30, 0.02), 30).paPerM(0.02), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"RECTANGULAR", "FLAT_OVAL"})
    void surely_everyMethodAgrees(SectionShape shape) {
        double wideMm = known(CarryingWidth.surelyMm(round(100), shape, 25, 0.02));
        Spread pa = known(known(StraightDuct.of(shape.of(wideMm, 25), 0.09, Reckoned.AIR))
                        .at(0.02))
                .paPerM();
        assertTrue(pa.high() <= round(100).paPerM(0.02) * (1 + 1e-9), pa.toString());
        assertTrue(wideMm >= known(CarryingWidth.mm(round(100), shape, 25, 0.02)) - 1e-9);
    }

    @Test
    void width_deeperThanThePipe_isNarrower() {
        assertTrue(width(150, 0.02) < 100);
    }

    @Test
    void width_nothingCarries_saysSo() {
        refused(CarryingWidth.mm(round(400), SectionShape.RECTANGULAR, 8, 0.2), "depth of 8 mm", "200 times");
        refused(CarryingWidth.mm(round(100), SectionShape.RECTANGULAR, 0.8, 0.02), "roughness");
        refused(CarryingWidth.mm(round(100), SectionShape.RECTANGULAR, 25, 1), "m/s");
    }

    @Test
    void shape_flatOvalStaysOne() {
        assertTrue(SectionShape.like(new Section.FlatOval(200, 50)) == SectionShape.FLAT_OVAL);
        assertTrue(SectionShape.like(new Section.Round(50)) == SectionShape.RECTANGULAR);
    }
}
