package org.spile.geometry.kernel.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.solid.MeshFlaw.Kind;

/** What keeps triangles from bounding a space, each with its place; volumes and sides against Commons Geometry. */
class MeshTest {
    private static final double[] CUBE = SampleMeshes.boxPoints(0, 0, 0, 100, 100, 100);
    private static final int[] BOX = SampleMeshes.boxCorners();

    private static List<MeshFlaw> flaws(double[] points, int... corners) {
        return SampleMeshes.sound(points, corners).flaws();
    }

    private static List<MeshFlaw> refused(double[] points, int... corners) {
        return assertInstanceOf(MeshResult.Refused.class, Mesh.of(points, corners))
                .flaws();
    }

    private static void assertFlaw(MeshFlaw flaw, Kind kind, List<Integer> triangles, double x, double y, double z) {
        assertEquals(kind, flaw.kind());
        assertEquals(triangles, flaw.triangles());
        assertEquals(0, flaw.at().distance(Vector3D.of(x, y, z)), 1e-9, () -> kind + " at " + flaw.at());
    }

    @Test
    void aSoundCubeHasNoFlaw() {
        assertEquals(List.of(), flaws(CUBE, BOX));
        assertTrue(SampleMeshes.sound(CUBE, BOX).isClosed());
        assertEquals(1, SampleMeshes.sound(CUBE, BOX).shells());
    }

    @Test
    void openEdgesAreToldAtTheirMiddles() {
        // Without the triangle (3, 4, 7): the sides of the hole are 3-4, 4-7 and 7-3.
        List<MeshFlaw> open = flaws(CUBE, Arrays.copyOf(BOX, 33));
        assertEquals(3, open.size());
        assertFlaw(open.get(0), Kind.OPEN_EDGE, List.of(3), 0, 50, 100);
        assertFlaw(open.get(1), Kind.OPEN_EDGE, List.of(8), 0, 100, 50);
        assertFlaw(open.get(2), Kind.OPEN_EDGE, List.of(10), 0, 50, 50);
        Mesh mesh = SampleMeshes.sound(CUBE, Arrays.copyOf(BOX, 33));
        assertFalse(mesh.isClosed());
        assertEquals(Side.NOT_KNOWN, mesh.side(Vector3D.of(50, 50, 50)));
        assertTrue(mesh.volumeMm3().isEmpty());
    }

    @Test
    void aTurnedTriangleIsToldByItsThreeEdges() {
        int[] corners = BOX.clone();
        corners[0] = BOX[1];
        corners[1] = BOX[0];
        List<MeshFlaw> found = flaws(CUBE, corners);
        assertEquals(3, found.size());
        assertTrue(found.stream().allMatch(flaw -> flaw.kind() == Kind.TURNED_NEIGHBOUR));
        assertFlaw(found.get(0), Kind.TURNED_NEIGHBOUR, List.of(0, 1), 50, 50, 0);
    }

    @Test
    void aFinMakesAnEdgeOfThree() {
        double[] points = SampleMeshes.joined(CUBE, 50, 50, 200);
        List<MeshFlaw> found = flaws(points, SampleMeshes.joined(0, BOX, 4, 5, 8));
        assertFlaw(found.get(0), Kind.CROWDED_EDGE, List.of(2, 5, 12), 50, 0, 100);
        assertEquals(3, found.size());
        assertFlaw(found.get(1), Kind.OPEN_EDGE, List.of(12), 75, 25, 150);
        assertFlaw(found.get(2), Kind.OPEN_EDGE, List.of(12), 25, 25, 150);
    }

