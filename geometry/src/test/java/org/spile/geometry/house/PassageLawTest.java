package org.spile.geometry.house;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctPiece;
import org.spile.geometry.house.duct.DuctPieces;
import org.spile.geometry.house.duct.Inside;
import org.spile.geometry.house.duct.Screws;
import org.spile.geometry.house.duct.Tap;
import org.spile.geometry.house.duct.Vanes;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.clearance.Cut;
import org.spile.geometry.kernel.clearance.CutPlane;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Regions;

/**
 * What is clear in a run lies within what the run takes outside: every point of every section's ring, for random runs of
 * straights, slants, radius and mitred bends, transitions of all pairings (middle to middle and flush) and takeoffs.
 */
class PassageLawTest {
    private static final double WITHIN_MM = 1e-6;
    private static final int TRIES = 80;
    private static final int STATIONS = 8;
    /** Sections are snapped to a micrometre. */
    private static final double SNAPPED = 1e-4;

    private static final double WALL_MM = 1.3;
    private static final List<Way> WAYS = List.of(Way.values());
    private static final List<Cross.Form> FORMS = List.of(Cross.Form.values());

    @Property(tries = TRIES)
    void clear_liesWithinTheOutside(@ForAll long seed) {
        drawn(seed).ifPresent(PassageLawTest::clearLiesWithinTheOutside);
    }

    @Property(tries = TRIES / 2)
    void clearArea_isNoMoreThanTheOutsideLessItsWalls(@ForAll long seed) {
        drawn(seed).ifPresent(PassageLawTest::areaIsNoMoreThanTheOutside);
    }

    /** The laws are worth something only if every kind of piece is drawn, in every pairing of sections. */
    @Test
    void everyKindIsDrawn() {
        Set<String> words = new TreeSet<>();
        Set<String> pairs = new TreeSet<>();
        for (long seed = 0; seed < TRIES; seed++) {
            drawn(seed)
                    .ifPresent(pieces -> pieces.forEach(piece -> {
                        words.add(piece.word());
                        pairs.add(piece.leg().start().getClass().getSimpleName()
                                + piece.leg().end().getClass().getSimpleName()
                                + !piece.leg().flush().isEmpty());
                    }));
        }
        assertTrue(
                words.containsAll(Set.of("straight", "offset", "transition", "bend", "mitred bend", "takeoff")),
                words.toString());
        assertTrue(pairs.size() == 18, pairs.toString());
    }

    private static void clearLiesWithinTheOutside(List<DuctPiece> pieces) {
        for (DuctPiece piece : pieces) {
            for (int k = 0; k <= STATIONS; k++) {
                double at = piece.lengthMm() * k / STATIONS;
                for (Vector3D point : piece.clear().outline(at)) {
                    double out = Inside.outsideMm(piece.outside(), point);
                    assertTrue(
                            out <= WITHIN_MM,
                            () -> piece.word() + " of " + piece.leg() + " at " + at + " of " + piece.lengthMm() + ": "
                                    + point + " is " + out + " outside");
                }
            }
        }
    }

    /**
     * The plane of a ring cuts the outside in no less than what is clear with its walls round it: walls lie square to the
     * clear section or aslant, and the outside of anything round is a polygon about it. A leg that changes its section or
     * slants into a mitre has its wall drawn thinner on one side there, so that of those the wall isn't asked.
     */
    private static void areaIsNoMoreThanTheOutside(List<DuctPiece> pieces) {
        boolean evenRun = pieces.stream().allMatch(piece -> even(piece.leg()));
        for (DuctPiece piece : pieces) {
            boolean mitre = piece.word().equals("mitred bend");
            double wall = evenRun || (!mitre && even(piece.leg())) ? WALL_MM : 0;
            for (int k = 0; k < STATIONS; k++) {
                // Off the planes where two solids of a bend meet.
                double at = piece.lengthMm() * (k + 0.37) / STATIONS;
                double outside = Regions.areaMm2(
                        Cut.by(piece.outside(), plane(piece.clear().outline(at))));
                double clear = piece.clearAreaMm2(at) + wall * piece.wettedPerimeterMm(at);
                assertTrue(
                        clear <= outside * (1 + SNAPPED),
                        () -> piece.word() + " of " + piece.leg() + " at " + at + " of " + piece.lengthMm() + ": "
                                + clear + " with its walls in " + outside);
            }
        }
    }

