package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.measure.Stack;

/** What holds for every house: smaller obstacles, larger demands, another origin, another order. */
class FitLawsTest {
    private static final double EXACT = 1e-6;

    /** Shrinking an obstacle never reduces a gap. */
    @Property(tries = 300)
    void shrunkObstacle(
            @ForAll("boxes") Cuboid thing, @ForAll("boxes") Cuboid obstacle, @ForAll("shares") double share) {
        shrinkLaw(thing, obstacle, share);
    }

    private static void shrinkLaw(Cuboid thing, Cuboid obstacle, double share) {
        double before = gap(thing, obstacle);
        double after = gap(thing, obstacle.shrunk(share));
        assertTrue(after >= before - EXACT, before + " became " + after + " for " + thing + " and " + obstacle);
    }

    /** The margin falls as the demand grows, and the verdict never gets better. */
    @Property(tries = 300)
    void largerDemand(@ForAll("boxes") Cuboid thing, @ForAll("boxes") Cuboid obstacle, @ForAll("shares") double share) {
        demandLaw(thing, obstacle, 60 * share, 60 * share + 7);
    }

    private static void demandLaw(Cuboid thing, Cuboid obstacle, double smallMm, double largeMm) {
        Pair pair = Gauge.apart(thing.part("one"), obstacle.part("other")).orElseThrow();
        Outcome small = new Outcome(pair.lowMm(), pair.highMm(), pair.stack(), demand(smallMm));
        Outcome large = new Outcome(pair.lowMm(), pair.highMm(), pair.stack(), demand(largeMm));
        assertTrue(large.marginMm() < small.marginMm());
        assertTrue(large.worstMm() < small.worstMm());
        assertTrue(large.verdict().compareTo(small.verdict()) <= 0);
    }

    /** Findings don't depend on where the house stands or in which order its file lists things. */
    @Property(tries = 60)
    void anotherOriginAndOrder(@ForAll("scenes") List<Cuboid> things, @ForAll("shifts") double shift) {
        placeLaw(things, shift, -2 * shift, shift / 3);
    }

    private static void placeLaw(List<Cuboid> things, double dx, double dy, double dz) {
        List<Cuboid> moved =
                things.stream().map(thing -> thing.moved(dx, dy, dz)).toList();
        Asked here = Asked.of(house(things, false));
        Asked there = Asked.of(house(moved, false));
        Asked reversed = Asked.of(house(things, true));
        assertEquals(here.all().keySet(), there.all().keySet());
        here.all().forEach((id, finding) -> {
            same(finding, there.finding(id));
            same(finding, eitherWay(reversed, id, finding));
        });
    }

    /** Of two equal ranks the first in the file is the subject, so the two may change places. */
    private static Finding eitherWay(Asked reversed, String id, Finding finding) {
        String swapped = finding.check() + "/" + finding.against().orElseThrow() + "/" + finding.subject();
        return reversed.finding(reversed.all().containsKey(id) ? id : swapped);
    }

    private static void same(Finding one, Finding other) {
        double margin = one.margin().orElseThrow().number();
        double worst = one.worst().orElseThrow().number();
        assertEquals(margin, other.margin().orElseThrow().number(), 1e-5, one.id());
        assertEquals(worst, other.worst().orElseThrow().number(), 1e-5, one.id());
        if (Math.abs(margin) > 1e-4 && Math.abs(worst) > 1e-4) {
            assertEquals(one.verdict(), other.verdict(), one.id());
        }
    }

    /** Asking again only what changed gives the same findings as asking everything. */
    @Property(tries = 100)
    void askingAgainWhatChanged(@ForAll("scenes") List<Cuboid> things, @ForAll("shares") double share) {
        changeLaw(things, share);
    }

    private static void changeLaw(List<Cuboid> things, double share) {
        List<Cuboid> changed = new ArrayList<>(things);
        int last = things.size() - 1;
        changed.set(last, things.get(last).moved(-160 * share, 40 * share, 0));
        changed.set(0, things.get(0).shrunk(share));
        Sweep before = Sweep.of(site(things), List.of());
        List<Finding> whole = Sweep.of(site(changed), List.of()).findings();
        List<Finding> again = Sweep.of(site(changed), List.of(before)).findings();
        assertEquals(byId(whole), byId(again));
    }

    private static Site site(List<Cuboid> things) {
        return Site.of(house(things, false), House.AS_BUILT);
    }

    private static Map<String, String> byId(List<Finding> findings) {
        Map<String, String> byId = new java.util.TreeMap<>();
        findings.forEach(finding -> byId.put(finding.id(), finding.because()));
        return byId;
    }

    /** The drop that is offered makes the answer pass, and 0.2 mm less doesn't. */
    @Property(tries = 60)
    void dropRemedy(
            @ForAll("tenths") double top, @ForAll("tenths") double ceiling, @ForAll("shares") double tolerance) {
        dropLaw(40 + top, 1950 + ceiling, tolerance * 4);
    }

