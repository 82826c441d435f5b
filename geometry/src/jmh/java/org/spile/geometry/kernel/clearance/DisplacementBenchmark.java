package org.spile.geometry.kernel.clearance;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;

/** How far a plate must drop until it keeps 25 mm from every body of a scene. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class DisplacementBenchmark {
    private static final double MARGIN_MM = 25;
    private static final double STEP_MM = 0.5;
    private static final Vector3D DOWN = Vector3D.of(0, 0, -1);

    /** How many bodies stand round the plate. */
    @Param({"100", "500", "1000"})
    public int count;

    private BoxScene scene;
    private Twin plate;
    private List<Body> moving;

    /** Builds the scene and holds the travel against distances by all features. */
    @Setup
    public void build() {
        scene = new BoxScene(count, 43);
        plate = Twin.box(900, 600, 40, Move.turn(0.3, Vector3D.ZERO).then(Move.shift(0, 0, scene.sideMm / 4)));
        moving = List.of(Body.of(plate.solid()));
        double travel = displacement().travelMm();
        if (!(travel > 0)) {
            throw new IllegalStateException("the plate is free where it stands");
        }
        if (least(travel) < MARGIN_MM - 1e-5) {
            throw new IllegalStateException("not clear after " + travel + " mm");
        }
        for (double t = 0; t < travel - 1e-3; t += STEP_MM) {
            if (least(t) > MARGIN_MM + 1e-5) {
                throw new IllegalStateException("clear after " + t + " mm already, not first after " + travel);
            }
        }
    }

    private double least(double travelMm) {
        BruteForce plain = new BruteForce();
        ConvexPolyhedron there = plate.plain().moved(Move.shift(DOWN.multiply(travelMm)));
        double least = Double.POSITIVE_INFINITY;
        for (Twin other : scene.twins) {
            if (there.bounds().gapTo(other.plain().bounds()) < 2 * MARGIN_MM) {
                least = Math.min(least, plain.signedDistance(there, other.plain()));
            }
        }
        return least;
    }

    /** Least travel downwards. */
    @Benchmark
    public LeastTravel displacement() {
        return LeastTravel.clear(moving, scene.bodies, DOWN, (i, j) -> MARGIN_MM);
    }
}
