package org.spile.analysis.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Verdict;

/** Which readings must be measured, the sums done by hand, and what must hold of any stack. */
class UnsettledTest {
    private static final double EXACT = 1e-9;

    /** A gap of 2244 - 48 - 200 - 1962 - 19 - 6 = 9 where 15 are asked. */
    private static final List<Layer> HUNG = List.of(
            layer("trailers.bunk.roof.up", 1, 2244, 3, ""),
            layer("units.cooler.at.top", -1, 48, 2, ""),
            layer("units.cooler.high", -1, 200, 1, "maker"),
            layer("cavities.top.ceiling.at", -1, 1962, 3, "measured"),
            layer("cavities.top.ceiling.linings[1].batten", -1, 19, 1, ""),
            layer("cavities.top.ceiling.linings[2].ply", -1, 6, 0.5, ""));

    /**
     * 6 mm are missing and 3 + 3 + 2 + 1 + 1 + 0.5 = 10.5 could come. If the small three stay as they are, the large three
     * may be off by (6 - 1 - 1 - 0.5) / 3 each.
     */
    @Test
    void whatMustBeMeasured() {
        Unsettled open = Unsettled.of(finding(-6, HUNG)).orElseThrow();
        assertEquals(10.5, open.totalMm(), EXACT);
        assertEquals(List.of("cavities.top.ceiling.at", "trailers.bunk.roof.up", "units.cooler.at.top"), paths(open));
        for (var doubt : open.toMeasure()) {
            assertEquals(3.5 / 3, open.needed(doubt, paths(open)).orElseThrow(), EXACT);
        }
    }

    @Test
    void whatCannotTurnIsSettled() {
        assertTrue(Unsettled.of(finding(-10.5, HUNG)).isEmpty());
        assertTrue(Unsettled.of(finding(10.5, HUNG)).isEmpty());
        assertTrue(Unsettled.of(finding(10.4, HUNG)).isPresent());
    }

    /** Two of three measured: the third takes its 3 mm of the 6, the others get (6 - 2.5 - 3) / 2 each. */
    @Test
    void whatStaysUnmeasuredTakesItsShare() {
        Unsettled open = Unsettled.of(finding(-6, HUNG)).orElseThrow();
        List<String> two = List.of("cavities.top.ceiling.at", "units.cooler.at.top");
        assertEquals(0.25, open.needed(open.toMeasure().get(0), two).orElseThrow(), EXACT);
        assertEquals(Optional.empty(), open.needed(open.toMeasure().get(0), List.of("cavities.top.ceiling.at")));
    }

    /** A sag of 1 and a swelling of 0.5 can't be measured away: of 3.5 mm of margin 2 are left for two readings. */
    @Test
    void movementsStay() {
        List<Layer> moving = List.of(
                layer("a.at.x", 1, 100, 4, ""),
                layer("b.at.x", -1, 40, 2, ""),
                layer("fixtures.rail.sag", -1, 0, 1, ""),
                layer("cavities.top.ceiling.linings[1].batten with damp", -1, 0, 0.5, ""));
        Unsettled open = Unsettled.of(finding(3.5, moving)).orElseThrow();
        assertEquals(List.of("a.at.x", "b.at.x"), paths(open));
        assertEquals(1, open.needed(open.doubts().get(0), paths(open)).orElseThrow(), EXACT);
    }

    /** A reading that counts a half may be off by twice as much. */
    @Test
    void factorsCount() {
        List<Layer> halves = List.of(layer("a.at.x", 0.5, 100, 4, ""), layer("b.at.x", -1, 40, 2, ""));
        Unsettled open = Unsettled.of(finding(2, halves)).orElseThrow();
        assertEquals(
                2,
                open.needed(open.doubts().get(0), List.of("a.at.x", "b.at.x")).orElseThrow(),
                EXACT);
        assertEquals(
                1,
                open.needed(open.doubts().get(1), List.of("a.at.x", "b.at.x")).orElseThrow(),
                EXACT);
    }

