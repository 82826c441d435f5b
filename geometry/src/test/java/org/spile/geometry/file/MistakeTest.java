package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MistakeTest {
    static List<Mistake> mistakes() {
        return Mistake.all();
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void mistake_toldInTheseWords(Mistake mistake) {
        assertEquals(List.of(mistake.told()), Houses.wrong(mistake.text()));
        var result = (ReadResult.Wrong) HouseFile.readText("house.yaml", mistake.text());
        assertEquals(mistake.doubt(), result.problems().get(0).doubt());
    }
}