    @Test
    void insideOutShellsAreTold() {
        List<MeshFlaw> out = flaws(CUBE, SampleMeshes.turned(BOX));
        assertEquals(1, out.size());
        assertFlaw(out.get(0), Kind.INSIDE_OUT, List.of(0), 200.0 / 3, 100.0 / 3, 0);
        double[] inner = SampleMeshes.boxPoints(20, 20, 20, 40, 40, 40);
        double[] both = SampleMeshes.joined(CUBE, inner);
        // A hollow faces inwards; a lump that faces outwards within another counts its space twice.
        Mesh hollow = SampleMeshes.sound(both, SampleMeshes.joined(8, BOX, SampleMeshes.turned(BOX)));
        assertEquals(1e6 - 8000, hollow.volumeMm3().orElseThrow(), 1e-6);
        assertEquals(Side.OUTSIDE, hollow.side(Vector3D.of(30, 30, 30)));
        assertEquals(Side.INSIDE, hollow.side(Vector3D.of(60, 30, 30)));
        List<MeshFlaw> twice = flaws(both, SampleMeshes.joined(8, BOX, BOX));
        assertFlaw(twice.get(0), Kind.INSIDE_OUT, List.of(12), 20 + 40.0 / 3, 20 + 20.0 / 3, 20);
    }

    @Test
    void crossingsAreToldInTheMiddleOfWhatTheTrianglesShare() {
        // A tetrahedron's tip through the cube's top: the tip's sides cut the two triangles of the top.
        double[] points = SampleMeshes.joined(CUBE, 60, 20, 50, 40, 10, 150, 80, 10, 150, 60, 40, 150);
        List<MeshFlaw> found = flaws(points, SampleMeshes.joined(8, BOX, 0, 2, 1, 0, 3, 2, 0, 1, 3, 1, 2, 3));
        assertTrue(found.stream().allMatch(flaw -> flaw.kind() == Kind.SELF_CROSSING), found::toString);
        // Half way up the tip the front side runs from (50, 15) to (70, 15), all in the triangle below the diagonal.
        MeshFlaw front = found.stream()
                .filter(flaw -> flaw.triangles().equals(List.of(2, 12))
                        || flaw.triangles().equals(List.of(2, 14)))
                .filter(flaw -> Math.abs(flaw.at().getY() - 15) < 1e-6)
                .findFirst()
                .orElseThrow();
        assertEquals(0, front.at().distance(Vector3D.of(60, 15, 100)), 1e-9);
    }

    @Test
    void sheetsThatLieOnEachOtherAreToldInTheMiddleOfTheirOverlap() {
        double[] points = {0, 0, 0, 30, 0, 0, 0, 30, 0, 10, 0, 0, 40, 0, 0, 10, 30, 0};
        MeshFlaw over = flaws(points, 0, 1, 2, 3, 4, 5).stream()
                .filter(flaw -> flaw.kind() == Kind.SELF_CROSSING)
                .findFirst()
                .orElseThrow();
        // They share the triangle (10, 0), (30, 0), (10, 20); the middle of its corners.
        assertFlaw(over, Kind.SELF_CROSSING, List.of(0, 1), 50.0 / 3, 20.0 / 3, 0);
    }

    @Test
    void partsThatTouchAtAnEdgeOrAPointAreNotedAndStillBoundASpace() {
        double[] atEdge = SampleMeshes.joined(CUBE, SampleMeshes.boxPoints(100, 100, 0, 150, 150, 100));
        List<MeshFlaw> edge = flaws(atEdge, SampleMeshes.joined(8, BOX, BOX));
        assertEquals(1, edge.size());
        assertEquals(Kind.TOUCHING_EDGE, edge.get(0).kind());
        assertEquals(Vector3D.of(100, 100, 50), edge.get(0).at());
        double[] atPoint = SampleMeshes.joined(CUBE, SampleMeshes.boxPoints(100, 100, 100, 150, 150, 150));
        Mesh bowTie = SampleMeshes.sound(atPoint, SampleMeshes.joined(8, BOX, BOX));
        assertEquals(1, bowTie.flaws().size());
        assertEquals(Kind.BOW_TIE, bowTie.flaws().get(0).kind());
        assertEquals(Vector3D.of(100, 100, 100), bowTie.flaws().get(0).at());
        assertTrue(bowTie.isClosed());
        assertEquals(1e6 + 125_000, bowTie.volumeMm3().orElseThrow(), 1e-6);
        // One of the two inside out is found though they touch.
        List<MeshFlaw> mixed = flaws(atEdge, SampleMeshes.joined(8, BOX, SampleMeshes.turned(BOX)));
        assertTrue(mixed.stream()
                .anyMatch(flaw ->
                        flaw.kind() == Kind.INSIDE_OUT && flaw.triangles().equals(List.of(12))));
    }

