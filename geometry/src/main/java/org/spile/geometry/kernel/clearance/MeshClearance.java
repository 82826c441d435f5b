package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Side;
import org.spile.geometry.kernel.solid.Solid;
import org.spile.geometry.kernel.solid.TriangleTree;

/**
 * The signed distance of a mesh to a solid, certified, by branch and bound over the mesh's tree.
 *
 * <p>Apart, the bounds are as close as those of convex pairs. Overlapping, the depth is not known, only bounded: at
 * least that of the deepest triangle, at most the shift past the other's bounds. Where the mesh isn't closed and the
 * solid stands clear of its surface but within its bounds, overlap is undecided: the lower bound is that shift, the
 * upper one the distance to the surface. One object per thread; no allocation in the search. Lengths in mm.
 */
public final class MeshClearance {
    private final CorePair pair = new CorePair();
    private Mesh mesh;
    private ConvexCore core;
    private Box3 box;
    private double lower;
    private double upper;
    private int triangle;
    private ConvexCore nearest;

    /** Makes a workspace that has measured nothing yet. */
    public MeshClearance() {}

    /**
     * Measures to the surface alone, as if the mesh were a skin without inside.
     *
     * @param first the mesh
     * @param second the solid
     * @return the gap from mesh to solid, pieceA the nearest triangle, pieceB 0
     */
    public Gap toSurface(Mesh first, Solid second) {
        search(first, second);
        return gap(lower, upper);
    }

    /**
     * Measures the space that the mesh bounds.
     *
     * @param first the mesh
     * @param second the solid
     * @return the gap from mesh to solid, pieceA the nearest triangle, pieceB 0; the witnesses are those of the surface
     */
    public Gap between(Mesh first, Solid second) {
        search(first, second);
        boolean certain = upper < -GeometryTolerance.CONTACT_MM;
        boolean mayHold = first.bounds().gapTo(second.bounds()) == 0;
        if (!certain && !mayHold) {
            return gap(lower, upper);
        }
        double high = upper;
        boolean open = !first.isClosed();
        if (!certain && !open) {
            high = heldUpper(first, second);
        }
        boolean seam = second.cores().size() > 1 && upper <= GeometryTolerance.CONTACT_MM;
        boolean undecided = open || (seam && high >= -GeometryTolerance.CONTACT_MM);
        boolean deep = certain || high < Math.min(upper, 0) || undecided;
        double low = deep ? -Escape.pastBounds(first.bounds(), second.bounds()) : lower;
        return gap(Math.min(low, high), high);
    }

    /** A core whose middle is inside the mesh can't get out before that middle reaches the surface. */
    private double heldUpper(Mesh first, Solid second) {
        double held = upper;
        double surface = Math.max(0, lower);
        for (ConvexCore each : second.cores()) {
            Vector3D middle = Vector3D.of(each.centreX(), each.centreY(), each.centreZ());
            if (first.side(middle) == Side.INSIDE) {
                // The whole core stands off the surface by this much; touching, its middle still lies inside.
                held = Math.min(held, -Math.max(surface, 2 * GeometryTolerance.CONTACT_MM));
            }
        }
        return held;
    }

    private void search(Mesh first, Solid second) {
        mesh = first;
        box = second.bounds();
        lower = Double.POSITIVE_INFINITY;
        upper = Double.POSITIVE_INFINITY;
        for (ConvexCore each : second.cores()) {
            core = each;
            visit(0);
        }
        lower = Math.min(lower, upper);
    }

    private void visit(int node) {
        TriangleTree tree = mesh.tree();
        double gap = tree.gapTo(node, box);
        if (gap > 0 && gap > upper) {
            return;
        }
        int right = tree.right(node);
        if (right > 0) {
            boolean rightFirst = tree.gapTo(right, box) < tree.gapTo(node + 1, box);
            visit(rightFirst ? right : node + 1);
            visit(rightFirst ? node + 1 : right);
            return;
        }
        for (int i = tree.first(node); i < tree.last(node); i++) {
            int t = tree.triangle(i);
            pair.measure(mesh.core(t), core);
            lower = Math.min(lower, pair.lower);
            if (pair.upper < upper) {
                upper = pair.upper;
                triangle = t;
                nearest = core;
            }
        }
    }

    private Gap gap(double low, double high) {
        pair.measure(mesh.core(triangle), nearest);
        Gap found = pair.gap(low, high);
        return new Gap(low, high, found.onA(), found.onB(), found.direction(), triangle, 0);
    }
}
