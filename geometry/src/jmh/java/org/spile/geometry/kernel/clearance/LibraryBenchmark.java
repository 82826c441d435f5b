package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.numbers.core.Precision;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;

/** What the libraries alone take for such questions: the yardstick. They give the plan's distance, or a common volume. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LibraryBenchmark {
    private static final int SCENE = 500;
    private static final int BOOLEANS = 50;
    private static final double MARGIN_MM = 25;

    private final GeometryFactory plans = new GeometryFactory();
    private final Precision.DoubleEquivalence precision = Precision.doubleEquivalenceOfEpsilon(1e-6);
    private final List<Geometry[]> pairs = new ArrayList<>();
    private final List<Geometry> scene = new ArrayList<>();
    private final List<RegionBSPTree3D[]> volumes = new ArrayList<>();

    /** Draws the same boxes as the other benchmarks and sees that each library agrees with plain computation. */
    @Setup
    public void draw() {
        BoxPairs apart = BoxPairs.yawed(false);
        BoxPairs deep = BoxPairs.turned(true);
        for (int i = 0; i < BoxPairs.COUNT; i++) {
            Geometry[] two = {
                plan(apart.first.get(i).plain()), plan(apart.second.get(i).plain())
            };
            pairs.add(two);
            checkPlan(apart, i, two[0].distance(two[1]));
        }
        for (Twin twin : new BoxScene(SCENE, 41).twins) {
            scene.add(plan(twin.plain()));
        }
        for (int i = 0; i < BOOLEANS; i++) {
            volumes.add(new RegionBSPTree3D[] {
                tree(deep.first.get(i).plain()), tree(deep.second.get(i).plain())
            });
            RegionBSPTree3D common = RegionBSPTree3D.empty();
            common.intersection(volumes.get(i)[0], volumes.get(i)[1]);
            if (!(common.getSize() > 0)) {
                throw new IllegalStateException("pair " + i + " overlaps, yet has no common volume");
            }
        }
    }

    /** The plan's distance and that of the heights make up the distance in space, by Pythagoras. */
    private static void checkPlan(BoxPairs pairs, int pair, double planMm) {
        Box3 a = pairs.first.get(pair).plain().bounds();
        Box3 b = pairs.second.get(pair).plain().bounds();
        double heightMm = Math.max(0, Math.max(b.minZ() - a.maxZ(), a.minZ() - b.maxZ()));
        double space = pairs.plainMm.get(pair);
        if (Math.abs(Math.hypot(planMm, heightMm) - space) > 1e-6) {
            throw new IllegalStateException("pair " + pair + ": " + planMm + " mm in plan, " + space + " in space");
        }
    }

    private Geometry plan(ConvexPolyhedron solid) {
        Coordinate[] corners = solid.vertices().stream()
                .map(v -> new Coordinate(v.getX(), v.getY()))
                .toArray(Coordinate[]::new);
        return plans.createMultiPointFromCoords(corners).convexHull();
    }

    private RegionBSPTree3D tree(ConvexPolyhedron solid) {
        List<int[]> triangles = new ArrayList<>();
        for (List<Integer> face : solid.faces()) {
            for (int i = 2; i < face.size(); i++) {
                triangles.add(new int[] {face.get(0), face.get(i - 1), face.get(i)});
            }
        }
        Vector3D[] corners = solid.vertices().toArray(Vector3D[]::new);
        return SimpleTriangleMesh.from(corners, triangles.toArray(int[][]::new), precision)
                .toTree();
    }

    /** JTS: distance of two four-cornered plans. Per pair. */
    @Benchmark
    @OperationsPerInvocation(BoxPairs.COUNT)
    public void planDistance(Blackhole hole) {
        for (Geometry[] two : pairs) {
            hole.consume(two[0].distance(two[1]));
        }
    }

    /** JTS: all pairs of 500 plans. */
    @Benchmark
    public int planDistanceAllPairs() {
        int near = 0;
        for (int i = 0; i < SCENE; i++) {
            for (int j = i + 1; j < SCENE; j++) {
                if (scene.get(i).distance(scene.get(j)) < MARGIN_MM) {
                    near++;
                }
            }
        }
        return near;
    }

    /** Commons Geometry: the common volume of two boxes that overlap. Per pair. */
    @Benchmark
    @OperationsPerInvocation(BOOLEANS)
    public void commonVolume(Blackhole hole) {
        for (RegionBSPTree3D[] two : volumes) {
            RegionBSPTree3D common = RegionBSPTree3D.empty();
            common.intersection(two[0], two[1]);
            hole.consume(common.isEmpty());
        }
    }
}
