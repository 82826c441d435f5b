package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class QuantityTextTest {
    private static final QuantityText MM = QuantityText.inMillimetres();
    private static final QuantityText IN = QuantityText.inInches();

    @Test
    void lengths_asPeopleWriteThem() {
        length("15", 15);
        length("15 mm", 15);
        length("15mm", 15);
        length("40 MM", 40);
        length("1.93 m", 1930);
        length("1m93", 1930);
        length("1 m 93", 1930);
        length("1m935", 1935);
        length("5 m 30 cm", 5300);
        length("26.2 cm", 262);
        length(".5", 0.5);
        length("0.6 in", 15.24);
        length("5/8 in", 15.875);
        length("3/4\"", 19.05);
        length("2 1/2 in", 63.5);
        length("2-1/2 in", 63.5);
        length("6 ft", 1828.8);
        length("6ft5", 1955.8);
        length("6ft2", 1879.6);
        length("6 ft 2 in", 1879.6);
        length("6'", 1828.8);
        length("6' 2", 1879.6);
        length("6'2\"", 1879.6);
        length("6'-2 1/2\"", 1892.3);
        length("14' 2 1/2\"", 4330.7);
    }

    @Test
    void lengths_inTheCharactersThatTextProgramsPutIn() {
        length("14\u2032 2\u00a01\u20442\u2033", 4330.7);
        length("6\u2019 2\u201d", 1879.6);
        length("6' 2''", 1879.6);
        length("2\u00bd in", 63.5);
        length("\u00bd", 0.5);
        length("\u215d in", 15.875);
        length("15\u202fmm", 15);
    }

    @Test
    void bareLengths_areInchesWhereTheFileSaysSo() {
        assertEquals(19.05, meant(IN.reading("3/4", Ask.size())).value());
        assertEquals(
                79.5 * 25.4,
                meant(IN.reading("79 1/2 \u00b1 1/8 measured", Ask.size())).value());
        assertEquals(
                3.175,
                meant(IN.reading("79 1/2 \u00b1 1/8 measured", Ask.size())).plus());
        assertEquals(22, meant(IN.reading("22 mm", Ask.size())).value());
        assertEquals(457.2, meant(IN.reading("1' 6\"", Ask.size())).value());
    }

    @Test
    void otherKinds_carryTheirUnit() {
        read("25 L/s", Kind.FLOW, 0.025);
        read("25 l/s", Kind.FLOW, 0.025);
        read("90 m3/h", Kind.FLOW, 0.025);
        read("90 m\u00b3/h", Kind.FLOW, 0.025);
        read("30 Pa", Kind.PRESSURE, 30);
        read("1 mbar", Kind.PRESSURE, 100);
        read("45 kg", Kind.MASS, 45);
        read("3 lb 8 oz", Kind.MASS, 3.5 * 0.45359237);
        read("12 degC", Kind.TEMPERATURE, 285.15);
        read("-8 \u00b0C", Kind.TEMPERATURE, 265.15);
        read("\u22128 degC", Kind.TEMPERATURE, 265.15);
        read("1500 m", Kind.ALTITUDE, 1500);
        read("-3 m", Kind.ALTITUDE, -3);
        read("1000 ft", Kind.ALTITUDE, 304.8);
        read("70 %", Kind.RATIO, 0.7);
        read("0.7", Kind.RATIO, 0.7);
        read("2 %", Kind.SLOPE, 0.02);
        read("1:50", Kind.SLOPE, 0.02);
        read("1 in 50", Kind.SLOPE, 0.02);
        read("1/4 in/ft", Kind.SLOPE, 1 / 48.0);
        read("2.6 kg/h", Kind.MASS_RATE, 2.6 / 3600);
        read("60 cm2", Kind.AREA, 6000);
        read("0.036 W/mK", Kind.CONDUCTIVITY, 0.036);
        read("2.6 kW", Kind.POWER, 2600);
        read("-30 deg", Kind.ANGLE, -30);
        read("35 dB(A)", Kind.SOUND, 35);
        read("80 L", Kind.VOLUME, 0.08);
        read("7000", Kind.NUMBER, 7000);
        read("2", Kind.COUNT, 2);
    }

    @Test
    void tolerances_inEveryForm() {
        tolerance("208 \u00b1 3", 3, 3);
        tolerance("208\u00b13", 3, 3);
        tolerance("208 +/- 3", 3, 3);
        tolerance("208 +- 3", 3, 3);
        tolerance("208 +0/-2", 0, 2);
        tolerance("208 -2/+0", 0, 2);
        tolerance("208 -2/+1.5", 1.5, 2);
        tolerance("208 + 1 / - 2", 1, 2);
        tolerance("208 \u00b1 1/8 in", 3.175, 3.175);
        tolerance("8 in \u00b1 1/8", 3.175, 3.175);
        tolerance("8 in +1/8/-1/4", 3.175, 6.35);
        tolerance("8 in \u00b1 2 mm", 2, 2);
        tolerance("1.93 m \u00b1 5 mm", 5, 5);
        tolerance("1m93 \u00b1 5 mm", 5, 5);
        tolerance("6' 2\" \u00b1 1/4", 6.35, 6.35);
        assertEquals(
                2,
                meant(MM.reading("12 degC \u00b1 2", Ask.of(Kind.TEMPERATURE))).plus(),
                1e-12);
        assertEquals(
                10 / 9.0,
                meant(MM.reading("50 degF \u00b1 2", Ask.of(Kind.TEMPERATURE))).plus(),
                1e-12);
        assertTrue(meant(MM.reading("208 \u00b1 0", Ask.size())).toleranceTyped());
        assertTrue(!meant(MM.reading("208", Ask.size())).toleranceTyped());
    }

    @Test
    void tolerances_alone() {
        assertEquals(new Tolerance(1, 1), meant(MM.tolerance("\u00b1 1", Kind.LENGTH)));
        assertEquals(new Tolerance(1, 1), meant(MM.tolerance("1", Kind.LENGTH)));
        assertEquals(new Tolerance(0, 2), meant(MM.tolerance("+0/-2", Kind.LENGTH)));
        assertEquals(new Tolerance(3.175, 3.175), meant(IN.tolerance("+/- 1/8", Kind.LENGTH)));
        assertEquals(
                "\"5 \u00b1 1\" is more than a tolerance. Write it as \u00b1 1 or +0/-2.",
                refused(MM.tolerance("5 \u00b1 1", Kind.LENGTH)));
    }

    @Test
    void origins_andOut() {
        assertEquals(
                Origin.MEASURED,
                meant(MM.reading("208 \u00b1 3 measured", Ask.size())).origin());
        assertEquals(
                Origin.ASSUMED, meant(MM.reading("208 assumed", Ask.size())).origin());
        assertEquals(
                Origin.MAKER, meant(MM.reading("27 1/2 in maker", Ask.size())).origin());
        assertEquals(Origin.TYPED, meant(MM.reading("208", Ask.size())).origin());
        assertEquals("Position[180 out]", position("180 out"));
        assertEquals("Position[180 \u00b1 2 measured out]", position("180 \u00b1 2 measured out"));
        assertEquals("Position[180 measured out]", position("180 out measured"));
        assertEquals("Position[0 out]", position("0 out"));
        assertEquals("Position[0]", position("0"));
        assertEquals(
                "208 \u00b1 3 measured",
                meant(MM.reading(" 208 \u00b1 3 measured", Ask.size())).words());
    }

    @Test
    void pairs_ofReadings() {
        assertEquals("Position[640, 1380]", position("640..1380"));
        assertEquals("Position[640, 1380]", position("640 .. 1380"));
        assertEquals("Position[640, 1380]", position("640\u20261380"));
        assertEquals("Position[600, 1100]", position("60..110 cm"));
        assertEquals("Position[600, 1100]", position("0.6 m..110 cm"));
        assertEquals("Position[90 \u00b1 2, 1890 \u00b1 1]", position("90 \u00b1 2..1890 \u00b1 1"));
        assertEquals("Position[-60, 480]", shown(meant(MM.position("-60..480", Sign.ANY))));
        assertEquals("Position[-1130, -710]", shown(meant(MM.position("-1130..-710", Sign.ANY))));
        Band load = meant(MM.band("60 kg..110 kg", Ask.of(Kind.MASS)));
        assertEquals(60, load.low().value());
        assertEquals(110, load.high().value());
        assertEquals(60, meant(MM.band("60..110 kg", Ask.of(Kind.MASS))).low().value());
        assertEquals("c.bunk[2]", load.withPath("c.bunk").high().path());
        assertEquals("640", meant(MM.position("640..1380", Sign.ANY)).first().words());
    }

    @Test
    void ratedPoints() {
        Rated fan = meant(MM.rated("120 L/s at 30 Pa maker", Ask.of(Kind.FLOW), Ask.of(Kind.PRESSURE)));
        assertEquals(0.12, fan.what().value());
        assertEquals(30, fan.at().value());
        assertEquals(Origin.MAKER, fan.at().origin());
        Rated air = meant(MM.rated("31 degC at 75 %", Ask.of(Kind.TEMPERATURE), Ask.of(Kind.RATIO)));
        assertEquals(304.15, air.what().value());
        assertEquals(0.75, air.at().value());
        Rated cooling = meant(MM.rated("2.6 kW at 35 degC", Ask.of(Kind.POWER), Ask.of(Kind.TEMPERATURE)));
        assertEquals(2600, cooling.what().value());
        assertEquals("u.cooling[1]", cooling.withPath("u.cooling").what().path());
    }

    @Test
    void doubts_askAboutBareNumbersOnly() {
        var upright = new Usual(150, 400);
        doubt(MM, "26.2", upright, "26.2 mm is unlikely, 262 mm is usual. Write 26.2 cm; or 26.2 mm if you mean it.");
        doubt(MM, "8", upright, "8 mm is unlikely, 203.2 mm is usual. Write 8 in; or 8 mm if you mean it.");
        doubt(MM, "15", upright, "15 mm is unlikely, 150 mm is usual. Write 15 cm or 15 in; or 15 mm if you mean it.");
        doubt(
                MM,
                "1.93",
                new Usual(1800, 2400),
                "1.93 mm is unlikely, 1930 mm is usual. Write 1.93 m; or 1.93 mm if you mean it.");
        doubt(IN, "208", upright, "208 in is unlikely, 8.19 in is usual. Write 208 mm; or 208 in if you mean it.");
        doubt(
                MM,
                "26.2 \u00b1 0.1 measured",
                upright,
                "26.2 mm is unlikely, 262 mm is usual. Write 26.2 cm; or 26.2 mm if you mean it.");
        doubt(MM, "26.2 mm", upright, "none");
        doubt(MM, "262", upright, "none");
        doubt(MM, "0", upright, "none");
        doubt(MM, "5000", upright, "none");
    }

    private static void length(String words, double mm) {
        assertEquals(mm, meant(MM.reading(words, Ask.size())).value(), words);
    }

    private static void read(String words, Kind kind, double base) {
        assertEquals(base, meant(MM.reading(words, Ask.of(kind))).value(), Math.abs(base) * 1e-15, words);
    }

    private static void tolerance(String words, double plus, double minus) {
        Reading reading = meant(MM.reading(words, Ask.size()));
        assertEquals(plus, reading.plus(), 1e-12, words);
        assertEquals(minus, reading.minus(), 1e-12, words);
        assertTrue(reading.toleranceTyped(), words);
    }

    private static void doubt(QuantityText text, String words, Usual usual, String says) {
        Reading reading = meant(text.reading(words, Ask.distance()));
        assertEquals(
                says,
                text.doubt(reading, usual).map(d -> d.says() + " " + d.advice()).orElse("none"),
                words);
    }

    private static String position(String words) {
        return shown(meant(MM.position(words, Sign.NOT_NEGATIVE)));
    }

    private static String shown(Position position) {
        String readings = String.join(
                ", ", position.readings().stream().map(Written::reading).toList());
        return "Position[" + readings + (position.outward() ? " out]" : "]");
    }

    private static <T> T meant(Parse<T> parse) {
        return parse.value().orElseThrow(() -> new AssertionError(parse.toString()));
    }

    private static String refused(Parse<?> parse) {
        return parse.refusal()
                .orElseThrow(() -> new AssertionError(parse.toString()))
                .toString();
    }
}