    /** 5 mm for a place in the shell, 2 for a thing's size, 1 for a layer and a maker's size, 10 for a guess; not for a contact. */
    @Test
    void presumedWhereNothingIsSaid() {
        assertEquals(5, PresumedTolerance.mm(layer("cavities.loft.high", 1, 262, 0, "")));
        assertEquals(2, PresumedTolerance.mm(layer("fixtures.rail.high", 1, 144, 0, "")));
        assertEquals(1, PresumedTolerance.mm(layer("cavities.loft.top.linings[1].pir", 1, 25, 0, "")));
        assertEquals(1, PresumedTolerance.mm(layer("units.cooler.high", 1, 200, 0, "maker")));
        assertEquals(1, PresumedTolerance.mm(layer("cavities.loft.high", 1, 262, 0, "measured")));
        assertEquals(10, PresumedTolerance.mm(layer("cavities.loft.high", 1, 262, 0, "assumed")));
        assertEquals(0, PresumedTolerance.mm(layer("fixtures.rail.at.top", 1, 0, 0, "")));
        assertEquals(0, PresumedTolerance.mm(layer("fixtures.rail.high", 1, 144, 1, "")));
        assertEquals(0, PresumedTolerance.mm(layer("units.cooler.service.filter.out", -1, 230, 0, "")));
    }

    @Property(tries = 500)
    void knownAsExactlyAsNeeded(@ForAll("stacks") List<Layer> stack, @ForAll("margins") double marginMm) {
        neededLaw(stack, marginMm);
    }

    /** With every reading to be measured known just as exactly as needed, its doubts come to the margin and no more. */
    private static void neededLaw(List<Layer> stack, double marginMm) {
        Optional<Unsettled> open = Unsettled.of(finding(marginMm, stack));
        if (open.isEmpty()) {
            double total = stack.stream()
                    .mapToDouble(layer -> Math.abs(layer.factor()) * layer.plus())
                    .sum();
            assertTrue(total <= Math.abs(marginMm) + 1e-6, stack + " at " + marginMm);
            return;
        }
        List<String> measured = paths(open.get());
        double left = 0;
        for (var doubt : open.get().doubts()) {
            double need = open.get().needed(doubt, measured).orElseThrow();
            double takes = need * Math.abs(doubt.layer().factor());
            boolean taken = measured.contains(doubt.layer().label());
            assertEquals(taken, doubt.takesMm() > takes + 1e-6, doubt.toString());
            left += taken ? takes : doubt.takesMm();
        }
        assertEquals(Math.abs(marginMm), left, 1e-6);
    }

    @Provide
    Arbitrary<List<Layer>> stacks() {
        Arbitrary<Double> factors = Arbitraries.of(-1.0, 1.0, -0.5, 0.5, 0.27, -2.0);
        Arbitrary<Double> tolerances = Arbitraries.doubles().between(0.1, 8).ofScale(2);
        return Combinators.combine(factors, tolerances)
                .as((factor, tolerance) -> layer("", factor, 100, tolerance, ""))
                .list()
                .ofMinSize(1)
                .ofMaxSize(9)
                .map(UnsettledTest::named);
    }

    @Provide
    Arbitrary<Double> margins() {
        return Arbitraries.doubles().between(-20, 20).ofScale(2).filter(margin -> Math.abs(margin) > 0.05);
    }

    private static List<Layer> named(List<Layer> bare) {
        List<Layer> named = new ArrayList<>();
        for (Layer layer : bare) {
            named.add(layer("units.thing.at.x" + named.size(), layer.factor(), 100, layer.plus(), ""));
        }
        return named;
    }

    private static List<String> paths(Unsettled open) {
        return open.toMeasure().stream().map(doubt -> doubt.layer().label()).toList();
    }

    private static Layer layer(String path, double factor, double size, double either, String origin) {
        return new Layer(path, factor, Quantity.mm(size), either, either, Math.abs(factor) * either, origin);
    }

    private static Finding finding(double marginMm, List<Layer> stack) {
        double takes = stack.stream().mapToDouble(Layer::takes).sum();
        return new Finding(
                "fit.clearance/one/other",
                "fit.clearance",
                "one",
                Optional.of("other"),
                List.of("parked"),
                List.of(),
                marginMm < 0 ? Verdict.FAILS : Verdict.TIGHT,
                Optional.of(Quantity.mm(marginMm + 15)),
                Optional.of(Quantity.mm(15)),
                Optional.of(Quantity.mm(marginMm)),
                Optional.of(Quantity.mm(marginMm - takes)),
                Optional.empty(),
                stack,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "because",
                List.of(),
                List.of(),
                "file");
    }
}
