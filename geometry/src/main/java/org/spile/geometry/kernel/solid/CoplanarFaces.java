package org.spile.geometry.kernel.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;

/**
 * The triangles of a closed convex surface, joined to faces where they lie within the contact tolerance of one plane.
 *
 * @param vertices the corners still used, in the order given
 * @param faces loops of vertex indices, counter-clockwise seen from outside
 */
record CoplanarFaces(List<Vector3D> vertices, List<List<Integer>> faces) {

    static CoplanarFaces joined(List<Vector3D> points, List<int[]> triangles) {
        int[] groups = groups(points, triangles);
        List<List<Integer>> loops = loops(triangles, groups);
        if (loops.isEmpty()) {
            // A group that is not one simple patch: keep the triangles, which always close.
            loops = triangles.stream().map(t -> List.of(t[0], t[1], t[2])).toList();
        } else {
            loops = withoutStraightCorners(loops);
        }
        return renumbered(points, loops);
    }

    /** Floods from the largest triangle not yet taken over all neighbours that stay near its plane. */
    private static int[] groups(List<Vector3D> points, List<int[]> triangles) {
        Map<List<Integer>, Integer> owner = owners(triangles);
        Integer[] bySize = new Integer[triangles.size()];
        Arrays.setAll(bySize, i -> i);
        double[] areas =
                triangles.stream().mapToDouble(t -> normal(points, t).norm()).toArray();
        Arrays.sort(bySize, Comparator.comparingDouble((Integer i) -> -areas[i]).thenComparing(i -> i));
        int[] groups = new int[triangles.size()];
        Arrays.fill(groups, -1);
        int group = 0;
        for (int seed : bySize) {
            if (groups[seed] < 0) {
                flood(seed, group++, points, triangles, owner, groups);
            }
        }
        return groups;
    }

    private static void flood(
            int seed,
            int group,
            List<Vector3D> points,
            List<int[]> triangles,
            Map<List<Integer>, Integer> owner,
            int[] groups) {
        Vector3D base = points.get(triangles.get(seed)[0]);
        Vector3D normal = normal(points, triangles.get(seed)).normalize();
        List<Integer> open = new ArrayList<>(List.of(seed));
        groups[seed] = group;
        while (!open.isEmpty()) {
            int[] t = triangles.get(open.remove(open.size() - 1));
            for (int k = 0; k < 3; k++) {
                int other = owner.get(List.of(t[(k + 1) % 3], t[k]));
                if (groups[other] < 0 && near(triangles.get(other), points, base, normal)) {
                    groups[other] = group;
                    open.add(other);
                }
            }
        }
    }

    private static boolean near(int[] triangle, List<Vector3D> points, Vector3D base, Vector3D normal) {
        for (int corner : triangle) {
            if (Math.abs(points.get(corner).subtract(base).dot(normal)) > GeometryTolerance.CONTACT_MM) {
                return false;
            }
        }
        // A sliver's own normal is noise; only a real triangle can be refused for facing away.
        double length = points.get(triangle[0]).distance(points.get(triangle[1]))
                + points.get(triangle[1]).distance(points.get(triangle[2]));
        return normal(points, triangle).dot(normal) >= -GeometryTolerance.CONTACT_MM * length;
    }

    /** One loop a group, or nothing at all if a group's rim is not one simple loop. */
    private static List<List<Integer>> loops(List<int[]> triangles, int[] groups) {
        Map<List<Integer>, Integer> owner = owners(triangles);
        List<Map<Integer, Integer>> rims = new ArrayList<>();
        for (int i = 0; i <= Arrays.stream(groups).max().orElse(-1); i++) {
            rims.add(new LinkedHashMap<>());
        }
        for (int i = 0; i < triangles.size(); i++) {
            int[] t = triangles.get(i);
            for (int k = 0; k < 3; k++) {
                int from = t[k];
                int to = t[(k + 1) % 3];
                if (groups[owner.get(List.of(to, from))] != groups[i]
                        && rims.get(groups[i]).put(from, to) != null) {
                    return List.of();
                }
            }
        }
        List<List<Integer>> loops = new ArrayList<>();
        for (Map<Integer, Integer> rim : rims) {
            List<Integer> loop = loop(rim);
            if (loop.size() != rim.size()) {
                return List.of();
            }
            loops.add(loop);
        }
        return loops;
    }

    private static List<Integer> loop(Map<Integer, Integer> rim) {
        List<Integer> loop = new ArrayList<>();
        int start = rim.keySet().stream().mapToInt(Integer::intValue).min().orElseThrow();
        int at = start;
        do {
            loop.add(at);
            at = rim.get(at);
        } while (at != start && loop.size() <= rim.size());
        return loop;
    }

    /** A vertex of only two faces lies within their common edge and is no corner. */
    private static List<List<Integer>> withoutStraightCorners(List<List<Integer>> loops) {
        Map<Integer, Integer> uses = new LinkedHashMap<>();
        loops.forEach(loop -> loop.forEach(v -> uses.merge(v, 1, Integer::sum)));
        return loops.stream()
                .map(loop -> loop.stream().filter(v -> uses.get(v) > 2).toList())
                .filter(loop -> loop.size() > 2)
                .toList();
    }

    private static CoplanarFaces renumbered(List<Vector3D> points, List<List<Integer>> loops) {
        int[] number = new int[points.size()];
        List<Vector3D> vertices = new ArrayList<>();
        for (int i = 0; i < number.length; i++) {
            int vertex = i;
            number[i] = vertices.size();
            if (loops.stream().anyMatch(loop -> loop.contains(vertex))) {
                vertices.add(points.get(i));
            }
        }
        List<List<Integer>> faces = loops.stream()
                .map(loop -> loop.stream().map(v -> number[v]).toList())
                .toList();
        return new CoplanarFaces(List.copyOf(vertices), faces);
    }

    private static Map<List<Integer>, Integer> owners(List<int[]> triangles) {
        Map<List<Integer>, Integer> owner = new LinkedHashMap<>();
        for (int i = 0; i < triangles.size(); i++) {
            int[] t = triangles.get(i);
            for (int k = 0; k < 3; k++) {
                owner.put(List.of(t[k], t[(k + 1) % 3]), i);
            }
        }
        return owner;
    }

    private static Vector3D normal(List<Vector3D> points, int[] t) {
        Vector3D a = points.get(t[0]);
        return points.get(t[1]).subtract(a).cross(points.get(t[2]).subtract(a));
    }
}