    private static boolean even(DuctLeg leg) {
        return !leg.transition()
                && leg.to().subtract(leg.from()).cross(leg.axis()).norm() < WITHIN_MM;
    }

    private static CutPlane plane(List<Vector3D> ring) {
        Vector3D origin = ring.get(0);
        Vector3D right = ring.get(ring.size() / 3).subtract(origin).normalize();
        Vector3D across = ring.get(2 * ring.size() / 3).subtract(origin);
        Vector3D up = across.subtract(right.multiply(across.dot(right))).normalize();
        return new CutPlane(origin, right, up);
    }

    /** A random run of two to four legs, with takeoffs at its ends one time in three; nothing where bends leave no room. */
    private static Optional<List<DuctPiece>> drawn(long seed) {
        var random = new Random(seed);
        List<Leg> legs = new ArrayList<>();
        Spot at = Spot.of(Vector3D.of(random.nextInt(200), random.nextInt(200), random.nextInt(200)));
        Way way = WAYS.get(random.nextInt(6));
        Cross section = section(random, way.axis());
        int count = 2 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            Leg leg = leg(random, i, at, way, section, legs);
            legs.add(leg);
            at = leg.to();
            way = next(random, way);
            section = leg.end().turned(way.axis());
        }
        Stack wall = Stack.constant(WALL_MM);
        List<LegShape> shapes = new ArrayList<>();
        new LegShapes(legs, wall, new Troubles(Map.of())).shapes().forEach(shape -> shape.ifPresent(shapes::add));
        if (shapes.size() < legs.size()) {
            return Optional.empty();
        }
        Optional<Tap> tap = random.nextInt(3) == 0 ? Optional.of(new Tap("runs.main", "left", 1.5)) : Optional.empty();
        return Optional.of(DuctPieces.of(
                legs.stream().map(leg -> leg.told(WALL_MM, Vanes.NONE)).toList(),
                shapes.stream().map(LegShape::bodies).toList(),
                Screws.NONE,
                tap,
                tap));
    }

    private static Leg leg(Random random, int i, Spot at, Way way, Cross start, List<Leg> before) {
        Cross end = random.nextInt(2) == 0 ? start : section(random, way.axis());
        Spot to = at.plus(way.unit(), Stack.constant(300 + random.nextInt(700)));
        String flush = "";
        List<Axis> across = List.of(Cross.first(way.axis()), Cross.second(way.axis()));
        if (!end.equals(start) && random.nextBoolean()) {
            Way side = Way.of(across.get(random.nextInt(2)), random.nextBoolean() ? 1 : -1);
            flush = side.face();
            Stack more = start.size(side.axis()).minus(end.size(side.axis()));
            to = to.plus(side.unit(), more.times(0.5));
        }
        if (random.nextInt(3) == 0) {
            to = to.plus(across.get(random.nextInt(2)).unit(), Stack.constant(random.nextInt(120) - 60));
        }
        boolean corner = i > 0 && before.get(i - 1).way().axis() != way.axis();
        Optional<Stack> bend = corner && random.nextBoolean()
                ? Optional.of(Stack.constant(60 + random.nextInt(200)))
                : Optional.empty();
        var station = new ToldStation(
                "runs.drawn.path[" + (i + 1) + "]",
                Map.of(),
                Optional.empty(),
                flush,
                Optional.empty(),
                "",
                List.of(),
                "",
                "",
                List.of());
        return new Leg(station, "hut", way, at, to, start, end, bend, Way.outOf(flush), Set.of());
    }

    /** Straight on one time in four, else round a corner. */
    private static Way next(Random random, Way way) {
        if (random.nextInt(4) == 0) {
            return way;
        }
        Axis axis = List.of(Cross.first(way.axis()), Cross.second(way.axis())).get(random.nextInt(2));
        return Way.of(axis, random.nextBoolean() ? 1 : -1);
    }

    private static Cross section(Random random, Axis axis) {
        Cross.Form form = FORMS.get(random.nextInt(3));
        Stack first = Stack.constant(30 + random.nextInt(270));
        Stack second = form == Cross.Form.ROUND ? first : Stack.constant(30 + random.nextInt(270));
        return Cross.of(axis, first, second, form);
    }
}
