package org.spile.geometry.kernel.clearance;

import java.util.List;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Solid;
import org.spile.geometry.kernel.solid.TriangleCore;
import org.spile.geometry.kernel.solid.TriangleTree;

/**
 * The nearest, or deepest, triangle of a shifted mesh to a solid, by branch and bound over the mesh's tree: one object
 * per thread, no allocation in the search.
 *
 * <p>Apart, the bounds are those of the pair. Overlapping, the upper bound holds (what parts two things parts their
 * pieces) and the lower one says no more than how deep the deepest triangle stands in.
 */
final class TriangleSearch {
    private final TriangleCore lens = new TriangleCore();
    private final CorePair pair = new CorePair();
    private Mesh mesh;
    private List<ConvexCore> cores;
    private Box3 box;
    private double dx;
    private double dy;
    private double dz;
    /** Where one triangle touches several cores: which, and the directions from it to them. */
    private int[] touched = {};

    private double[] touchedAlong = {};

    double lower;
    double upper;
    /** The nearest or deepest pair, and the direction from triangle to core. */
    int triangle;

    int core;
    double nx;
    double ny;
    double nz;
    /**
     * Whether a triangle touches several of the solid's cores and no one plane parts it from them all: it may stand in
     * the seam between two, where it touches both and overlaps their union.
     */
    boolean inSeam;

    void find(Mesh first, double shiftX, double shiftY, double shiftZ, Solid second) {
        mesh = first;
        cores = second.cores();
        box = second.bounds();
        dx = shiftX;
        dy = shiftY;
        dz = shiftZ;
        lower = Double.POSITIVE_INFINITY;
        upper = Double.POSITIVE_INFINITY;
        inSeam = false;
        if (touched.length < cores.size()) {
            touched = new int[cores.size()];
            touchedAlong = new double[3 * cores.size()];
        }
        visit(0);
        lower = Math.min(lower, upper);
    }

    private void visit(int node) {
        TriangleTree tree = mesh.tree();
        double gap = tree.gapTo(node, dx, dy, dz, box);
        // What touches is looked at even beside a deeper pair, for it may touch in a seam.
        if (gap > GeometryTolerance.CONTACT_MM && gap > upper) {
            return;
        }
        int right = tree.right(node);
        if (right > 0) {
            boolean rightFirst = tree.gapTo(right, dx, dy, dz, box) < tree.gapTo(node + 1, dx, dy, dz, box);
            visit(rightFirst ? right : node + 1);
            visit(rightFirst ? node + 1 : right);
            return;
        }
        for (int i = tree.first(node); i < tree.last(node); i++) {
            measure(tree.triangle(i));
        }
    }

    private void measure(int t) {
        lens.load(mesh, t);
        int touches = 0;
        for (int c = 0; c < cores.size(); c++) {
            pair.measure(lens.core(), lens.atX() + dx, lens.atY() + dy, lens.atZ() + dz, cores.get(c));
            lower = Math.min(lower, pair.lower);
            if (pair.upper < upper) {
                upper = pair.upper;
                triangle = t;
                core = c;
                nx = pair.nx;
                ny = pair.ny;
                nz = pair.nz;
            }
            if (pair.lower <= GeometryTolerance.CONTACT_MM) {
                touched[touches] = c;
                touchedAlong[3 * touches] = pair.nx;
                touchedAlong[3 * touches + 1] = pair.ny;
                touchedAlong[3 * touches + 2] = pair.nz;
                touches++;
            }
        }
        inSeam |= touches > 1 && !isParted(touches);
    }

    /** Whether one of the directions parts the triangle from all cores that it touches. */
    private boolean isParted(int touches) {
        for (int i = 0; i < touches; i++) {
            if (parts(touchedAlong[3 * i], touchedAlong[3 * i + 1], touchedAlong[3 * i + 2], touches)) {
                return true;
            }
        }
        return false;
    }

    private boolean parts(double x, double y, double z, int touches) {
        double far =
                lens.core().localReach(x, y, z) + (lens.atX() + dx) * x + (lens.atY() + dy) * y + (lens.atZ() + dz) * z;
        for (int i = 0; i < touches; i++) {
            ConvexCore other = cores.get(touched[i]);
            if (-other.reach(-x, -y, -z) - other.roundMm() - far < -GeometryTolerance.CONTACT_MM) {
                return false;
            }
        }
        return true;
    }

    /** The pair found, if the search was without shift, with its witnesses; the bounds are given. */
    Gap gap(double lowerMm, double upperMm) {
        pair.measure(mesh.core(triangle), cores.get(core));
        Gap found = pair.gap(lowerMm, upperMm);
        return new Gap(lowerMm, upperMm, found.onA(), found.onB(), found.direction(), triangle, 0);
    }
}
