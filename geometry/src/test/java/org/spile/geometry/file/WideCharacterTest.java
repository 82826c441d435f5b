package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A character of two code units, wherever it stands: a reader with a buffer of 1025 once split it there and failed. */
class WideCharacterTest {
    private static final String HOUSE = "cavities: {loft: {long: 1650, wide: 900, high: 262}}\ntitle: ";

    @ParameterizedTest
    @ValueSource(ints = {1023, 1024, 1025, 1026, 2048, 2049, 2050})
    void isReadWhole_alsoAtTheEnd(int units) {
        String title = "a".repeat(units - HOUSE.length() - 2) + "\uD83C\uDF2B";
        assertEquals(units, (HOUSE + title).length());
        assertEquals(title, Houses.sound(HOUSE + title).title());
        assertEquals(title, Houses.sound(HOUSE + title + "\n").title());
    }
}
