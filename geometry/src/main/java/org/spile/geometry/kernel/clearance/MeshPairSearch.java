package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.TriangleCore;
import org.spile.geometry.kernel.solid.TriangleTree;

/**
 * The nearest, or deepest, pair of triangles of two meshes, the first one shifted, by descending both trees at once:
 * one object per thread, no allocation in the search. The bounds are as those of {@link TriangleSearch}.
 */
final class MeshPairSearch {
    private static final int MOST_TOUCHES = 64;

    private final TriangleCore lensA = new TriangleCore();
    private final TriangleCore lensB = new TriangleCore();
    private final CorePair pair = new CorePair();
    private Mesh meshA;
    private Mesh meshB;
    private TriangleTree treeA;
    private TriangleTree treeB;
    private double dx;
    private double dy;
    private double dz;

    /** The first pairs found to touch or overlap. */
    final int[] touchingA = new int[MOST_TOUCHES];

    final int[] touchingB = new int[MOST_TOUCHES];
    int touches;

    double lower;
    double upper;
    /** The nearest or deepest pair, and the direction from A to B. */
    int triangleA;

    int triangleB;
    double nx;
    double ny;
    double nz;

    void find(Mesh first, double shiftX, double shiftY, double shiftZ, Mesh second) {
        meshA = first;
        meshB = second;
        treeA = first.tree();
        treeB = second.tree();
        dx = shiftX;
        dy = shiftY;
        dz = shiftZ;
        lower = Double.POSITIVE_INFINITY;
        upper = Double.POSITIVE_INFINITY;
        touches = 0;
        visit(0, 0, treeA.gapTo(0, dx, dy, dz, treeB, 0));
        lower = Math.min(lower, upper);
    }

    private void visit(int a, int b, double gap) {
        if (gap > GeometryTolerance.CONTACT_MM && gap > upper) {
            return;
        }
        int rightA = treeA.right(a);
        int rightB = treeB.right(b);
        if (rightA == 0 && rightB == 0) {
            measure(a, b);
            return;
        }
        boolean splitA = rightB == 0 || (rightA > 0 && count(treeA, a) >= count(treeB, b));
        int leftGoesA = splitA ? a + 1 : a;
        int leftGoesB = splitA ? b : b + 1;
        int rightGoesA = splitA ? rightA : a;
        int rightGoesB = splitA ? b : rightB;
        double leftGap = treeA.gapTo(leftGoesA, dx, dy, dz, treeB, leftGoesB);
        double rightGap = treeA.gapTo(rightGoesA, dx, dy, dz, treeB, rightGoesB);
        if (rightGap < leftGap) {
            visit(rightGoesA, rightGoesB, rightGap);
            visit(leftGoesA, leftGoesB, leftGap);
        } else {
            visit(leftGoesA, leftGoesB, leftGap);
            visit(rightGoesA, rightGoesB, rightGap);
        }
    }

    private static int count(TriangleTree tree, int node) {
        return tree.last(node) - tree.first(node);
    }

    private void measure(int a, int b) {
        for (int i = treeA.first(a); i < treeA.last(a); i++) {
            int t = treeA.triangle(i);
            lensA.load(meshA, t);
            for (int j = treeB.first(b); j < treeB.last(b); j++) {
                measureTriangles(t, treeB.triangle(j));
            }
        }
    }

    private void measureTriangles(int t, int u) {
        double gap = gap(t, u);
        if (gap > GeometryTolerance.CONTACT_MM && gap > upper) {
            return;
        }
        lensB.load(meshB, u);
        pair.measure(
                lensA.core(),
                lensA.atX() + dx - lensB.atX(),
                lensA.atY() + dy - lensB.atY(),
                lensA.atZ() + dz - lensB.atZ(),
                lensB.core());
        lower = Math.min(lower, pair.lower);
        if (pair.upper < upper) {
            upper = pair.upper;
            triangleA = t;
            triangleB = u;
            nx = pair.nx;
            ny = pair.ny;
            nz = pair.nz;
        }
        if (pair.lower <= GeometryTolerance.CONTACT_MM && touches < MOST_TOUCHES) {
            touchingA[touches] = t;
            touchingB[touches] = u;
            touches++;
        }
    }

    /** The greatest gap of the two triangles' ranges along an axis: no more than their distance. */
    private double gap(int t, int u) {
        return Math.max(gap(t, u, 0, dx), Math.max(gap(t, u, 1, dy), gap(t, u, 2, dz)));
    }

    private double gap(int t, int u, int axis, double shift) {
        return Math.max(
                least(meshA, t, axis) + shift - greatest(meshB, u, axis),
                least(meshB, u, axis) - shift - greatest(meshA, t, axis));
    }

    private static double least(Mesh mesh, int t, int axis) {
        return Math.min(
                mesh.coordinate(t, 0, axis), Math.min(mesh.coordinate(t, 1, axis), mesh.coordinate(t, 2, axis)));
    }

    private static double greatest(Mesh mesh, int t, int axis) {
        return Math.max(
                mesh.coordinate(t, 0, axis), Math.max(mesh.coordinate(t, 1, axis), mesh.coordinate(t, 2, axis)));
    }

    /** The pair found, if the search was without shift, with its witnesses; the bounds are given. */
    Gap gap(double lowerMm, double upperMm) {
        pair.measure(meshA.core(triangleA), meshB.core(triangleB));
        Gap found = pair.gap(lowerMm, upperMm);
        return new Gap(lowerMm, upperMm, found.onA(), found.onB(), found.direction(), triangleA, triangleB);
    }
}
