package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.measure.Refusal.Reason;

/** Every refusal, rendered with what somebody could type. */
class RefusalTest {
    private static final QuantityText MM = QuantityText.inMillimetres();
    private static final String LENGTH = " A length is 208, 208 mm, 208 in or 6 ft 2 in.";

    @Test
    void emptyOrNoNumber() {
        size("", Reason.EMPTY, "Nothing is written here." + LENGTH);
        size("  ", Reason.EMPTY, "Nothing is written here." + LENGTH);
        size("wide", Reason.NO_NUMBER, "\"wide\" is not a length." + LENGTH);
        size("mm", Reason.NO_NUMBER, "\"mm\" has no number." + LENGTH);
        size("measured", Reason.NO_NUMBER, "\"measured\" has no number." + LENGTH);
        size("\u00b1 3", Reason.NO_NUMBER, "\"\u00b1 3\" has no value before its tolerance." + LENGTH);
        size("-", Reason.NO_NUMBER, "\"-\" is not a number." + LENGTH);
        size("5/0", Reason.NO_NUMBER, "\"5/0\": \"5/0\" is not a fraction or too long a number." + LENGTH);
        size("2 9/8 in", Reason.NO_NUMBER, "\"2 9/8 in\": \"2 9/8\" is not a fraction or too long a number." + LENGTH);
        asked("1:0", Kind.SLOPE, Reason.NO_NUMBER, "\"1:0\": nothing is divided by 0. A slope is 2 %, 2 mm/m or 1:50.");
        asked("2.5", Kind.COUNT, Reason.NO_NUMBER, "\"2.5\" is not a whole number. A count is written plainly: 2.");
    }

    @Test
    void monsters() {
        size("NaN", Reason.NOT_FINITE, "\"NaN\" is not a number." + LENGTH);
        size(".inf", Reason.NOT_FINITE, "\".inf\" is not a number." + LENGTH);
        size("-Infinity", Reason.NOT_FINITE, "\"-Infinity\" is not a number." + LENGTH);
        size("1e9", Reason.EXPONENT, "\"1e9\": a number is written without an exponent." + LENGTH);
        size("2.5E-300 mm", Reason.EXPONENT, "\"2.5E-300 mm\": a number is written without an exponent." + LENGTH);
        size("0x1F", Reason.UNKNOWN_UNIT, "\"0x1F\": \"x1F\" is no unit of a length." + LENGTH);
        String nines = "9".repeat(25);
        size(
                nines,
                Reason.NO_NUMBER,
                "\"" + nines + "\": \"" + nines + "\" is not a fraction or too long a number." + LENGTH);
        size("9".repeat(300), Reason.SURPLUS, "\"" + "9".repeat(60) + "...\" is too long for a length." + LENGTH);
        size(
                "15\u0000mm",
                Reason.UNKNOWN_UNIT,
                "\"15\ufffdmm\": \"\ufffdmm\" is no unit of a length. Nearest: \"mm\"." + LENGTH);
        size("\u0663\u0664", Reason.NO_NUMBER, "\"\u0663\u0664\" is not a length." + LENGTH);
    }

    @Test
    void ranges() {
        size("250 m", Reason.TOO_LARGE, "\"250 m\" is too much. Nothing here is beyond 100000 mm; is the unit right?");
        asked(
                "-300 degC",
                Kind.TEMPERATURE,
                Reason.TOO_LARGE,
                "\"-300 degC\" is too little. Nothing here is below 150 K; is the unit right?");
        asked(
                "140 %",
                Kind.RATIO, Reason.TOO_LARGE, "\"140 %\" is too much. Nothing here is beyond 1; is the unit right?");
        size("0", Reason.NOTHING, "\"0\": this must be more than nothing." + LENGTH);
    }

    @Test
    void signs() {
        size("-3", Reason.SIGN, "\"-3\": a size has no sign. Write 3.");
        size("\u22123 mm", Reason.SIGN, "\"\u22123 mm\": a size has no sign. Write 3 mm.");
        refused(MM.position("-180", Sign.NOT_NEGATIVE), Reason.SIGN, "\"-180\": a distance has no sign. Write 180.");
        asked("-4 L/s", Kind.FLOW, Reason.SIGN, "\"-4 L/s\": a flow has no sign. Write 4 L/s.");
    }

