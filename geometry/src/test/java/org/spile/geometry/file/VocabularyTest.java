package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VocabularyTest {
    private static final Vocabulary SALTMARSH = new Vocabulary(new Binding("house.yaml", Drawings.none())
            .root(Houses.text("saltmarsh"))
            .orElseThrow());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "units.cooler.high",
                "cavities.lobby-top.ceiling.drop",
                "cavities.lab-top.ceiling.drop",
                "cavities.wash-wall.floor.drop",
                "cavities.wash-top.top.linings[1].pir",
                "cavities.wash-top.top.linings[2].ply",
                "runs.lab-supply.path[3].wide",
                "runs.lab-supply.path[9]",
                "rooms.lobby.at.rear[2]",
                "units.cooler.fan.low[1][2]",
                "fixtures.shelf",
                "terminals.cowl-b.at.left",
                "stances.parked.tilt.nose",
                "limits.coupling.bunk[1]",
                "limits.noise.berths",
                "masses.water.holds"
            })
    void mayBeEdited(String path) {
        assertEquals(Optional.empty(), SALTMARSH.fault(path));
    }

    @ParameterizedTest
    @CsvSource({
        "units.cooler.hihg, units.cooler.high",
        "units.coler.high, units.cooler.high",
        "unit.cooler.high, units.cooler.high",
        "cavities.lobby-top.celing.drop, cavities.lobby-top.ceiling.drop",
        "runs.lab-suply.path[3].wide, runs.lab-supply.path[3].wide",
        "units.cooler.clearance.topp, units.cooler.clearance.top"
    })
    void misspelt_nearestPathNamed(String path, String nearest) {
        assertEquals(
                "Nearest: \"" + nearest + "\".",
                SALTMARSH.fault(path).orElseThrow().advice());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"runs.lab-supply.path[11].wide", "units.cooler.high.drop", "title.word", "units.kettle.high"})
    void noSuchPlace(String path) {
        assertEquals(true, SALTMARSH.fault(path).isPresent());
    }
}
