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
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.SampleMeshes;
import org.spile.geometry.kernel.solid.Solid;

/** A sphere of 1,280 triangles against boxes and against its like: the searches through the triangles, per pair. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@OperationsPerInvocation(MeshBenchmark.COUNT)
public class MeshBenchmark {
    static final int COUNT = 200;

    private static final double RADIUS_MM = 200;

    private final TriangleSearch toSolid = new TriangleSearch();
    private final MeshPairSearch toMesh = new MeshPairSearch();
    private final MeshClearance clearance = new MeshClearance();
    private final List<Solid> solids = new ArrayList<>();
    private final List<Solid> overlapping = new ArrayList<>();
    private final List<Mesh> meshes = new ArrayList<>();
    private Mesh sphere;

    /** Draws the pairs and holds the distances against those of the sphere that the triangles stand for. */
    @Setup
    public void draw() {
        sphere = SampleMeshes.icosphere(RADIUS_MM, 3);
        RandomSolids random = new RandomSolids(61);
        while (solids.size() < COUNT || overlapping.size() < COUNT) {
            Solid box = random.box().moved(random.anyTurn()).moved(random.shift(600));
            Gap gap = clearance.between(sphere, box);
            if (gap.lowerMm() > 1 && solids.size() < COUNT) {
                solids.add(box);
            } else if (gap.upperMm() < -1 && overlapping.size() < COUNT) {
                overlapping.add(box);
            }
        }
        while (meshes.size() < COUNT) {
            double off = random.between(2.1 * RADIUS_MM, 4 * RADIUS_MM);
            Mesh other = sphere.moved(random.anyTurn())
                    .moved(Move.shift(random.direction().multiply(off)));
            Gap gap = clearance.between(sphere, other);
            double round = off - 2 * RADIUS_MM;
            if (!(gap.lowerMm() >= round - 1e-6 && gap.upperMm() <= round + 2)) {
                throw new IllegalStateException(gap + " for spheres " + round + " mm apart");
            }
            meshes.add(other);
        }
    }

    /** Certified distance of the mesh to a box. */
    @Benchmark
    public void distanceToBox(Blackhole hole) {
        search(solids, hole);
    }

    /** Deepest triangle in a box that overlaps the mesh. */
    @Benchmark
    public void deepestInBox(Blackhole hole) {
        search(overlapping, hole);
    }

    private void search(List<Solid> others, Blackhole hole) {
        for (int i = 0; i < COUNT; i++) {
            toSolid.find(sphere, 0, 0, 0, others.get(i));
            hole.consume(toSolid.lower);
            hole.consume(toSolid.upper);
        }
    }

    /** Certified distance of two meshes of 1,280 triangles each. */
    @Benchmark
    public void distanceToMesh(Blackhole hole) {
        for (int i = 0; i < COUNT; i++) {
            toMesh.find(sphere, 0, 0, 0, meshes.get(i));
            hole.consume(toMesh.lower);
            hole.consume(toMesh.upper);
        }
    }

    /** The whole answer for a box that overlaps: deepest triangle, what is held, a way out, witnesses. */
    @Benchmark
    public void gapOverlapping(Blackhole hole) {
        for (int i = 0; i < COUNT; i++) {
            hole.consume(clearance.between(sphere, overlapping.get(i)));
        }
    }
}