    @Test
    void units() {
        asked("40", Kind.FLOW, Reason.NO_UNIT, "\"40\" has no unit. A flow is 40 L/s, 40 m3/h or 40 cfm.");
        asked("40", Kind.ANGLE, Reason.NO_UNIT, "\"40\" has no unit. An angle is 40 deg.");
        asked("70", Kind.RATIO, Reason.NO_UNIT, "\"70\" has no unit. A share is 70 %.");
        asked(
                "40 Pa",
                Kind.FLOW,
                Reason.WRONG_UNIT,
                "\"40 Pa\": Pa makes it a pressure. A flow is 40 L/s, 40 m3/h or 40 cfm.");
        asked(
                "12 deg",
                Kind.TEMPERATURE,
                Reason.WRONG_UNIT,
                "\"12 deg\": deg makes it an angle. A temperature is 12 degC or 12 degF.");
        size("1m2", Reason.WRONG_UNIT, "\"1m2\": m2 makes it an area." + LENGTH);
        size("90 m3/h", Reason.WRONG_UNIT, "\"90 m3/h\": m3/h makes it a flow." + LENGTH);
        size("0.1 inH2O", Reason.WRONG_UNIT, "\"0.1 inH2O\": inH2O makes it a pressure." + LENGTH);
        size(
                "15 inchs",
                Reason.UNKNOWN_UNIT,
                "\"15 inchs\": \"inchs\" is no unit of a length. Nearest: \"inch\"." + LENGTH);
        asked(
                "40 cmf",
                Kind.FLOW,
                Reason.UNKNOWN_UNIT,
                "\"40 cmf\": \"cmf\" is no unit of a flow. Nearest: \"cfm\". A flow is 40 L/s, 40 m3/h or 40 cfm.");
        size(
                "208 meassured",
                Reason.UNKNOWN_UNIT,
                "\"208 meassured\": \"meassured\" is no unit of a length. Nearest: \"measured\"." + LENGTH);
        size("15 furlongs", Reason.UNKNOWN_UNIT, "\"15 furlongs\": \"furlongs\" is no unit of a length." + LENGTH);
    }

    @Test
    void commasDashesAndTooMuch() {
        size("0,5 m", Reason.COMMA, "\"0,5 m\": a decimal is written with a point. Write 0.5.");
        size(",5", Reason.COMMA, "\",5\": a decimal is written with a point. Write 0.5.");
        size(
                "1,930",
                Reason.COMMA,
                "\"1,930\": a decimal is written with a point. Write 1930 for the large number, 1.930 for the small one.");
        size("640-1380", Reason.SURPLUS, "\"640-1380\": two numbers with a dash. From one to the other is 640..1380.");
        size(
                "640\u20131380 mm",
                Reason.SURPLUS,
                "\"640\u20131380 mm\": two numbers with a dash. From one to the other is 640..1380.");
        size("300x70", Reason.SURPLUS, "\"300x70\": two sizes in one. Write each under its own key: wide, high, long.");
        size(
                "300 \u00d7 70",
                Reason.SURPLUS,
                "\"300 \u00d7 70\": two sizes in one. Write each under its own key: wide, high, long.");
        size(
                "1 930",
                Reason.SURPLUS,
                "\"1 930\": two numbers without a unit between them. A length is 1, 1 mm, 1 in or 6 ft 2 in.");
        size(
                "15 mm wide",
                Reason.SURPLUS,
                "\"15 mm wide\": \"wide\" does not belong here. Behind a value come a tolerance, then measured, assumed or maker.");
        size(
                "15 mm mesured",
                Reason.SURPLUS,
                "\"15 mm mesured\": \"mesured\" does not belong here. Nearest: \"measured\". Behind a value come a tolerance, then measured, assumed or maker.");
        size(
                "208 maker measured",
                Reason.SURPLUS,
                "\"208 maker measured\": one word too many. One of measured, assumed, maker; then out.");
        size("208 out", Reason.OUT, "\"208 out\": \"out\" belongs to a distance from a face." + LENGTH);
    }

