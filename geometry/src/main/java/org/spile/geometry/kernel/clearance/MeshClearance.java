package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.Solid;

/**
 * The signed distance of a mesh to a solid, a body or another mesh, between certified bounds.
 *
 * <p>Triangles are searched by branch and bound over the trees, pair by pair as convex cores. Apart, the bounds are as
 * close as those of convex pairs, and pieces are named by triangle.
 *
 * <p>Overlapping, a mesh of up to 128 triangles that is closed and convex has its depth like any convex body. Else the
 * depth lies between bounds: at least that of the deepest triangle, or of a core's centre below the surface; at most
 * the shortest shift that is known to part the two ({@link WayOut}). Where a solid is overlapped, the direction is that
 * of this shift.
 *
 * <p>Undecided (lower bound a depth, upper bound a distance or a touch) it stays where a solid or mesh lies clear of or
 * touches a mesh that is not closed but could hold it; where a triangle of such a mesh, or of a skin, touches two convex
 * parts of a solid that is not convex and may lie in the seam between them; and where two meshes, neither of them convex,
 * touch on several sides at once. One object per thread; the searches make no objects, answers do. Lengths in mm.
 */
public final class MeshClearance {
    private static final double TOUCH = GeometryTolerance.CONTACT_MM;
    /** So far things that touch are moved apart to see whether they do no more than touch. */
    private static final double LIFT = TOUCH / 10;

    private final TriangleSearch search = new TriangleSearch();
    private final TriangleSearch after = new TriangleSearch();
    private final MeshPairSearch pairs = new MeshPairSearch();
    private final MeshPairSearch pairsAfter = new MeshPairSearch();
    private final PairDistance convex = new PairDistance();

    /** Makes a workspace that has measured nothing yet. */
    public MeshClearance() {}

    // ---- mesh and solid -----------------------------------------------------------------------------------------

    /**
     * Measures to the surface alone, as if the mesh were a skin without inside.
     *
     * @param first the mesh
     * @param second the solid
     * @return the gap from mesh to solid, pieceA the nearest triangle, pieceB 0
     */
    public Gap toSurface(Mesh first, Solid second) {
        return between(first, second, true);
    }

    /**
     * Measures the space that the mesh bounds.
     *
     * @param first the mesh
     * @param second the solid
     * @return the gap from mesh to solid, pieceA the nearest triangle, pieceB 0; the witnesses are those of the surface
     */
    public Gap between(Mesh first, Solid second) {
        return between(first, second, false);
    }

    /**
     * Measures the space that the mesh bounds against a body: the least signed distance over its solids, so that for an
     * overlap the deepest solid speaks.
     *
     * @param first the mesh
     * @param second the body
     * @return the gap from mesh to body, pieceA the nearest triangle, pieceB the governing solid; of equals the first
     */
    public Gap between(Mesh first, Body second) {
        double lower = Double.POSITIVE_INFINITY;
        Gap governing = null;
        int piece = 0;
        for (int i = 0; i < second.solids().size(); i++) {
            double far = first.bounds().gapTo(second.solids().get(i).bounds());
            if (governing != null && far > 0 && far > governing.upperMm()) {
                continue;
            }
            Gap gap = between(first, second.solids().get(i));
            lower = Math.min(lower, gap.lowerMm());
            if (governing == null || gap.upperMm() < governing.upperMm()) {
                governing = gap;
                piece = i;
            }
        }
        return new Gap(
                lower,
                governing.upperMm(),
                governing.onA(),
                governing.onB(),
                governing.direction(),
                governing.pieceA(),
                piece);
    }

    private Gap between(Mesh first, Solid second, boolean skin) {
        search.find(first, 0, 0, 0, second);
        if (first.bounds().gapTo(second.bounds()) > 0) {
            return search.gap(search.lower, search.upper);
        }
        Holding holding = skin ? Holding.NONE : Holding.of(first, Vector3D.ZERO, second);
        boolean overlaps = search.upper < -TOUCH || holding.depthMm() > TOUCH;
        // A space that reaches into neither of two parts fills nothing of the seam between them; a skin may stand
        // there.
        boolean seam = search.inSeam && (skin || !first.isClosed());
        boolean open = !overlaps && (seam || !holding.known());
        if (!overlaps && !open && search.lower >= -GeometryTolerance.ARITHMETIC_MM) {
            return search.gap(search.lower, search.upper);
        }
        double high = holding.upper(search.upper);
        if (overlaps && !skin && first.convex().isPresent()) {
            return convexGap(first.convex().get(), second, high);
        }
        WayOut way = wayOut(first, second, skin);
        if (way.isApart() && search.lower > 0) {
            return search.gap(search.lower, search.upper);
        }
        Gap surface = search.gap(Math.min(-way.lengthMm, high), high);
        return overlaps ? along(way.direction, surface) : surface;
    }

    private Gap convexGap(ConvexPolyhedron hull, Solid second, double highMm) {
        convex.measure(hull, second);
        double high = Math.min(highMm, convex.upperMm());
        Gap gap = convex.gap();
        double low = Math.min(convex.lowerMm(), high);
        return new Gap(low, high, gap.onA(), gap.onB(), gap.direction(), search.triangle, 0);
    }

