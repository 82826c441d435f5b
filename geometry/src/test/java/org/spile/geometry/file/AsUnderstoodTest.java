package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.house.told.AsUnderstood;

/** Stands with the reader, for a told house comes from words. The sentences are our own. */
class AsUnderstoodTest {
    private static final List<String> SALTMARSH = AsUnderstood.of(Houses.sound(Houses.text("saltmarsh")));

    private static String said(String id) {
        return SALTMARSH.stream()
                .filter(sentence -> sentence.startsWith(id + " "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void unit_saidBack() {
        assertEquals(
                "cooler in lobby-top: 450 fore and aft, 700 across, 200 high; blows forward; 230 free to the right for electric;"
                        + " 150 free to the left for drain; spigot outlet forward; spigot intake aft; port drain to the left;"
                        + " port pair to the right; hangs from hanger-left and hanger-right; 520 from the rear, 210 from the"
                        + " left, 48 from the top.",
                said("cooler"));
    }

    @Test
    void placesAndPaths_saidBack() {
        assertEquals(
                "berths in bunk: 1930 to 5910 from the rear, 90 from the left, 90 from the right.", said("berths"));
        assertEquals(
                "shade in bunk: 2600 fore and aft, 2200 across, 45 high; slides forward by 2900; 200 from the rear, 190 out of"
                        + " the roof, y 0.",
                said("shade"));
        assertEquals(
                "lab-supply from supply-box.lab to bench-grille: left 455, through lab-damper; aft 260; aft 260, down 52,"
                        + " section 300 wide, 70 high; aft 200; aft 260, up 20, section 240 wide, 90 high; aft 240; aft 60,"
                        + " parts at its cuff; aft the rest.",
                said("lab-supply"));
    }

    /** Turned by hand: a unit that blows left looks left with its front, and has its own left side aft. */
    @ParameterizedTest
    @CsvSource({
        "forward, to the right, fore and aft",
        "aft, to the left, fore and aft",
        "left, forward, across",
        "right, aft, across",
        "up, to the right, fore and aft"
    })
    void electricSideOnTheRight_turnsWithTheUnit(String blows, String where, String along) {
        String house = "cavities: {loft: {long: 1650, wide: 1650, high: 262}}\nunits: {cooler: {long: 450, wide: 700,"
                + " high: 200, blows: " + blows + ", service: {electric: {face: right, out: 230}}}}\n";
        String said = AsUnderstood.of(Houses.sound(house)).get(1);
        assertTrue(said.contains("230 free " + where + " for electric"), said);
        assertTrue(said.contains("450 " + along), said);
    }
}
