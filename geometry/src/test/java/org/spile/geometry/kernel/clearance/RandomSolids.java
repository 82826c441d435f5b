package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;

/** Solids of the sizes met in a house, from a seed. */
final class RandomSolids {
    final Random random;

    RandomSolids(long seed) {
        this.random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    Vector3D direction() {
        return Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                .normalize();
    }

    Vector3D place(double reach) {
        return Vector3D.of(between(-reach, reach), between(-reach, reach), between(-reach, reach));
    }

    ConvexPolyhedron box() {
        double x = between(5, 400);
        double y = between(5, 400);
        double z = between(5, 400);
        List<Vector3D> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(Vector3D.of((i & 1) * x, (i >> 1 & 1) * y, (i >> 2) * z));
        }
        return ConvexPolyhedron.hull(corners);
    }

    /** A box whose sides slope, or a wedge. */
    ConvexPolyhedron frustum() {
        double x = between(20, 300);
        double y = between(20, 300);
        double z = between(20, 300);
        double in = between(0, x / 2);
        List<Vector3D> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            boolean right = i % 2 == 1;
            corners.add(Vector3D.of(right ? x : 0, i < 2 ? 0 : y, 0));
            corners.add(Vector3D.of(right ? x - in : in, i < 2 ? 0 : y, z));
        }
        return ConvexPolyhedron.hull(corners);
    }

    ConvexPolyhedron lump() {
        List<Vector3D> points = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            points.add(place(200));
        }
        return ConvexPolyhedron.hull(points);
    }

    /** A stock of solids to draw from, as hulls are dear to make. */
    List<ConvexPolyhedron> stock(int count) {
        List<ConvexPolyhedron> stock = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            stock.add(i % 3 == 2 ? lump() : box());
        }
        return stock;
    }

    Move anyTurn() {
        return Move.about(Vector3D.ZERO, direction(), between(0, 2 * Math.PI));
    }

    Move yaw() {
        return Move.turn(between(0, 2 * Math.PI), Vector3D.ZERO);
    }

    Move shift(double reach) {
        return Move.shift(place(reach));
    }

    <T> T of(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