    private WayOut wayOut(Mesh first, Solid second, boolean skin) {
        WayOut way = WayOut.of(first, second);
        Vector3D deepest = Vector3D.of(search.nx, search.ny, search.nz);
        way.offer(deepest);
        double length = LIFT - search.lower;
        if (search.lower < 0 && length < way.lengthMm) {
            Vector3D back = deepest.multiply(-length);
            after.find(first, back.getX(), back.getY(), back.getZ(), second);
            if (after.lower > 0) {
                Holding there = skin ? Holding.NONE : Holding.of(first, back, second);
                if (there.equals(Holding.NONE)) {
                    way.take(length, deepest);
                }
            }
        }
        return way;
    }

    private static Gap along(Vector3D direction, Gap gap) {
        return new Gap(gap.lowerMm(), gap.upperMm(), gap.onA(), gap.onB(), direction, gap.pieceA(), gap.pieceB());
    }

    // ---- mesh and mesh ------------------------------------------------------------------------------------------

    /**
     * Measures the spaces that two meshes bound.
     *
     * @param first the first mesh
     * @param second the second mesh
     * @return the gap, the pieces being the nearest triangles; the witnesses are those of the surfaces
     */
    public Gap between(Mesh first, Mesh second) {
        pairs.find(first, 0, 0, 0, second);
        if (first.bounds().gapTo(second.bounds()) > 0) {
            return pairs.gap(pairs.lower, pairs.upper);
        }
        if (second.convex().isPresent()) {
            return named(between(first, second.convex().get()));
        }
        if (first.convex().isPresent()) {
            return named(between(second, first.convex().get()).swapped());
        }
        if (pairs.upper < -TOUCH) {
            return overlapping(first, second, pairs.upper);
        }
        if (pairs.lower > 0) {
            Holding holding = Holding.of(first, Vector3D.ZERO, second);
            if (holding.equals(Holding.NONE)) {
                return pairs.gap(pairs.lower, pairs.upper);
            }
            return overlapping(first, second, holding.upper(pairs.upper));
        }
        return touching(first, second);
    }

    private Gap named(Gap gap) {
        return new Gap(
                gap.lowerMm(), gap.upperMm(), gap.onA(), gap.onB(), gap.direction(), pairs.triangleA, pairs.triangleB);
    }

    /** Overlapping for sure if the upper bound is a depth; else undecided. */
    private Gap overlapping(Mesh first, Mesh second, double high) {
        WayOut way = WayOut.of(first, second);
        for (Vector3D direction : directions(first, second)) {
            way.offer(direction);
        }
        if (way.isApart() && pairs.lower > 0) {
            return pairs.gap(pairs.lower, pairs.upper);
        }
        Vector3D deepest = Vector3D.of(pairs.nx, pairs.ny, pairs.nz);
        double length = LIFT - pairs.lower;
        if (pairs.lower < 0 && length < way.lengthMm && clearAfter(first, second, deepest, length)) {
            if (Holding.of(first, deepest.multiply(-length), second).equals(Holding.NONE)) {
                way.take(length, deepest);
            }
        }
        Gap surface = pairs.gap(Math.min(-way.lengthMm, high), high);
        return high < -TOUCH ? along(way.direction, surface) : surface;
    }

    private Vector3D[] directions(Mesh first, Mesh second) {
        return new Vector3D[] {
            Vector3D.of(pairs.nx, pairs.ny, pairs.nz),
            Vector3D.of(-pairs.nx, -pairs.ny, -pairs.nz),
            normal(first, pairs.triangleA),
            normal(second, pairs.triangleB).negate()
        };
    }

    private static Vector3D normal(Mesh mesh, int triangle) {
        Vector3D a = mesh.corner(triangle, 0);
        return mesh.corner(triangle, 1)
                .subtract(a)
                .cross(mesh.corner(triangle, 2).subtract(a))
                .normalize();
    }

    private boolean clearAfter(Mesh first, Mesh second, Vector3D direction, double length) {
        pairsAfter.find(
                first, -length * direction.getX(), -length * direction.getY(), -length * direction.getZ(), second);
        return pairsAfter.lower > 0;
    }

    /** Moved apart by next to nothing, what touches on one side stands clear, and what lies within is told. */
    private Gap touching(Mesh first, Mesh second) {
        double length = LIFT - pairs.lower;
        for (Vector3D direction : directions(first, second)) {
            if (clearAfter(first, second, direction, length)) {
                Holding holding = Holding.of(first, direction.multiply(-length), second);
                if (holding.equals(Holding.NONE)) {
                    return along(direction, pairs.gap(Math.min(-length, pairs.upper), pairs.upper));
                }
                return overlapping(first, second, holding.lessened(length).upper(pairs.upper));
            }
        }
        Holding shared = Holding.NONE;
        for (int i = 0; i < pairs.touches; i++) {
            shared = shared.and(Holding.at(first, pairs.touchingA[i], second))
                    .and(Holding.at(second, pairs.touchingB[i], first));
        }
        return overlapping(first, second, shared.upper(pairs.upper));
    }
}