    private static void dropLaw(double topMm, double ceilingMm, double toleranceMm) {
        House house = HandHouse.of(
                Tell.house().unit("cooler", 0, Map.of("bottom", 15.0)).done(),
                (scene, tape) -> layLoft(scene, tape, topMm, ceilingMm, toleranceMm));
        String id = "fit.maker/units.cooler.clearance.bottom";
        Finding finding = Asked.of(house).finding(id);
        if (finding.verdict() == Verdict.PASSES) {
            assertEquals(List.of(), finding.remedies());
            return;
        }
        Optional<Remedy> drop = finding.remedies().stream()
                .filter(remedy -> remedy.set().toString().contains(".ceiling.drop="))
                .findFirst();
        String set = drop.orElseThrow().set().get(0);
        double mm = Double.parseDouble(set.substring(set.indexOf('=') + 1));
        assertEquals(Verdict.PASSES, after(house, mm, id));
        assertNotEquals(Verdict.PASSES, after(house, mm - 0.2, id));
    }

    private static Verdict after(House house, double dropMm, String id) {
        Resolved changed = house.with(Map.of("cavities.loft.ceiling.drop", dropMm));
        return Asked.of(((Resolved.Sound) changed).house()).finding(id).verdict();
    }

    private static void layLoft(HandScene scene, Tape tape, double topMm, double ceilingMm, double toleranceMm) {
        Stack top = tape.read("trailers.bunk.roof.at", 2244, toleranceMm)
                .minus(tape.read("units.cooler.at.top", topMm, toleranceMm / 2));
        Stack ceiling = tape.read("cavities.loft.ceiling.at", ceilingMm, toleranceMm)
                .minus(tape.exact("cavities.loft.ceiling.drop", 0));
        scene.put(
                        PartKind.LINING,
                        "cavities.loft.ceiling",
                        "loft",
                        Box.upright(0, 1800, 0, 1350, ceiling.minus(12), ceiling))
                .put(PartKind.UNIT, "units.cooler", "loft", Box.upright(500, 950, 400, 1100, top.minus(200), top))
                .cavity(new FlatCavity(
                        "loft",
                        org.spile.geometry.kernel.planar.Outline.rectangle(0, 0, 1800, 1350),
                        ceiling,
                        Stack.constant(2244),
                        true,
                        ""));
    }

    private static House house(List<Cuboid> things, boolean reversed) {
        ToldHouse told = Tell.house().clearance(8).done();
        return HandHouse.of(told, (scene, tape) -> {
            for (int i = 0; i < things.size(); i++) {
                boolean duct = i % 2 == 0;
                String id = duct ? "runs.r" + i + ".path[1]" : "fixtures.f" + i;
                scene.put(
                        duct ? PartKind.DUCT : PartKind.FIXTURE,
                        id,
                        "",
                        things.get(i).box("t" + i));
            }
            if (reversed) {
                scene.reverse();
            }
        });
    }

    private static double gap(Cuboid one, Cuboid other) {
        return Gauge.apart(one.part("one"), other.part("other")).orElseThrow().lowMm();
    }

    private static Demand demand(double mm) {
        return Demand.typed(Tell.mm("limits.clearance", mm));
    }

    @Provide
    Arbitrary<Cuboid> boxes() {
        Arbitrary<Double> at = Arbitraries.doubles().between(-150, 150).ofScale(2);
        Arbitrary<Double> size = Arbitraries.doubles().between(5, 120).ofScale(2);
        return Combinators.combine(at, at, at, size, size, size).as(Cuboid::new);
    }

    @Provide
    Arbitrary<List<Cuboid>> scenes() {
        return boxes().list().ofMinSize(2).ofMaxSize(6).map(things -> spread(things));
    }

    @Provide
    Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(0.05, 0.95).ofScale(3);
    }

    @Provide
    Arbitrary<Double> tenths() {
        return Arbitraries.integers().between(0, 200).map(n -> n / 10.0);
    }

    @Provide
    Arbitrary<Double> shifts() {
        return Arbitraries.doubles().between(-10_000, 10_000).ofScale(3);
    }

    /** One thing beside the other, so that most pairs are near and few overlap. */
    private static List<Cuboid> spread(List<Cuboid> things) {
        List<Cuboid> spread = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            spread.add(things.get(i).moved(110.0 * i, 0, 0));
        }
        return spread;
    }

    /** A box that rests on one reading along each axis. */
    record Cuboid(double x, double y, double z, double longMm, double wideMm, double highMm) {
        Cuboid shrunk(double share) {
            double keep = 1 - share;
            return new Cuboid(
                    x + longMm * share / 2, y, z + highMm * share / 3, longMm * keep, wideMm * keep, highMm * keep);
        }

        Cuboid moved(double dx, double dy, double dz) {
            return new Cuboid(x + dx, y + dy, z + dz, longMm, wideMm, highMm);
        }

        Box box(String name) {
            Stack rear = new Tape(Map.of()).read(name + ".x", x, 1);
            Stack right = new Tape(Map.of()).read(name + ".y", y, 2, 1);
            Stack bottom = new Tape(Map.of()).read(name + ".z", z, 0.5, 1.5);
            return new Box(rear, rear.plus(longMm), right, right.plus(wideMm), bottom, bottom.plus(highMm));
        }

        org.spile.geometry.house.Part part(String name) {
            return box(name).part(PartKind.FIXTURE, "fixtures." + name, "");
        }
    }
}
