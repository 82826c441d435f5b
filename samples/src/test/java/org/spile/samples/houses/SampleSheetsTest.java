package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.place.Place;
import org.spile.analysis.place.PlaceAnswer;
import org.spile.analysis.whole.Aim;
import org.spile.analysis.whole.Checks;
import org.spile.analysis.whole.Shown;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.TapeRow;
import org.spile.analysis.whole.TapeSheet;
import org.spile.analysis.whole.Variation;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Flag;
import org.spile.exporters.drawing.Leader;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.Span;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.drawing.layout.Overlaps;
import org.spile.exporters.sheets.PlaceSheets;
import org.spile.exporters.sheets.StudySheets;
import org.spile.exporters.sheets.Subject;
import org.spile.exporters.sheets.TapeSheets;
import org.spile.geometry.house.House;

/** A builder can read every sheet of every sample: nothing lies on words, and what doesn't pass is shown. */
class SampleSheetsTest {
    private static final double SHOWN_MM = 0.01;

    static List<Sample> samples() {
        return Sample.all().toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void sheets_haveNothingOnTheirWords(Sample sample) {
        var drawn = sample.sheets();
        assertEquals(List.of(), drawn.refused());
        assertFalse(drawn.set().sheets().isEmpty());
        for (Sheet sheet : drawn.set().sheets()) {
            assertEquals(List.of(), Overlaps.of(sheet), () -> sample + ", sheet " + sheet.name());
        }
    }

    @Test
    void saltmarsh_failingGapIsFlaggedAndDimensionedAtItsSize() {
        Sample sample = Sample.named("saltmarsh");
        Finding failing = sample.findings().worstFirst().get(0);
        double gapMm = failing.value().orElseThrow().number();

        Optional<Flag> flag = marks(sample).stream()
                .filter(Flag.class::isInstance)
                .map(Flag.class::cast)
                .filter(each -> each.finding().equals(failing.id()))
                .filter(each -> Math.abs(each.at().distance(each.to()) - gapMm) < SHOWN_MM)
                .findFirst();
        assertTrue(flag.isPresent(), "a section shows the gap of " + gapMm + " mm");
        assertTrue(
                marks(sample).stream()
                        .filter(Dimensioned.class::isInstance)
                        .map(Dimensioned.class::cast)
                        .anyMatch(each -> Math.abs(each.span().measuredMm() - gapMm) < SHOWN_MM
                                && sameHeights(each.span(), flag.get())),
                "the gap is dimensioned");
    }

    /** The stack beside the body may show an upright gap: between the same two heights. */
    private static boolean sameHeights(Span span, Flag flag) {
        double low = Math.min(flag.at().getY(), flag.to().getY());
        double high = Math.max(flag.at().getY(), flag.to().getY());
        return Math.abs(Math.min(span.from().getY(), span.to().getY()) - low) < SHOWN_MM
                && Math.abs(Math.max(span.from().getY(), span.to().getY()) - high) < SHOWN_MM;
    }

    private static List<Mark> marks(Sample sample) {
        List<Mark> marks = new ArrayList<>();
        sample.sheets().set().sheets().forEach(sheet -> sheet.views().forEach(view -> marks.addAll(view.marks())));
        return marks;
    }

    /** One page: A4 for small houses, A3 at most; every row has its number in a picture. */
    @ParameterizedTest
    @MethodSource("samples")
    void tapeSheet_isOneReadablePage(Sample sample) {
        House house = sample.house();
        var findings = Checks.standing(house, Checks.names());
        TapeSheet tape = TapeSheet.of(house, findings.all(), TapeSheet.ROOM);
        Laid laid = TapeSheets.of(Subject.of("house", house, findings.worstFirst()), tape);
        Sheet sheet = ((Laid.Fits) laid).sheet();
        assertEquals(List.of(), Overlaps.of(sheet));
        List<String> balloons = new ArrayList<>();
        for (var view : sheet.views()) {
            view.marks().stream()
                    .filter(Leader.class::isInstance)
                    .map(Leader.class::cast)
                    .forEach(leader -> balloons.add(leader.says()));
        }
        for (TapeRow row : tape.rows()) {
            assertTrue(balloons.contains(Integer.toString(row.number())), sample + ", row " + row.number());
        }
    }

    /** A view for each turn that has a place and for the present one, and nothing on top of anything. */
    @ParameterizedTest
    @MethodSource("samples")
    void placeSheet_isReadable(Sample sample) {
        House house = sample.house();
        PlaceAnswer answer = Place.of(house, "cooler", Place.QUARTER_TURNS).orElseThrow();
        Laid laid = PlaceSheets.of(Subject.of("house", house, List.of()), answer);
        Sheet sheet = ((Laid.Fits) laid).sheet();
        assertEquals(List.of(), Overlaps.of(sheet));
        long drawn = answer.maps().stream()
                .filter(map -> !map.free().isEmpty() || Math.abs(map.yawDeg() - answer.nowYawDeg()) < 1e-6)
                .count();
        assertEquals(drawn, sheet.views().size());
    }

    @Test
    void studySheets_areReadable() {
        House house = Sample.named("loft").house();
        var drop = new Variation(List.of("cavities.loft.ceiling.drop"), "mm", Variation.range(0, 20, 2), Aim.LEAST);
        var high = new Variation(List.of("units.cooler.high"), "mm", Variation.range(190, 220, 2), Aim.MOST);
        for (List<Variation> variations : List.of(List.of(drop), List.of(drop, high))) {
            Study study = Study.of(house::with, variations, List.of(Shown.of("fit")), done -> assertTrue(done > 0));
            Laid laid = StudySheets.of(Subject.of("house", house, List.of()), study);
            assertEquals(List.of(), Overlaps.of(((Laid.Fits) laid).sheet()));
        }
    }
}