    @Test
    void uselessTrianglesAreRefusedAllAtOnceWithTheirPlaces() {
        double[] points = SampleMeshes.joined(CUBE, Double.NaN, 0, 0, 2e6, 0, 0);
        int[] corners = SampleMeshes.joined(0, Arrays.copyOf(BOX, 33), 0, 1, 77, 0, -1, 1, 0, 1, 8, 2, 3, 9, 4, 4, 5);
        List<MeshFlaw> found = refused(points, corners);
        assertEquals(
                List.of(Kind.NO_SUCH_POINT, Kind.NO_SUCH_POINT, Kind.NO_PLACE, Kind.NO_PLACE, Kind.NO_AREA),
                found.stream().limit(5).map(MeshFlaw::kind).toList());
        assertEquals(
                List.of(List.of(11), List.of(12), List.of(13), List.of(14), List.of(15)),
                found.stream().limit(5).map(MeshFlaw::triangles).toList());
        assertTrue(Double.isNaN(found.get(0).at().getX()));
        assertEquals(2e6, found.get(3).at().getX());
        assertFlaw(found.get(4), Kind.NO_AREA, List.of(15), 100.0 / 3, 0, 100);
        // What is wrong with the rest is told beside it.
        assertEquals(
                3, found.stream().filter(flaw -> flaw.kind() == Kind.OPEN_EDGE).count());
        assertEquals(Kind.EMPTY, refused(CUBE).get(0).kind());
        assertThrows(IllegalArgumentException.class, () -> Mesh.of(new double[4], new int[3]));
        assertThrows(IllegalArgumentException.class, () -> Mesh.of(CUBE, new int[4]));
        assertThrows(IllegalArgumentException.class, () -> Mesh.of(CUBE, BOX, -1));
        assertThrows(IllegalArgumentException.class, () -> Mesh.of(CUBE, BOX, 1.5));
    }

    /** As STL has it: each triangle brings its own corners. */
    @Test
    void nearPointsAreJoinedWithinTheStatedDistance() {
        double[] loose = new double[3 * BOX.length];
        for (int k = 0; k < loose.length; k++) {
            // Each corner off by another tenth of a thousandth, up to 0.0008 along x.
            loose[k] = CUBE[3 * BOX[k / 3] + k % 3] + (k % 3 == 0 ? 1e-4 * (k / 3 % 9) : 0);
        }
        int[] own = new int[BOX.length];
        Arrays.setAll(own, k -> k);
        assertFalse(SampleMeshes.sound(loose, own).isClosed());
        Mesh welded = assertInstanceOf(MeshResult.Sound.class, Mesh.of(loose, own, 1e-3))
                .mesh();
        assertTrue(welded.isClosed(), () -> welded.flaws().toString());
        for (int k = 0; k < own.length; k++) {
            Vector3D given = Vector3D.of(loose[3 * k], loose[3 * k + 1], loose[3 * k + 2]);
            assertTrue(given.distance(welded.corner(k / 3, k % 3)) <= 1e-3);
        }
        double[] exact = new double[3 * BOX.length];
        Arrays.setAll(exact, k -> CUBE[3 * BOX[k / 3] + k % 3]);
        assertTrue(assertInstanceOf(MeshResult.Sound.class, Mesh.of(exact, own, 0))
                .mesh()
                .isClosed());
        assertTrue(SampleMeshes.sound(exact, own).isClosed());
    }

