package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RetypedTest {
    @Test
    void whatTheNewWordsDontSay_isKept() {
        retyped("200 \u00b1 1 maker", "205", "205 \u00b1 1 maker");
        retyped("200 +/- 1 maker", "205", "205 \u00b1 1 maker");
        retyped("200 +0/-2", "205", "205 +0/-2");
        retyped("200 \u00b1 1 maker", "205 \u00b1 2", "205 \u00b1 2 maker");
        retyped("200 \u00b1 1 maker", "205 measured", "205 \u00b1 1 measured");
        retyped("200 \u00b1 1 maker", "205 \u00b1 0 assumed", "205 \u00b1 0 assumed");
        retyped("180 out", "150", "150 out");
        retyped("180 \u00b1 2 measured out", "150", "150 \u00b1 2 measured out");
        retyped("1950", "1945.5", "1945.5");
        retyped("-300", "-250", "-250");
    }

    @Test
    void units_areKeptWhereANumberNeedsOne() {
        retyped("25 L/s", "30", "30 L/s");
        retyped("1720 kg \u00b1 40 kg", "1700", "1700 kg \u00b1 40 kg");
        retyped("12 degC \u00b1 2", "14", "14 degC \u00b1 2");
        retyped("12 degC \u00b1 2", "55 degF", "55 degF \u00b1 2 degC");
        retyped("70 %", "75", "75 %");
        retyped("70 %", "0.75", "0.75");
        retyped("48 kg", "50 lb", "50 lb");
    }

    @Test
    void bareLengths_areInTheFilesUnit_andToleranceStaysWhatItWas() {
        retyped("15 mm", "16", "16");
        retyped("8 in \u00b1 1/8", "8 1/4 in", "8 1/4 in \u00b1 1/8");
        retyped("8 in \u00b1 1/8", "200", "200 \u00b1 1/8 in");
        retyped("8 in +1/8/-1/4", "200", "200 +1/8 in/-1/4 in");
        retyped("1.93 m \u00b1 5 mm", "1950", "1950 \u00b1 5 mm");
        retyped("200 \u00b1 3", "20 cm", "20 cm \u00b1 3 mm");
        assertEquals("200 mm \u00b1 1/8 in", Retyped.over("8 \u00b1 1/8", "200 mm", Unit.INCH));
        assertEquals("9 \u00b1 1/8", Retyped.over("8 \u00b1 1/8", "9", Unit.INCH));
    }

    @Test
    void pairs() {
        retyped("640..1380 measured", "650..1380", "650..1380 measured");
        retyped("90 \u00b1 2..1890 \u00b1 1", "95..1900", "95 \u00b1 2..1900 \u00b1 1");
        retyped("60 kg..110 kg", "65 kg..110 kg", "65 kg..110 kg");
        retyped("120 L/s at 30 Pa", "130 L/s", "130 L/s at 30 Pa");
        retyped("120 L/s at 30 Pa maker", "130", "130 L/s at 30 Pa maker");
        retyped("640", "640..1380", "640..1380");
    }

    @Test
    void wordsThatAreNoQuantity_onlyChange() {
        retyped("lobby-top", "lab-top", "lab-top");
        retyped("Pump as drawn by its maker", "Pump", "Pump");
        retyped("3 rooms measured", "4 rooms", "4 rooms");
        retyped("200 \u00b1 1 maker", "docked", "docked");
        retyped("closed", "40 deg", "40 deg");
        retyped("rest", "350", "350");
    }

    private static void retyped(String old, String fresh, String stands) {
        assertEquals(stands, Retyped.over(old, fresh, Unit.MILLIMETRE), fresh + " over " + old);
        assertEquals(stands, Retyped.over(stands, stands, Unit.MILLIMETRE));
    }
}
