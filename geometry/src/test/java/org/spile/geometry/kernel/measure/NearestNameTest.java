package org.spile.geometry.kernel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestNameTest {
    /** The first is the usual textbook example of Levenshtein's distance; the rest by hand. */
    @Test
    void slips_worked() {
        assertEquals(3, NearestName.slips("kitten", "sitting"));
        assertEquals(1, NearestName.slips("cmf", "cfm"));
        assertEquals(3, NearestName.slips("ca", "abc"));
        assertEquals(0, NearestName.slips("", ""));
        assertEquals(4, NearestName.slips("", "high"));
    }

    @Test
    void of_worked() {
        List<String> names = List.of("lobby-top", "wash-top", "lab-top", "bunk");
        assertEquals(Optional.of("lobby-top"), NearestName.of("loby-top", names));
        assertEquals(Optional.of("lab-top"), NearestName.of("Lab-Top", names));
        assertEquals(Optional.of("bunk"), NearestName.of("bnuk", names));
        assertEquals(Optional.empty(), NearestName.of("kitchen", names));
        assertEquals(Optional.empty(), NearestName.of("", names));
        assertEquals(Optional.empty(), NearestName.of("x", List.of("y")));
        assertEquals(Optional.empty(), NearestName.of("x".repeat(100_000), names));
    }
}
