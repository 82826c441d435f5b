package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
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
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Solid;

/** What a slender part comes nearest to, of all bodies of a scene, while it slides by 800 mm or turns by 90 degrees. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TravelBenchmark {
    private static final double SLIDE_MM = 800;
    private static final double TURN_DEG = 90;
    private static final double SLIDE_APART_MM = 1e-6;
    private static final int POSES = 200;

    /** How many bodies stand round it. */
    @Param({"100", "500", "1000", "10000"})
    public int count;

    private BoxScene scene;
    private BroadPhase tree;
    private Body part;
    private final Travel slide = Slide.along(Vector3D.of(2.0 / 7, 3.0 / 7, 6.0 / 7), SLIDE_MM);
    private final Travel hinge = new Hinge(Vector3D.ZERO, Vector3D.Unit.PLUS_Z);

    /** Builds the scene, and holds both answers against the distances of many poses. */
    @Setup
    public void build() {
        scene = new BoxScene(count, 47);
        tree = BroadPhase.of(scene.bounds);
        part = Body.of(scene.part(true).solid());
        check(slide, SLIDE_MM, slide(), SLIDE_APART_MM);
        check(hinge, TURN_DEG, hinge(), TravelGap.SHOWN_MM);
    }

    private void check(Travel travel, double to, TravelGap found, double apartMm) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= POSES; i++) {
            Body there = part.moved(travel.at(to * i / POSES));
            for (Body other : scene.bodies) {
                if (there.bounds().gapTo(other.bounds()) < Math.min(least, found.upperMm() + 1)) {
                    least = Math.min(least, Clearance.between(there, other).upperMm());
                }
            }
        }
        if (found.lowerMm() > least + apartMm || found.upperMm() > least + apartMm) {
            throw new IllegalStateException("a pose is " + least + " mm near, found " + found);
        }
    }

    /** The nearest on a slide. */
    @Benchmark
    public TravelGap slide() {
        return nearest(slide, SLIDE_MM, SLIDE_APART_MM);
    }

    /** The nearest on a turn. */
    @Benchmark
    public TravelGap hinge() {
        return nearest(hinge, TURN_DEG, TravelGap.SHOWN_MM);
    }

    private TravelGap nearest(Travel travel, double to, double apartMm) {
        Box3 swept = part.bounds();
        int steps = 8;
        for (int i = 1; i <= steps; i++) {
            swept = swept.with(part.moved(travel.at(to * i / steps)).bounds());
        }
        double between = travel.speedMm(part.bounds(), 0) * to / steps / 2;
        for (double reach = 50; ; reach *= 4) {
            List<Solid> near = new ArrayList<>();
            for (int other : tree.near(swept, between + reach)) {
                near.addAll(scene.bodies.get(other).solids());
            }
            if (!near.isEmpty()) {
                TravelGap gap = TravelGap.least(part, travel, 0, to, new Body(near), apartMm);
                if (gap.upperMm() <= reach) {
                    return gap;
                }
            }
        }
    }
}
