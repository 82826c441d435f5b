package org.spile.geometry.kernel.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Of convex rings those that lie in no other one, so that fewer have to be united. */
final class Outermost {
    private final double[] x;
    private final double[] y;
    private final List<Vector2D> ring;
    private final double areaMm2;
    private final double minX;
    private final double minY;
    private final double maxX;
    private final double maxY;

    private Outermost(List<Vector2D> ring) {
        this.ring = ring;
        this.x = ring.stream().mapToDouble(Vector2D::getX).toArray();
        this.y = ring.stream().mapToDouble(Vector2D::getY).toArray();
        this.areaMm2 = OutlineCheck.signedAreaMm2(ring);
        this.minX = Arrays.stream(x).min().orElseThrow();
        this.maxX = Arrays.stream(x).max().orElseThrow();
        this.minY = Arrays.stream(y).min().orElseThrow();
        this.maxY = Arrays.stream(y).max().orElseThrow();
    }

    /** The rings that no larger one holds, largest first; of equals the first. */
    static List<List<Vector2D>> of(List<List<Vector2D>> rings) {
        List<Outermost> all = new ArrayList<>();
        rings.stream().filter(ring -> ring.size() > 2).forEach(ring -> all.add(new Outermost(ring)));
        all.sort(Comparator.comparingDouble(one -> -one.areaMm2));
        List<Outermost> kept = new ArrayList<>();
        for (Outermost one : all) {
            if (kept.stream().noneMatch(larger -> larger.holds(one))) {
                kept.add(one);
            }
        }
        return kept.stream().map(one -> one.ring).toList();
    }

    private boolean holds(Outermost other) {
        double slack = GeometryTolerance.ARITHMETIC_MM;
        if (other.minX < minX - slack || other.maxX > maxX + slack || other.minY < minY - slack) {
            return false;
        }
        if (other.maxY > maxY + slack) {
            return false;
        }
        int n = x.length;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            double dx = x[j] - x[i];
            double dy = y[j] - y[i];
            double least = -slack * Math.hypot(dx, dy);
            for (int k = 0; k < other.x.length; k++) {
                if (dx * (other.y[k] - y[i]) - dy * (other.x[k] - x[i]) < least) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A convex counter-clockwise ring with every side moved in; fewer than three corners if nothing is left. */
    static List<Vector2D> shrunk(List<Vector2D> ring, double byMm) {
        List<Vector2D> left = new ArrayList<>(ring);
        int n = ring.size();
        for (int i = 0; i < n && left.size() > 2; i++) {
            Vector2D a = ring.get(i);
            Vector2D side = ring.get((i + 1) % n).subtract(a);
            double length = side.norm();
            if (length > 0) {
                Vector2D in = Vector2D.of(-side.getY() / length, side.getX() / length);
                left = beyond(left, in, in.dot(a) + byMm);
            }
        }
        return left;
    }

    private static List<Vector2D> beyond(List<Vector2D> ring, Vector2D way, double least) {
        List<Vector2D> kept = new ArrayList<>(ring.size() + 1);
        for (int i = 0; i < ring.size(); i++) {
            Vector2D a = ring.get(i);
            Vector2D b = ring.get((i + 1) % ring.size());
            double ofA = way.dot(a) - least;
            double ofB = way.dot(b) - least;
            if (ofA >= 0) {
                kept.add(a);
            }
            if (ofA < 0 != ofB < 0 && ofA != 0 && ofB != 0) {
                kept.add(a.lerp(b, ofA / (ofA - ofB)));
            }
        }
        return kept;
    }
}
