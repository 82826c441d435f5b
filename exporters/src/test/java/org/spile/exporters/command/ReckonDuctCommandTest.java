package org.spile.exporters.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReckonDuctCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static Answer asked(String... words) {
        return Answer.to(join(words));
    }

    private static String[] join(String... words) {
        List<String> all = new ArrayList<>(List.of("reckon", "duct"));
        all.addAll(Arrays.asList(words));
        return all.toArray(String[]::new);
    }

    private static JsonNode json(String... words) throws IOException {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.add("--json");
        var answer = asked(all.toArray(String[]::new));
        assertEquals(0, answer.status(), answer.err());
        return JSON.readTree(answer.out());
    }

    private static void near(double expected, JsonNode quantity, String unit, double share) {
        assertEquals(unit, quantity.get("unit").asText(), quantity.toString());
        assertEquals(expected, quantity.get("number").asDouble(), expected * share);
    }

    /** Same area, not the same duct: python3-fluids 1.0.22, dry air of 20 degC, method J; a 100 mm pipe takes 1.121. */
    @ParameterizedTest
    @CsvSource({"131, 60, 1.435, 1.28", "196, 40, 1.967, 1.75", "314, 25, 3.218, 2.87", "393, 20, 4.180, 3.73"})
    void sameArea_isNotTheSameDuct(String wide, String high, double paPerM, double ratio) throws IOException {
        var sum = json("--wide", wide, "--high", high, "--flow", "20 L/s", "--humidity", "0 %", "--instead-of", "100");
        near(paPerM, sum.at("/flow/friction/value"), "Pa/m", 2e-3);
        near(1.121, sum.at("/instead/pipe friction"), "Pa/m", 1e-3);
        near(ratio, sum.at("/instead/times the pipe's"), "", 3e-3);
        assertEquals(
                "no: it loses more by every method",
                sum.at("/instead/carries like it").asText());
        assertTrue(sum.at("/flow/equal round/high/number").asDouble()
                < sum.at("/section/round of equal area/number").asDouble());
    }

    /** Widths as a 100 mm pipe carries: python3-fluids 1.0.22, Colebrook without blend, method J; 1 %. */
    @ParameterizedTest
    @CsvSource({"20, 830", "25, 565", "40, 263", "60, 147"})
    void width_carriesLikeThePipe(String high, double wideMm) throws IOException {
        var sum = json("--high", high, "--instead-of", "100", "--flow", "20 L/s");
        near(wideMm, sum.at("/instead/width"), "mm", 5e-3);
        assertTrue(sum.at("/instead/sure width/number").asDouble() > wideMm);
        assertTrue(sum.path("section").isMissingNode());
        var back = json(
                "--wide",
                Double.toString(sum.at("/instead/sure width/number").asDouble() + 0.001),
                "--high",
                high,
                "--instead-of",
                "100",
                "--flow",
                "20 L/s");
        assertEquals(
                "yes: it loses no more by any method",
                back.at("/instead/carries like it").asText());
    }

    /** Millimetre table of a public engineering reference page; Guide 1956, chapter 32, table 1, in inches. */
    @Test
    void handbookRound_asPrinted() throws IOException {
        near(183, json("--wide", "300", "--high", "100").at("/section/handbook round"), "mm", 0.004);
        near(6.2, json("--wide", "12", "--high", "3", "--lengths", "in").at("/section/handbook round"), "in", 0.01);
        near(102.4, json("--wide", "200", "--high", "50", "--oval").at("/section/handbook round"), "mm", 3e-3);
        assertTrue(json("--wide", "314", "--high", "25")
                .at("/section/handbook round/not known")
                .asText()
                .contains("12.56"));
    }

    @Test
    void inches_areTheSameDuct() throws IOException {
        var inches = json("--wide", "8", "--high", "3", "--lengths", "in", "--flow", "25 L/s", "--instead-of", "4");
        var metric = json("--wide", "203.2", "--high", "76.2", "--flow", "25 L/s", "--instead-of", "101.6");
        assertEquals(metric.at("/flow/friction"), inches.at("/flow/friction"));
        near(metric.at("/instead/width/number").asDouble() / 25.4, inches.at("/instead/width"), "in", 1e-6);
        near(24, inches.at("/section/area"), "in2", 1e-9);
    }

    @Test
    void length_multiplies() throws IOException {
        var sum = json("--round", "100", "--flow", "20 L/s", "--long", "4 m");
        near(4 * sum.at("/flow/friction/number").asDouble(), sum.at("/flow/friction over length"), "Pa", 1e-5);
    }

    /** python3-fluids 1.0.22, Colebrook then Darcy-Weisbach, counted up at 50 L/s. */
    @Test
    void smallRounds_counted() throws IOException {
        var sum = json("--round", "200", "--flow", "50 L/s", "--small", "100", "--humidity", "0 %");
        near(7, sum.at("/flow/rounds of 100 mm"), "", 0);
    }

    @Test
    void faceAndAir_count() throws IOException {
        double usual = json("--round", "100", "--flow", "20 L/s")
                .at("/flow/friction/number")
                .asDouble();
        double flexible = json("--round", "100", "--flow", "20 L/s", "--face", "flexible")
                .at("/flow/friction/number")
                .asDouble();
        double rough = json("--round", "100", "--flow", "20 L/s", "--rough", "0.9 mm")
                .at("/flow/friction/number")
                .asDouble();
        assertEquals(flexible, rough);
        assertTrue(flexible > 1.3 * usual);
        var high = json("--round", "100", "--flow", "20 L/s", "--altitude", "1500 m", "--temperature", "20 degC");
        near(0.9996, high.at("/flow/density"), "kg/m3", 1e-4);
        assertTrue(high.at("/flow/friction/number").asDouble() < usual);
    }

    @Test
    void noFlow_saysWhatIsMissing() {
        var answer = asked("--wide", "314", "--high", "25", "--instead-of", "100");
        assertEquals(0, answer.status());
        assertTrue(answer.out().contains("no flow was said; write --flow"), answer.out());
        assertTrue(answer.out().contains("from 5"), answer.out());
    }

    @Test
    void transition_isLabelled() {
        var answer = asked("--wide", "196", "--high", "40", "--flow", "6.5 L/s");
        assertTrue(answer.out().replaceAll("\\s+", " ").contains("give or take 30 %"), answer.out());
        assertTrue(answer.out().replaceAll("\\s+", " ").contains("size it by the upper bound"), answer.out());
    }

    @Test
    void text_fitsAScreenAndDefersToOthers() {
        var answer = asked("--wide", "314", "--high", "25", "--flow", "20 L/s", "--instead-of", "100", "--long", "3 m");
        answer.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        assertTrue(answer.out().contains("licensed trades decide"));
        assertTrue(answer.out().contains("a millimetre of depth counts"));
        assertFalse(answer.out().contains("null"));
    }

    @Test
    void tooFast_notKnown() throws IOException {
        assertTrue(json("--round", "50", "--flow", "500 L/s")
                .at("/flow/friction/not known")
                .asText()
                .contains("34 m/s"));
    }

    @Test
    void badUnits_asInTheHouseFile() {
        asked("--round", "100", "--flow", "25")
                .assertRefused("--flow: \"25\" has no unit", "25 L/s, 25 m3/h or 25 cfm");
        asked("--round", "100 L/s").assertRefused("--round:", "A length is");
        asked("--round", "-5").assertRefused("--round:", "");
        asked("--round", "0").assertRefused("--round:", "");
        asked("--round", "100 ± 2").assertRefused("more than a number and a unit", "ask twice");
        asked("--round", "100", "--altitude", "500").assertRefused("\"500\" has no unit", "500 m or 500 ft");
        asked("--round", "100", "--altitude", "20 km").assertRefused("--altitude", "");
        asked("--round", "100", "--temperature", "80 degC").assertRefused("temperature of 353.15 K", "another");
        asked("--round", "100", "--lengths", "ft").assertRefused("\"ft\"", "mm or in");
        asked("--round", "100", "--face", "galvv").assertRefused("no face \"galvv\"", "did you mean galv?");
        asked("--round", "100", "--face", "qqqqqq").assertRefused("no face", "there are pvc, alu");
    }

    @Test
    void sizesThatDontAddUp_saySo() {
        asked().assertRefused("needs a section", "--round 100");
        asked("--wide", "200").assertRefused("--high beside --wide", "--high 60");
        asked("--high", "60").assertRefused("needs --wide", "--instead-of 100");
        asked("--round", "100", "--high", "60").assertRefused("a round duct has neither", "leave them out");
        asked("--round", "100", "--rough", "1", "--face", "pvc").assertRefused("both say", "leave one");
    }

    @Test
    void everythingWrong_atOnce() {
        var answer = asked("--wide", "8", "--flow", "25", "--face", "galvv", "--lengths", "ft");
        assertEquals(2, answer.status());
        assertEquals(8, answer.err().lines().count(), answer.err());
    }

    @Test
    void topic_missingOrMisspelt() {
        Answer.to("reckon").assertRefused("reckon needs a topic", "duct");
        Answer.to("reckon", "dutc").assertRefused("no topic \"dutc\"", "did you mean duct?");
        Answer.to("reckon", "wombat").assertRefused("no topic \"wombat\"", "reckon takes duct");
        Answer.to("reckno").assertRefused("no command \"reckno\"", "");
        assertTrue(Answer.to("reckon", "--help").out().contains("reckon duct"));
    }
}
