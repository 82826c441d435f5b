package org.spile.geometry.kernel.clearance;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Mesh;
import org.spile.geometry.kernel.solid.TriangleTree;

/**
 * The lines in which a plane cuts a mesh.
 *
 * <p>A corner is before the plane or behind it, and one in the plane counts as before it. So a triangle is cut across two
 * of its edges or none, and lines are joined by the edges they pass, not by places: each edge that two triangles share
 * ends one piece and begins another.
 */
final class SectionLines {
    private final Mesh mesh;
    private final CutPlane plane;
    private final Vector3D normal;
    private final double off;
    /** Where the plane passes an edge, by its lesser then greater point. */
    private final Map<Long, Vector2D> passes = new HashMap<>();
    /** The pieces that begin at an edge, by the edges where they end. */
    private final Map<Long, Deque<Long>> pieces = new LinkedHashMap<>();
    /** By how many more pieces begin at an edge than end there. */
    private final Map<Long, Integer> surplus = new LinkedHashMap<>();

    private final List<List<Vector2D>> rings = new ArrayList<>();
    private final List<List<Vector2D>> chains = new ArrayList<>();

    SectionLines(Mesh mesh, CutPlane plane) {
        this.mesh = mesh;
        this.plane = plane;
        this.normal = plane.normal();
        this.off = normal.dot(plane.origin());
        List<Integer> met = new ArrayList<>();
        visit(0, met);
        boolean[] passing = passing(met);
        for (int t : met) {
            if (passing[mesh.shellOf(t)]) {
                cut(t);
            }
        }
        surplus.forEach((edge, more) -> {
            for (int i = 0; i < more; i++) {
                chains.add(walked(edge));
            }
        });
        for (long edge : List.copyOf(pieces.keySet())) {
            while (!pieces.get(edge).isEmpty()) {
                addRings(walked(edge));
            }
        }
        chains.removeIf(chain -> chain.size() < 2);
    }

    List<List<Vector2D>> rings() {
        return rings;
    }

    List<List<Vector2D>> chains() {
        return chains;
    }

    // ---- cutting ------------------------------------------------------------------------------------------------

    /** Finds the triangles that reach behind the plane and up to it. */
    private void visit(int node, List<Integer> met) {
        TriangleTree tree = mesh.tree();
        double reach = GeometryTolerance.CONTACT_MM;
        if (!tree.meetsPlane(node, normal.getX(), normal.getY(), normal.getZ(), off, reach)) {
            return;
        }
        if (tree.right(node) > 0) {
            visit(node + 1, met);
            visit(tree.right(node), met);
            return;
        }
        for (int i = tree.first(node); i < tree.last(node); i++) {
            int t = tree.triangle(i);
            int behind = behind(t, 0) + behind(t, 1) + behind(t, 2);
            if (behind == 1 || behind == 2) {
                met.add(t);
            }
        }
    }

    /** Which shells pass through the plane; where no corner lies in it, all that meet it do. */
    private boolean[] passing(List<Integer> met) {
        boolean touches = met.stream().anyMatch(t -> over(t, 0) == 0 || over(t, 1) == 0 || over(t, 2) == 0);
        boolean[] before = new boolean[mesh.shells()];
        if (!touches) {
            Arrays.fill(before, true);
            return before;
        }
        for (int t = 0; t < mesh.count(); t++) {
            before[mesh.shellOf(t)] |= over(t, 0) > 0 || over(t, 1) > 0 || over(t, 2) > 0;
        }
        return before;
    }

    /** Height of a corner over the plane, 0 within the contact tolerance. */
    private double over(int t, int k) {
        double height = mesh.corner(t, k).subtract(plane.origin()).dot(normal);
        return Math.abs(height) <= GeometryTolerance.CONTACT_MM ? 0 : height;
    }

    private int behind(int t, int k) {
        return over(t, k) < 0 ? 1 : 0;
    }

    /** Adds a triangle's piece, from the edge that runs behind the plane to the one that comes out before it. */
    private void cut(int t) {
        long from = 0;
        long to = 0;
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            if (behind(t, k) != behind(t, next)) {
                long edge = passed(t, k, next);
                if (behind(t, k) == 0) {
                    from = edge;
                } else {
                    to = edge;
                }
            }
        }
        pieces.computeIfAbsent(from, e -> new ArrayDeque<>()).add(to);
        pieces.computeIfAbsent(to, e -> new ArrayDeque<>());
        surplus.merge(from, 1, Integer::sum);
        surplus.merge(to, -1, Integer::sum);
    }

    /** Notes where the plane passes an edge, the same for both triangles at it. */
    private long passed(int t, int k, int next) {
        boolean upwards = mesh.point(t, k) < mesh.point(t, next);
        int low = upwards ? k : next;
        int high = upwards ? next : k;
        long edge = (long) mesh.point(t, low) << 32 | mesh.point(t, high);
        passes.computeIfAbsent(edge, e -> {
            double p = over(t, low);
            double q = over(t, high);
            Vector3D from = mesh.corner(t, low).subtract(plane.origin());
            Vector3D to = mesh.corner(t, high).subtract(plane.origin());
            Vector3D at =
                    p == 0 ? from : q == 0 ? to : from.add(to.subtract(from).multiply(p / (p - q)));
            return Vector2D.of(at.dot(plane.right()), at.dot(plane.up()));
        });
        return edge;
    }

    // ---- joining ------------------------------------------------------------------------------------------------

    /** Follows pieces from an edge until none goes on. */
    private List<Vector2D> walked(long start) {
        List<Vector2D> line = new ArrayList<>();
        line.add(passes.get(start));
        for (Long at = pieces.get(start).poll(); at != null; at = pieces.get(at).poll()) {
            if (!passes.get(at).equals(line.get(line.size() - 1))) {
                line.add(passes.get(at));
            }
        }
        return line;
    }

    /** Takes a closed walk apart wherever it comes by a place again. */
    private void addRings(List<Vector2D> walk) {
        List<Vector2D> open = new ArrayList<>();
        Map<Vector2D, Integer> places = new HashMap<>();
        for (Vector2D at : walk) {
            Integer known = places.get(at);
            if (known == null) {
                places.put(at, open.size());
                open.add(at);
            } else {
                List<Vector2D> loop = open.subList(known, open.size());
                addRing(loop);
                loop.subList(1, loop.size()).forEach(places::remove);
                loop.subList(1, loop.size()).clear();
            }
        }
    }

    private void addRing(List<Vector2D> loop) {
        List<Vector2D> ring = new ArrayList<>(loop);
        for (int i = ring.size() - 1; i >= 0 && ring.size() > 2; i--) {
            Vector2D before = ring.get((i + ring.size() - 1) % ring.size());
            Vector2D after = ring.get((i + 1) % ring.size());
            double off = after.subtract(before).signedArea(ring.get(i).subtract(before));
            if (Math.abs(off) <= GeometryTolerance.ARITHMETIC_MM * after.distance(before)) {
                ring.remove(i);
            }
        }
        if (ring.size() > 2) {
            rings.add(ring);
        }
    }
}
