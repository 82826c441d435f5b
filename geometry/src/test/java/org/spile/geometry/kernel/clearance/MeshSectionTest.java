package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.SampleMeshes;

/** Sections of meshes against closed forms, against those of solids, and against thin slices by Commons Geometry. */
class MeshSectionTest {
    private static final Precision.DoubleEquivalence FINE = Precision.doubleEquivalenceOfEpsilon(1e-7);
    private static final double[] CUBE = SampleMeshes.boxPoints(0, 0, 0, 100, 100, 100);
    private static final int[] BOX = SampleMeshes.boxCorners();

    private static CutPlane plane(Vector3D at, Vector3D normal) {
        Vector3D right = normal.orthogonal();
        return new CutPlane(at, right, normal.normalize().cross(right));
    }

    private static double area(Mesh mesh, CutPlane plane) {
        MeshSection section = MeshSection.of(mesh, plane);
        assertEquals(List.of(), section.chains());
        double area = section.areaMm2().orElseThrow();
        // Several outlines lie on the grid: half a step of 1 µm along no more than 2 m of edge.
        double slack = section.rings().size() > 1 ? 1 : 1e-6;
        assertEquals(area, Regions.areaMm2(section.outlines().orElseThrow()), slack);
        return area;
    }

    @Test
    void aCubeByClosedForms() {
        Mesh cube = SampleMeshes.sound(CUBE, BOX);
        assertEquals(10_000, area(cube, CutPlane.horizontal(37)), 1e-9);
        assertEquals(
                List.of(Outline.rectangle(0, 0, 100, 100)),
                MeshSection.of(cube, CutPlane.horizontal(37)).outlines().orElseThrow());
        // Square to a space diagonal through the middle: a regular hexagon of side 100/√2, area 3√3/2 of its square.
        Vector3D diagonal = Vector3D.of(1, 1, 1);
        CutPlane middle = plane(Vector3D.of(50, 50, 50), diagonal);
        assertEquals(3 * Math.sqrt(3) / 2 * 5000, area(cube, middle), 1e-9);
        assertEquals(6, MeshSection.of(cube, middle).rings().get(0).size());
        // Through three corners: a triangle of side 100·√2. Along an edge and its opposite: 100 by 100·√2.
        assertEquals(Math.sqrt(3) / 4 * 20_000, area(cube, plane(Vector3D.of(100, 0, 0), diagonal)), 1e-6);
        assertEquals(100 * 100 * Math.sqrt(2), area(cube, plane(Vector3D.ZERO, Vector3D.of(1, -1, 0))), 1e-6);
        assertEquals(0, area(cube, CutPlane.horizontal(150)));
    }

    @Test
    void aSphereWithinItsFacets() {
        Mesh sphere = SampleMeshes.icosphere(200, 3);
        RandomSolids random = new RandomSolids(51);
        for (int run = 0; run < 200; run++) {
            double off = random.between(0, 150);
            Vector3D way = random.direction();
            double found = area(sphere, plane(way.multiply(off), way));
            // The facets lie between the spheres of 199 and of 200.
            assertTrue(found <= Math.PI * (200 * 200 - off * off), "at " + off + ": " + found);
            assertTrue(found >= Math.PI * (199 * 199 - off * off), "at " + off + ": " + found);
        }
    }

    @Test
    void convexMeshesAgreeWithTheSectionsOfSolids() {
        RandomSolids random = new RandomSolids(52);
        Mesh box = SampleMeshes.box(0, 0, 0, 100, 200, 50);
        ConvexPolyhedron solid = box.convex().orElseThrow();
        for (int run = 0; run < 500; run++) {
            Move move = random.anyTurn().then(random.shift(3000));
            CutPlane plane = plane(solid.moved(move).bounds().middle().add(random.place(70)), random.direction());
            double expected = Regions.areaMm2(Cut.by(solid.moved(move), plane));
            assertEquals(expected, area(box.moved(move), plane), 1e-6 + 1e-9 * expected);
        }
    }

    @Test
    void thinSlicesHaveTheVolumeThatTheSectionsGiveThem() {
        RandomSolids random = new RandomSolids(53);
        int cut = 0;
        for (Mesh sample : List.of(SampleMeshes.ell(), SampleMeshes.channel())) {
            for (int run = 0; run < 25; run++) {
                Mesh mesh = sample.moved(random.anyTurn()).moved(random.shift(800));
                Vector3D normal = random.direction();
                double thick = 0.5;
                Vector3D at = mesh.bounds().middle().add(random.place(60));
                // Simpson's rule is exact for a slice that holds no corner (prismoid).
                double sum = 0;
                for (int i = 0; i < 3; i++) {
                    sum += (i == 1 ? 4 : 1) * area(mesh, plane(at.add(normal.multiply(i * thick / 2)), normal));
                }
                if (!holdsCorner(mesh, at.dot(normal), normal, thick)) {
                    cut += sum > 0 ? 1 : 0;
                    double volume = byCommonsGeometry(mesh, at, normal, thick);
                    assertEquals(volume, sum / 6 * thick, 1e-5 * volume + 1e-3, "run " + run);
                }
            }
        }
        assertTrue(cut > 25, "cut " + cut);
    }

