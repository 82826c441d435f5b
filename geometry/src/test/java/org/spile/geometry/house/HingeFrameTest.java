package org.spile.geometry.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;

/** A leaf set in a surface can lie flat against its other side, and no further. */
class HingeFrameTest {
    private static final String ROOM = """
            trailers: {van: {long: 4000, wide: 2400}}
            rooms:
              den:
                {in: van, at: {rear: 100, left: 100, right: 100}, long: 3000, ceiling: 2100, openings: {entry: {face: rear, at: {right: 600..1300, floor: 0..1900}, hinge: {edge: right, opens: forward, by: DOOR deg}}}}
            movers:
              hatch: {in: den, long: 400, wide: 400, high: 25, at: {rear: 900, left: 900, ceiling: 0 out}, hinge: {edge: right, opens: down, by: HATCH deg}}
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "181 | 90 | rooms.den.openings.entry.hinge.by: turns by 181 deg, through the frame it is set in",
                "90 | 200 | movers.hatch.hinge.by: turns by 200 deg, through the frame it is set in"
            })
    void beyondFlat_isRefusedWithItsPlace(String door, String hatch, String words) {
        HouseResult.Wrong wrong = assertInstanceOf(HouseResult.Wrong.class, read(door, hatch));
        assertEquals(1, wrong.problems().size());
        String problem = wrong.problems().get(0).toString();
        assertEquals(words, problem.substring(problem.indexOf(words.substring(0, 5)), problem.indexOf("set in") + 6));
    }

    @ParameterizedTest
    @CsvSource({"180, 90", "90, 180", "1, 1"})
    void upToFlat_isTaken(String door, String hatch) {
        assertInstanceOf(HouseResult.Sound.class, read(door, hatch));
    }

    private static HouseResult read(String door, String hatch) {
        String text = ROOM.replace("DOOR", door).replace("HATCH", hatch);
        return HouseFile.houseText("house.yaml", text, List.of(), List.of());
    }
}
