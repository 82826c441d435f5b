package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.spile.geometry.house.told.ToldHouse;

/** A house in sixteenths of an inch is the same as in millimetres; the inch is 25.4 mm exactly. */
class InchLawTest {
    @Property(tries = 200)
    void inches_areMillimetres(
            @ForAll @IntRange(min = 320, max = 4000) int longSixteenths,
            @ForAll @IntRange(min = 40, max = 400) int highSixteenths) {
        law(longSixteenths, highSixteenths);
    }

    static void law(int longSixteenths, int highSixteenths) {
        String inches = "lengths: in\ncavities: {loft: {long: " + longSixteenths + "/16, wide: 40, high: "
                + highSixteenths + "/16}}\n";
        String millimetres = "cavities: {loft: {long: " + longSixteenths * 1.5875 + ", wide: 1016, high: "
                + highSixteenths * 1.5875 + "}}\n";
        assertSame(Houses.sound(inches), Houses.sound(millimetres));
    }

    private static void assertSame(ToldHouse one, ToldHouse other) {
        var here = one.cavities().get("loft").placed().sizes();
        var there = other.cavities().get("loft").placed().sizes();
        assertEquals(
                there.longMm().orElseThrow().value(),
                here.longMm().orElseThrow().value(),
                1e-9);
        assertEquals(
                there.wideMm().orElseThrow().value(),
                here.wideMm().orElseThrow().value(),
                1e-9);
        assertEquals(
                there.highMm().orElseThrow().value(),
                here.highMm().orElseThrow().value(),
                1e-9);
    }
}