    private static RegionBSPTree3D byCommonsGeometry(Mesh mesh) {
        SimpleTriangleMesh.Builder builder = SimpleTriangleMesh.builder(Precision.doubleEquivalenceOfEpsilon(1e-7));
        for (int t = 0; t < mesh.count(); t++) {
            builder.addFaceUsingVertices(mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2));
        }
        return builder.build().toTree();
    }

    @Test
    void volumesAndSidesAgreeWithCommonsGeometry() {
        Move move =
                Move.about(Vector3D.of(10, 20, 30), Vector3D.of(1, 2, 3), 0.7).then(Move.shift(5000, -3000, 800));
        int inside = 0;
        for (Mesh mesh : List.of(
                SampleMeshes.ell().moved(move), SampleMeshes.icosphere(150, 2).moved(move))) {
            assertTrue(mesh.isClosed());
            RegionBSPTree3D tree = byCommonsGeometry(mesh);
            assertEquals(tree.getSize(), mesh.volumeMm3().orElseThrow(), 1e-7 * tree.getSize());
            Random random = new Random(5);
            for (int i = 0; i < 500; i++) {
                Box3 box = mesh.bounds().grown(20);
                Vector3D p = Vector3D.of(
                        box.minX() + random.nextDouble() * (box.maxX() - box.minX()),
                        box.minY() + random.nextDouble() * (box.maxY() - box.minY()),
                        box.minZ() + random.nextDouble() * (box.maxZ() - box.minZ()));
                assertEquals(tree.contains(p) ? Side.INSIDE : Side.OUTSIDE, mesh.side(p));
                inside += tree.contains(p) ? 1 : 0;
            }
        }
        assertTrue(inside > 150, "inside " + inside);
        // The L: 300 × 80 and 90 × 120, 120 high.
        assertEquals((300 * 80 + 90 * 120) * 120, SampleMeshes.ell().volumeMm3().orElseThrow(), 1e-6);
    }

    @Test
    void distancesOfPointsToASphereLieBetweenThoseToTheSpheresAroundAndWithin() {
        Mesh sphere = SampleMeshes.icosphere(200, 3);
        // The faces lie no nearer the middle than the nearest of their planes.
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < sphere.count(); t++) {
            TriangleCore lens = new TriangleCore();
            lens.load(sphere, t);
            least = Math.min(least, sphere.corner(t, 0).dot(lens.normal()));
        }
        assertTrue(least > 198 && least < 200);
        Random random = new Random(6);
        for (int i = 0; i < 500; i++) {
            Vector3D way = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                    .normalize();
            double far = 400 * random.nextDouble();
            double found = sphere.surfaceMm(way.multiply(far));
            double low = far > 200 ? far - 200 : Math.max(0, least - far);
            double high = far > 200 ? far - least : 200 - far;
            assertTrue(found >= low - 1e-9 && found <= Math.max(high, 200 - least) + 1e-9, "at " + far + ": " + found);
            double reach = sphere.reachMm(way);
            assertTrue(reach <= 200 + 1e-9 && reach >= least);
        }
    }

    @Test
    void aConvexMeshIsKnownAsSuch() {
        assertEquals(
                8,
                SampleMeshes.box(0, 0, 0, 10, 20, 30)
                        .convex()
                        .orElseThrow()
                        .vertices()
                        .size());
        assertTrue(SampleMeshes.ell().convex().isEmpty());
        assertTrue(SampleMeshes.icosphere(10, 1).convex().isPresent());
        assertTrue(SampleMeshes.icosphere(10, 2).convex().isEmpty(), "too many triangles");
        assertTrue(SampleMeshes.sound(CUBE, Arrays.copyOf(BOX, 33)).convex().isEmpty());
    }

    @Test
    void aMovedMeshKeepsItsFlawsInPlace() {
        Move move = Move.shift(1, 2, 3);
        Mesh open = SampleMeshes.sound(CUBE, Arrays.copyOf(BOX, 33)).moved(move);
        assertFlaw(open.flaws().get(0), Kind.OPEN_EDGE, List.of(3), 1, 52, 103);
        assertEquals(new Box3(1, 2, 3, 101, 102, 103), open.bounds());
        assertEquals("Mesh[11 triangles in " + open.bounds() + ", a surface]", open.toString());
    }
}