    @Test
    void feetAndMetres() {
        String advice =
                " does not go with what stands before it. Feet and inches are 6 ft 2 in (inches less than 12), metres and centimetres 1m93 or 1.93 m.";
        size("6' 14\"", Reason.FEET_AND_INCHES, "\"6' 14\"\": \"14 in\"" + advice);
        size("6.5' 2\"", Reason.FEET_AND_INCHES, "\"6.5' 2\"\": \"2 in\"" + advice);
        size("2 in 6 ft", Reason.FEET_AND_INCHES, "\"2 in 6 ft\": \"6 ft\"" + advice);
        size("1'930", Reason.FEET_AND_INCHES, "\"1'930\": \"930 in\"" + advice);
        size(
                "1m5",
                Reason.SURPLUS,
                "\"1m5\": \"5\" has no unit. Metres and centimetres are 1m93 or 1.93 m, feet and inches 6 ft 2 in.");
    }

    @Test
    void tolerances() {
        String advice = ": a tolerance is a number without a sign. Write it as \u00b1 3, +/- 3 or +0/-2.";
        size("208 \u00b1", Reason.TOLERANCE, "\"208 \u00b1\"" + advice);
        size("208 \u00b1 -3", Reason.TOLERANCE, "\"208 \u00b1 -3\"" + advice);
        size(
                "208 \u00b1 208",
                Reason.TOLERANCE,
                "\"208 \u00b1 208\": less its tolerance, nothing is left. Write a smaller tolerance.");
        size(
                "1.93 m \u00b1 5",
                Reason.TOLERANCE,
                "\"1.93 m \u00b1 5\": the tolerance would be 5 m. Give it its own unit: \u00b1 5 mm, or \u00b1 5 m.");
        size(
                "1m93 \u00b1 5",
                Reason.TOLERANCE,
                "\"1m93 \u00b1 5\": the tolerance would be 5 cm. Give it its own unit: \u00b1 5 mm, or \u00b1 5 cm.");
        size("20 \u00b1 200 m", Reason.TOLERANCE, "\"20 \u00b1 200 m\": the tolerance is too large." + LENGTH);
        size("208 \u00b1 3 kg", Reason.WRONG_UNIT, "\"208 \u00b1 3 kg\": kg makes it a mass." + LENGTH);
    }

    @Test
    void pairs() {
        String range = " is not a range. A range goes from low to high: 640..1380.";
        refused(MM.position("90..", Sign.NOT_NEGATIVE), Reason.PAIR, "\"90..\"" + range);
        refused(MM.position("..90", Sign.NOT_NEGATIVE), Reason.PAIR, "\"..90\"" + range);
        refused(MM.position("1..2..3", Sign.NOT_NEGATIVE), Reason.PAIR, "\"1..2..3\"" + range);
        refused(
                MM.position("1380..640", Sign.NOT_NEGATIVE),
                Reason.PAIR,
                "\"1380..640\" goes from high to low. Write the lower one first.");
        refused(
                MM.band("110", Ask.of(Kind.MASS)),
                Reason.PAIR,
                "\"110\" is not a range. A range goes from low to high: 60 kg..110 kg.");
        refused(
                MM.band("60..110", Ask.of(Kind.MASS)),
                Reason.NO_UNIT,
                "\"60..110\" has no unit. A mass is 60 kg or 60 lb.");
        refused(
                MM.rated("120 L/s", Ask.of(Kind.FLOW), Ask.of(Kind.PRESSURE)),
                Reason.PAIR,
                "\"120 L/s\" is not one quantity at another. It is written X at Y. A flow is 40 L/s, 40 m3/h or 40 cfm. A pressure is 30 Pa, 30 mmH2O or 30 inH2O.");
    }

    private static void size(String words, Reason reason, String says) {
        refused(MM.reading(words, Ask.size()), reason, says);
    }

    private static void asked(String words, Kind kind, Reason reason, String says) {
        refused(MM.reading(words, Ask.of(kind)), reason, says);
    }

    private static void refused(Parse<?> parse, Reason reason, String says) {
        Refusal refusal = parse.refusal().orElseThrow(() -> new AssertionError(parse.toString()));
        assertEquals(says, refusal.toString());
        assertEquals(reason, refusal.reason(), says);
    }
}
