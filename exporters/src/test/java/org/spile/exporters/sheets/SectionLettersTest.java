package org.spile.exporters.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** ISO 128-3: capital letters, without I and O (as ISO 5457 has it for grids); what follows Z is common practice, no source. */
class SectionLettersTest {
    @Test
    void letters_leaveOutIAndO() {
        assertEquals("A", SectionLetters.letter(0));
        assertEquals("H", SectionLetters.letter(7));
        assertEquals("J", SectionLetters.letter(8));
        assertEquals("Z", SectionLetters.letter(23));
        assertEquals("AA", SectionLetters.letter(24));
        assertEquals("BA", SectionLetters.letter(48));
    }

    @Test
    void letters_ofAThousandSections_differ() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            String letter = SectionLetters.letter(i);
            assertFalse(letter.contains("I") || letter.contains("O"), letter);
            seen.add(letter);
        }
        assertEquals(1000, seen.size());
    }
}
