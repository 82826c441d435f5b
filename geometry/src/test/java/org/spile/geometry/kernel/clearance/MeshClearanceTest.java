package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.MeshFlaw;
import org.spile.geometry.kernel.solid.MeshResult;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;

/** A cube as a mesh against the same cube as a polyhedron, and closed forms. */
class MeshClearanceTest {
    private static final double[] POINTS = {
        0, 0, 0, 100, 0, 0, 100, 100, 0, 0, 100, 0, 0, 0, 100, 100, 0, 100, 100, 100, 100, 0, 100, 100
    };
    private static final int[] CUBE = {
        0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7
    };

    private static Mesh mesh(int... corners) {
        return assertInstanceOf(MeshResult.Sound.class, Mesh.of(POINTS, corners))
                .mesh();
    }

    @Test
    void aClosedCubeHasItsVolumeAndNoFlaw() {
        assertTrue(mesh(CUBE).isClosed(), () -> mesh(CUBE).flaws().toString());
        assertEquals(1e6, mesh(CUBE).volumeMm3().orElseThrow(), 1e-6);
    }

    @Test
    void apartItIsAsFarAsThePolyhedron() {
        RandomSolids random = new RandomSolids(31);
        Mesh cube = mesh(CUBE);
        int apart = 0;
        for (int run = 0; run < 2000; run++) {
            ConvexPolyhedron other = random.box().moved(random.anyTurn()).moved(random.shift(500));
            Move move = random.anyTurn().then(random.shift(5000));
            Gap truth = Clearance.between(Prism.box(0, 0, 0, 100, 100, 100), other);
            Gap found = new MeshClearance().between(cube.moved(move), other.moved(move));
            if (truth.lowerMm() > 1e-6) {
                apart++;
                assertEquals(truth.upperMm(), found.upperMm(), 1e-6);
                assertEquals(truth.lowerMm(), found.lowerMm(), 1e-6);
            } else if (truth.upperMm() < -1e-3) {
                assertTrue(found.upperMm() < 0, "overlap not seen in run " + run);
                assertTrue(found.lowerMm() <= truth.upperMm() + 1e-6 && truth.lowerMm() <= found.upperMm() + 1e-6);
            }
        }
        assertTrue(apart > 500);
    }

    @Test
    void aBoxHeldInsideOverlapsAClosedCubeAndIsUndecidedInAnOpenOne() {
        Prism held = Prism.box(40, 40, 40, 60, 60, 60);
        assertEquals(Sufficiency.SHORT, Sufficiency.of(new MeshClearance().between(mesh(CUBE), held), 0));
        Mesh open = mesh(Arrays.copyOf(CUBE, 30));
        assertFalse(open.isClosed());
        assertTrue(open.flaws().stream().allMatch(flaw -> flaw.kind() == MeshFlaw.Kind.OPEN_EDGE));
        assertEquals(Sufficiency.UNDECIDED, Sufficiency.of(new MeshClearance().between(open, held), 0));
        assertEquals(40, new MeshClearance().toSurface(open, held).lowerMm(), 1e-9);
    }

    @Test
    void insideOutAndUselessMeshesAreTold() {
        int[] turned = CUBE.clone();
        for (int t = 0; t < turned.length; t += 3) {
            turned[t] = CUBE[t + 1];
            turned[t + 1] = CUBE[t];
        }
        assertEquals(MeshFlaw.Kind.INSIDE_OUT, mesh(turned).flaws().get(0).kind());
        MeshResult.Refused line = assertInstanceOf(MeshResult.Refused.class, Mesh.of(POINTS, new int[] {0, 1, 1}));
        assertEquals(MeshFlaw.Kind.NO_AREA, line.flaws().get(0).kind());
        MeshResult.Refused none = assertInstanceOf(MeshResult.Refused.class, Mesh.of(POINTS, new int[0]));
        assertEquals(MeshFlaw.Kind.EMPTY, none.flaws().get(0).kind());
    }
}
