package org.spile.analysis.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.told.ToldClimate;
import org.spile.geometry.house.told.ToldHouse;

class ChecksTest {

    @Test
    void everyNameIsThereOnceAndIsAnswered() {
        List<String> names = Checks.names();
        assertEquals(names.size(), new LinkedHashSet<>(names).size());
        assertTrue(
                names.containsAll(List.of("fit.clearance", "fit.maker", "fit.headroom", "air", "tow")),
                names.toString());
    }

    @Test
    void asksOnlyWhatIsWanted() {
        House house = new BareHouse(Told.withUnits("cooler"));
        assertEquals(
                List.of("remove"),
                checks(Checks.answer(house, List.of("remove")).all()));
        assertEquals(List.of(), Checks.answer(house, List.of("fit")).all());
        assertEquals(
                Checks.answer(house).all(), Checks.answer(house, Checks.names()).all());
    }

    /** One finding for each question that the file raises; each says what it lacks. */
    @Test
    void openQuestionsAreGroupedAndNameWhatTheyLack() {
        List<Finding> open =
                Checks.answer(new BareHouse(Told.withTrailers("bunk", "lab"))).all();
        assertEquals(List.of("tow"), checks(open));
        Finding tow = open.get(0);
        assertEquals(Verdict.NOT_KNOWN, tow.verdict());
        assertEquals(Optional.of("trailers.bunk.coupling"), tow.against());
        assertEquals(
                "What coupling and axles of 2 trailers carry isn't worked out yet; what the house file says of it is read"
                        + " and kept, and still missing for it: trailers.bunk.coupling, trailers.bunk.axles,"
                        + " trailers.lab.coupling, trailers.lab.axles and 1 more.",
                tow.because());
    }

    @Test
    void nothingIsOpenWhereNothingIsAsked() {
        assertEquals(List.of(), Checks.answer(new BareHouse(Told.nothing())).all());
    }

    @Test
    void climateRaisesMoisture() {
        ToldClimate climate = new ToldClimate("climate", Optional.empty(), Optional.empty(), Map.of());
        List<Finding> open =
                Checks.answer(new BareHouse(Told.withClimate(climate))).all();
        assertEquals(List.of("moisture"), checks(open));
        assertTrue(
                open.get(0).because().contains("every value it needs is there"),
                open.get(0).because());
    }

    @Test
    void someStancesOnly() {
        House house = new BareHouse(Told.nothing());
        House some = SomeStances.of(house, List.of("shaded", "parked"));
        assertEquals(List.of("parked", "shaded"), some.stances());
        assertEquals("shaded", some.scene("shaded").stance());
        assertThrows(IllegalArgumentException.class, () -> some.scene("on-the-road"));
        assertThrows(IllegalArgumentException.class, () -> SomeStances.of(house, List.of("afloat")));
        assertThrows(IllegalArgumentException.class, () -> SomeStances.of(house, List.of()));
        Resolved.Sound changed = (Resolved.Sound) some.with(Map.of());
        assertEquals(List.of("parked", "shaded"), changed.house().stances());
    }

    private static List<String> checks(List<Finding> findings) {
        return findings.stream().map(Finding::check).toList();
    }

    /** Houses of which only one kind of thing was told. */
    private static final class Told {
        static ToldHouse nothing() {
            return BareHouse.told(Map.of(), Map.of(), Optional.empty());
        }

        static ToldHouse withUnits(String... ids) {
            return BareHouse.told(Map.of(), BareHouse.units(ids), Optional.empty());
        }

        static ToldHouse withTrailers(String... ids) {
            return BareHouse.told(BareHouse.trailers(ids), Map.of(), Optional.empty());
        }

        static ToldHouse withClimate(ToldClimate climate) {
            return BareHouse.told(Map.of(), Map.of(), Optional.of(climate));
        }
    }
}
