package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Solid;

/** Whole scenes of growing size: re-checking all, one moved body, looking for neighbours. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SceneBenchmark {
    private static final double MARGIN_MM = 25;
    private static final double QUERY_MM = 100;
    private static final int QUERIES = 1_000;

    /** How many bodies. */
    @Param({"100", "500", "1000", "10000"})
    public int count;

    private final PairDistance pair = new PairDistance();
    private BoxScene scene;
    private BroadPhase tree;
    private List<Body> moved;
    private List<Box3> parts;
    private int turn;
    private int near;

    /** Builds the scene and holds its answers against all pairs tried one by one. */
    @Setup
    public void build() {
        scene = new BoxScene(count, 41);
        tree = BroadPhase.of(scene.bounds);
        moved = new ArrayList<>();
        for (Body body : scene.bodies) {
            moved.add(body.moved(Move.shift(7, -5, 3)));
        }
        parts = new ArrayList<>();
        for (int i = 0; i < QUERIES; i++) {
            parts.add(scene.part(true).plain().bounds());
        }
        SceneCheck check = new SceneCheck(scene);
        check.count("pairs nearer than " + MARGIN_MM, fullCheck(), check.nearPairs(MARGIN_MM));
        check.count("parts within " + QUERY_MM, queries(), check.nearBoxes(parts, QUERY_MM));
        for (int i = 0; i < Math.min(count, 100); i++) {
            turn = i;
            check.count("bodies near body " + i, oneMoved(), check.nearMoved(i, Move.shift(7, -5, 3), MARGIN_MM));
        }
    }

    /** Tree and all pairs nearer than 25 mm, from nothing. */
    @Benchmark
    public int fullCheck() {
        List<Box3> bounds = new ArrayList<>(count);
        for (Body body : scene.bodies) {
            bounds.add(body.bounds());
        }
        near = 0;
        BroadPhase.of(bounds).forEachPair(MARGIN_MM, this::measure);
        return near;
    }

    private void measure(int i, int j) {
        measure(scene.bodies.get(i), scene.bodies.get(j));
    }

    private void measure(Body a, Body b) {
        for (Solid first : a.solids()) {
            for (Solid second : b.solids()) {
                pair.measure(first, second);
                if (pair.upperMm() < MARGIN_MM) {
                    near++;
                }
            }
        }
    }

    /** One body has moved: its neighbours nearer than 25 mm, by the tree at hand. */
    @Benchmark
    public int oneMoved() {
        int which = turn;
        turn = which + 1 < count ? which + 1 : 0;
        Body body = moved.get(which);
        near = 0;
        tree.near(body.bounds(), MARGIN_MM, j -> {
            if (j != which) {
                measure(body, scene.bodies.get(j));
            }
        });
        return near;
    }

    /** The tree alone. */
    @Benchmark
    public BroadPhase tree() {
        return BroadPhase.of(scene.bounds);
    }

    /** The bodies whose bounds lie within 100 mm of 1,000 other parts. */
    @Benchmark
    public int queries() {
        near = 0;
        for (Box3 part : parts) {
            tree.near(part, QUERY_MM, j -> near++);
        }
        return near;
    }
}
