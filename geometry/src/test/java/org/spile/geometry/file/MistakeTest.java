package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

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
        HouseResult result = HouseFile.houseText("house.yaml", mistake.text(), List.of(), List.of());
        List<Problem> problems =
                assertInstanceOf(HouseResult.Wrong.class, result).problems();
        assertEquals(
                List.of(mistake.told()),
                problems.stream().map(Problem::toString).toList());
        assertEquals(mistake.doubt(), problems.get(0).doubt());
    }
}
