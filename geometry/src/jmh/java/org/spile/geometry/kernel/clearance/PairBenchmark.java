package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/** One pair at a time: certified distance, depth, the travels at which two boxes overlap. Per pair. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(BoxPairs.COUNT)
public class PairBenchmark {
    private static final double MARGIN_MM = 25;

    private final PairDistance pair = new PairDistance();
    private final CorePair cores = new CorePair();
    private final TravelContact contact = new TravelContact();

    /** One search a pair, so that each starts from where it ended last. */
    private final ConvexDistance[] searches = new ConvexDistance[BoxPairs.COUNT];

    private double shiftMm;

    private Solid[][] prisms;
    private ConvexCore[][] yawed;
    private ConvexCore[][] turned;
    private ConvexCore[][] yawedOverlapping;
    private ConvexCore[][] turnedOverlapping;
    private Solid[][] prismsOverlapping;

    /** Draws the pairs and holds every answer against plain computation. */
    @Setup
    public void draw() {
        BoxPairs apart = BoxPairs.yawed(false);
        BoxPairs deep = BoxPairs.yawed(true);
        BoxPairs apartTurned = BoxPairs.turned(false);
        BoxPairs deepTurned = BoxPairs.turned(true);
        prisms = solids(apart);
        prismsOverlapping = solids(deep);
        yawed = cores(apart);
        yawedOverlapping = cores(deep);
        turned = cores(apartTurned);
        turnedOverlapping = cores(deepTurned);
        checkSolids(apart, prisms);
        checkSolids(deep, prismsOverlapping);
        checkCores(apart, yawed);
        checkCores(deep, yawedOverlapping);
        checkCores(apartTurned, turned);
        checkCores(deepTurned, turnedOverlapping);
        checkAgain(apart);
        TravelCheck.hold(apart, yawed, 0);
        TravelCheck.hold(apart, yawed, MARGIN_MM);
    }

    private static Solid[][] solids(BoxPairs pairs) {
        Solid[][] solids = new Solid[BoxPairs.COUNT][];
        for (int i = 0; i < solids.length; i++) {
            solids[i] =
                    new Solid[] {pairs.first.get(i).solid(), pairs.second.get(i).solid()};
            if (!(solids[i][0] instanceof Prism && solids[i][1] instanceof Prism)) {
                throw new IllegalStateException("pair " + i + " is not upright");
            }
        }
        return solids;
    }

    private static ConvexCore[][] cores(BoxPairs pairs) {
        List<ConvexCore[]> cores = new ArrayList<>();
        for (int i = 0; i < BoxPairs.COUNT; i++) {
            cores.add(new ConvexCore[] {
                pairs.first.get(i).plain().cores().get(0),
                pairs.second.get(i).plain().cores().get(0)
            });
        }
        return cores.toArray(ConvexCore[][]::new);
    }

    private void checkSolids(BoxPairs pairs, Solid[][] solids) {
        for (int i = 0; i < solids.length; i++) {
            pair.measure(solids[i][0], solids[i][1]);
            pairs.check(i, pair.lowerMm(), pair.upperMm());
        }
    }

    private void checkCores(BoxPairs pairs, ConvexCore[][] solids) {
        for (int i = 0; i < solids.length; i++) {
            cores.measure(solids[i][0], solids[i][1]);
            pairs.check(i, cores.lower, cores.upper);
        }
    }

    private void checkAgain(BoxPairs pairs) {
        BruteForce plain = new BruteForce();
        for (int i = 0; i < searches.length; i++) {
            searches[i] = new ConvexDistance();
            searches[i].measure(yawed[i][0], 0, 0, 0, yawed[i][1]);
            searches[i].measureAgain(yawed[i][0], 0.5, 0, 0, yawed[i][1]);
            double there = plain.signedDistance(
                    pairs.first.get(i).plain().moved(Move.shift(0.5, 0, 0)),
                    pairs.second.get(i).plain());
            if (!(Math.abs(searches[i].upper - there) <= 1e-6 && Math.abs(searches[i].lower - there) <= 1e-6)) {
                throw new IllegalStateException("pair " + i + " moved: " + searches[i].upper + " mm, not " + there);
            }
        }
    }

    /** Bounds and both witness points of yawed boxes, by their corners. */
    @Benchmark
    public void distanceYawedBoxes(Blackhole hole) {
        distances(yawed, hole);
    }

    /** The same for a part that moves by half a millimetre to and fro, each search going on from where it ended. */
    @Benchmark
    public void distanceYawedBoxesAgain(Blackhole hole) {
        shiftMm = 0.5 - shiftMm;
        for (int i = 0; i < searches.length; i++) {
            ConvexDistance search = searches[i];
            search.measureAgain(yawed[i][0], shiftMm, 0, 0, yawed[i][1]);
            hole.consume(search.lower);
            hole.consume(search.upper);
            for (int axis = 0; axis < 3; axis++) {
                hole.consume(search.witnessA(axis));
                hole.consume(search.witnessB(axis));
            }
        }
    }

    /** The same in any rotation, from nothing. */
    @Benchmark
    public void distanceTurnedBoxes(Blackhole hole) {
        distances(turned, hole);
    }

    private void distances(ConvexCore[][] pairs, Blackhole hole) {
        for (ConvexCore[] two : pairs) {
            cores.measure(two[0], two[1]);
            hole.consume(cores.lower);
            hole.consume(cores.upper);
            for (int axis = 0; axis < 3; axis++) {
                hole.consume(cores.distance.witnessA(axis));
                hole.consume(cores.distance.witnessB(axis));
            }
        }
    }

    /** Bounds for two upright prisms on four-cornered outlines at any yaw. */
    @Benchmark
    public void distanceUprightPrisms(Blackhole hole) {
        measured(prisms, hole);
    }

    /** The same with the answer made into an object: bounds, witness points, direction. */
    @Benchmark
    public void gapUprightPrisms(Blackhole hole) {
        for (Solid[] two : prisms) {
            pair.measure(two[0], two[1]);
            hole.consume(pair.gap());
        }
    }

    /** Depth of upright boxes that overlap, by the prism rule. */
    @Benchmark
    public void depthUprightPrisms(Blackhole hole) {
        measured(prismsOverlapping, hole);
    }

    private void measured(Solid[][] pairs, Blackhole hole) {
        for (Solid[] two : pairs) {
            pair.measure(two[0], two[1]);
            hole.consume(pair.lowerMm());
            hole.consume(pair.upperMm());
        }
    }

    /** Depth of yawed boxes that overlap, by their corners: search first, then all deciding axes. */
    @Benchmark
    public void depthYawedBoxes(Blackhole hole) {
        depths(yawedOverlapping, hole);
    }

    /** The same in any rotation. */
    @Benchmark
    public void depthTurnedBoxes(Blackhole hole) {
        depths(turnedOverlapping, hole);
    }

    private void depths(ConvexCore[][] pairs, Blackhole hole) {
        for (ConvexCore[] two : pairs) {
            cores.measure(two[0], two[1]);
            hole.consume(cores.lower);
        }
    }

    /** Travels at which a box overlaps another, along a skew direction. */
    @Benchmark
    public void exitInterval(Blackhole hole) {
        travels(0, hole);
    }

    /** Travels at which a box comes nearer than 25 mm. */
    @Benchmark
    public void exitIntervalWithMargin(Blackhole hole) {
        travels(MARGIN_MM, hole);
    }

    private void travels(double marginMm, Blackhole hole) {
        for (ConvexCore[] two : yawed) {
            hole.consume(contact.find(two[0], two[1], TravelCheck.X, TravelCheck.Y, TravelCheck.Z, marginMm));
            hole.consume(contact.from);
            hole.consume(contact.to);
        }
    }
}