    private static boolean holdsCorner(Mesh mesh, double off, Vector3D normal, double thick) {
        for (int k = 0; k < 3 * mesh.count(); k++) {
            double height = mesh.corner(k / 3, k % 3).dot(normal) - off;
            if (height > -1e-3 && height < thick + 1e-3) {
                return true;
            }
        }
        return false;
    }

    private static double byCommonsGeometry(Mesh mesh, Vector3D at, Vector3D normal, double thick) {
        SimpleTriangleMesh.Builder builder = SimpleTriangleMesh.builder(FINE);
        for (int t = 0; t < mesh.count(); t++) {
            builder.addFaceUsingVertices(mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2));
        }
        RegionBSPTree3D body = builder.build().toTree();
        ConvexVolume slab = ConvexVolume.fromBounds(
                Planes.fromPointAndNormal(at, normal.negate(), FINE),
                Planes.fromPointAndNormal(at.add(normal.multiply(thick)), normal, FINE));
        body.intersection(slab.toTree());
        return body.getSize();
    }

    @Test
    void hollowsAndIslandsComeOut() {
        double[] points = SampleMeshes.joined(
                SampleMeshes.joined(CUBE, SampleMeshes.boxPoints(20, 20, 20, 80, 80, 80)),
                SampleMeshes.boxPoints(40, 40, 40, 60, 60, 60));
        int[] corners = SampleMeshes.joined(16, SampleMeshes.joined(8, BOX, SampleMeshes.turned(BOX)), BOX);
        MeshSection section = MeshSection.of(SampleMeshes.sound(points, corners), CutPlane.horizontal(50));
        assertEquals(10_000 - 3600 + 400, section.areaMm2().orElseThrow(), 1e-9);
        List<Outline> outlines = section.outlines().orElseThrow();
        assertEquals(2, outlines.size());
        assertEquals(1, outlines.stream().mapToInt(o -> o.holes().size()).sum());
        assertEquals(6800, Regions.areaMm2(outlines), 1e-9);
        Mesh beside = SampleMeshes.sound(
                SampleMeshes.joined(CUBE, SampleMeshes.boxPoints(100, 100, 0, 150, 150, 100)),
                SampleMeshes.joined(8, BOX, BOX));
        assertEquals(12_500, area(beside, CutPlane.horizontal(50)), 1e-9);
        assertEquals(2, MeshSection.of(beside, CutPlane.horizontal(50)).rings().size());
    }

    @Test
    void facesInThePlane() {
        Mesh cube = SampleMeshes.sound(CUBE, BOX);
        for (double height : new double[] {0, 100, 100 + 9e-7, 100 - 9e-7}) {
            assertEquals(
                    List.of(), MeshSection.of(cube, CutPlane.horizontal(height)).rings());
        }
        assertEquals(10_000, area(cube, CutPlane.horizontal(100 - 2e-6)), 1e-3);
        // The channel's slot has its floor at y = 20: what lies behind counts, below it the web, above it two flanges.
        Mesh channel = SampleMeshes.channel();
        assertEquals(200 * 50, area(channel, plane(Vector3D.of(0, 20, 0), Vector3D.Unit.PLUS_Y)), 1e-9);
        assertEquals(2 * 40 * 50, area(channel, plane(Vector3D.of(0, 20, 0), Vector3D.Unit.MINUS_Y)), 1e-9);
    }

    @Test
    void anOpenMeshGivesChainsAndNoArea() {
        Mesh open = SampleMeshes.sound(CUBE, Arrays.copyOf(BOX, 30));
        MeshSection section = MeshSection.of(open, CutPlane.horizontal(50));
        assertTrue(section.areaMm2().isEmpty() && section.outlines().isEmpty());
        assertEquals(List.of(), section.rings());
        assertEquals(1, section.chains().size());
        List<Vector2D> chain = section.chains().get(0);
        assertEquals(Vector2D.of(0, 0), chain.get(0));
        assertEquals(Vector2D.of(0, 100), chain.get(chain.size() - 1));
        double length = 0;
        for (int i = 1; i < chain.size(); i++) {
            length += chain.get(i).distance(chain.get(i - 1));
        }
        assertEquals(300, length, 1e-9);
        // Cut where it is whole, it still bounds no space.
        MeshSection above = MeshSection.of(
                SampleMeshes.sound(
                        SampleMeshes.joined(CUBE, 0, 0, 300, 9, 0, 300, 0, 9, 300),
                        SampleMeshes.joined(0, BOX, 8, 9, 10)),
                CutPlane.horizontal(50));
        assertEquals(1, above.rings().size());
        assertTrue(above.areaMm2().isEmpty());
    }
}
