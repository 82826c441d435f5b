package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

class VariantTest {
    private static final String SALTMARSH = Houses.text("saltmarsh");

    private static ReadResult read(List<String> options, List<String> edits) {
        return HouseFile.readText("house.yaml", SALTMARSH, options, edits);
    }

    private static ToldHouse sound(List<String> options, List<String> edits) {
        ReadResult result = read(options, edits);
        if (result instanceof ReadResult.Sound sound) {
            return sound.house();
        }
        throw new AssertionError(String.join("\n", Houses.lines(result)));
    }

    @Test
    void edit_keepsToleranceAndOrigin() {
        Reading high = sound(List.of(), List.of("units.cooler.high=205"))
                .units()
                .get("cooler")
                .placed()
                .sizes()
                .highMm()
                .orElseThrow();
        assertEquals(205, high.value());
        assertEquals(1, high.plus());
        assertEquals(Origin.MAKER, high.origin());
    }

    @Test
    void drop_ofACeilingThatIsOneNumber() {
        ToldHouse house =
                sound(List.of(), List.of("cavities.wash-wall.floor.drop=4", "cavities.lab-top.ceiling.drop=8"));
        assertEquals(
                8,
                house.cavities()
                        .get("lab-top")
                        .below()
                        .orElseThrow()
                        .drop()
                        .orElseThrow()
                        .value());
        assertEquals(
                4,
                house.cavities()
                        .get("wash-wall")
                        .below()
                        .orElseThrow()
                        .drop()
                        .orElseThrow()
                        .value());
    }

    @Test
    void option_thenEdit_inThisOrder() {
        ToldHouse house = sound(List.of("lower-ceiling"), List.of("cavities.lobby-top.ceiling.drop=9"));
        assertEquals(
                9,
                house.cavities()
                        .get("lobby-top")
                        .below()
                        .orElseThrow()
                        .drop()
                        .orElseThrow()
                        .value());
        house = sound(List.of("thin-foam", "lower-ceiling"), List.of());
        assertEquals(
                16.5,
                house.cavities()
                        .get("lobby-top")
                        .below()
                        .orElseThrow()
                        .drop()
                        .orElseThrow()
                        .value());
        assertEquals(6, house.runs().get("lab-supply").layers().get(1).thick().value());
    }

    @Test
    void belowACopy_changesTheCopyOnly() {
        ToldHouse house = sound(List.of(), List.of("units.fan-b.round=125"));
        assertEquals(
                125,
                house.units()
                        .get("fan-b")
                        .placed()
                        .sizes()
                        .roundMm()
                        .orElseThrow()
                        .value());
        assertEquals(
                118,
                house.units()
                        .get("fan-a")
                        .placed()
                        .sizes()
                        .roundMm()
                        .orElseThrow()
                        .value());
        assertEquals(
                118,
                house.units()
                        .get("shower-fan")
                        .placed()
                        .sizes()
                        .roundMm()
                        .orElseThrow()
                        .value());
    }

    @Test
    void editsBuildOnEachOther() {
        ToldHouse house = sound(
                List.of(),
                List.of(
                        "fixtures.shelf={in: lobby, long: 300, wide: 200, high: 18, at: {front: 0, right: 0, floor: 1400}}",
                        "fixtures.shelf.wide=220"));
        assertEquals(
                220,
                house.fixtures()
                        .get("shelf")
                        .placed()
                        .sizes()
                        .wideMm()
                        .orElseThrow()
                        .value());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "units.cooler.hihg=205|edit \"units.cooler.hihg=205\": there is no \"units.cooler.hihg\" to edit:"
                        + " units.cooler has no \"hihg\". Nearest: \"units.cooler.high\".",
                "units.cooler.high=-3|edit \"units.cooler.high=-3\": units.cooler.high: \"-3 ± 1 maker\": a size has no sign."
                        + " Write 3 ± 1 maker.",
                "units.cooler.in=loby-top|edit \"units.cooler.in=loby-top\": units.cooler.in: there is no \"loby-top\"."
                        + " Nearest: \"lobby-top\" (a cavity)."
            })
    void wrongEdit_toldAtTheEdit(String edit, String told) {
        assertEquals(List.of(told), Houses.lines(read(List.of(), List.of(edit))));
    }

    @Test
    void unknownOption_nearestNamed() {
        assertEquals(
                List.of("option \"thin-form\": The file has no such option. Nearest: \"thin-foam\"."),
                Houses.lines(read(List.of("thin-form"), List.of())));
    }

    @Test
    void anEdit_maySettleADoubt() {
        String doubtful = Houses.text("loft").replace("high: 262 ", "high: 26.2 ");
        assertInstanceOf(ReadResult.Wrong.class, HouseFile.readText("house.yaml", doubtful));
        assertInstanceOf(
                ReadResult.Sound.class,
                HouseFile.readText("house.yaml", doubtful, List.of(), List.of("cavities.loft.high=26.2 cm")));
    }

    @Test
    void whatTheFileHadWrong_keepsItsPlace() {
        String wrong = SALTMARSH.replace("bench: 40 L/s", "bench: 40");
        List<String> lines =
                Houses.lines(HouseFile.readText("house.yaml", wrong, List.of(), List.of("units.cooler.in=loby-top")));
        assertEquals(2, lines.size());
        assertTrue(
                lines.stream().anyMatch(line -> line.startsWith("house.yaml:175:54: limits.flow.bench")),
                lines.toString());
        assertTrue(
                lines.stream().anyMatch(line -> line.startsWith("edit \"units.cooler.in=loby-top\"")),
                lines.toString());
    }

    @Test
    void theFileItself_staysAsItWas(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), Houses.text("loft"));
        var sound = assertInstanceOf(
                ReadResult.Sound.class, HouseFile.read(file, List.of(), List.of("cavities.loft.ceiling.drop=10")));
        assertEquals(
                10,
                sound.house()
                        .cavities()
                        .get("loft")
                        .below()
                        .orElseThrow()
                        .drop()
                        .orElseThrow()
                        .value());
        assertEquals(Houses.text("loft"), Files.readString(file));
    }

    @Test
    void noSuchFile_isAProblem(@TempDir Path folder) {
        List<String> lines = Houses.lines(HouseFile.read(folder.resolve("hose.yaml"), List.of(), List.of()));
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).contains("There is no such file."), lines.get(0));
    }
}
