package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Written;

/** Asks about legs that go two ways at once and turn much, since two legs may have been meant. */
final class Slants {
    private static final double LEAST_DEG = 20;
    private static final double MOST_DEG = 70;

    private Slants() {}

    static void check(Spot path, List<ToldStation> stations, Scribe scribe) {
        ToldStation before = null;
        for (int i = 0; i < stations.size() && i < path.items().size(); i++) {
            ToldStation now = stations.get(i);
            Spot spot = path.items().get(i);
            if (before != null && spot.child("slant").isEmpty()) {
                check(spot, before, now, scribe);
            }
            before = now.ways().isEmpty() && now.at().isEmpty() ? before : now;
        }
    }

    private static void check(Spot spot, ToldStation before, ToldStation now, Scribe scribe) {
        Optional<Vector> one = direction(before.ways());
        Optional<Vector> other = direction(now.ways());
        boolean slanted = now.ways().size() > 1 && now.ways().values().stream().allMatch(Optional::isPresent);
        if (!slanted || one.isEmpty() || other.isEmpty()) {
            return;
        }
        double degrees = one.get().degreesTo(other.get());
        if (degrees > LEAST_DEG && degrees < MOST_DEG && other.get().degreesToNearestAxis() > LEAST_DEG) {
            scribe.doubt(
                    spot,
                    "one slanted leg of " + Written.number(other.get().length(), 0) + " mm, "
                            + Written.number(degrees, 0) + " deg off the last one?",
                    "For two legs, write two stations; for one, add slant: yes.");
        }
    }

    /** Where a leg goes; a single way needs no length for that. */
    private static Optional<Vector> direction(Map<String, Optional<Reading>> ways) {
        double[] xyz = new double[3];
        for (Map.Entry<String, Optional<Reading>> way : ways.entrySet()) {
            if (way.getValue().isEmpty() && ways.size() > 1) {
                return Optional.empty();
            }
            double far = way.getValue().map(Reading::value).orElse(1.0);
            int index = Faces.WAYS.indexOf(way.getKey());
            xyz[index / 2] += index % 2 == 0 ? far : -far;
        }
        return ways.isEmpty() ? Optional.empty() : Optional.of(new Vector(xyz[0], xyz[1], xyz[2]));
    }

    private record Vector(double x, double y, double z) {
        double length() {
            return Math.sqrt(x * x + y * y + z * z);
        }

        double degreesToNearestAxis() {
            double most = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
            return Math.toDegrees(StrictMath.acos(Math.min(1, most / length())));
        }

        double degreesTo(Vector other) {
            double dot = x * other.x + y * other.y + z * other.z;
            double cosine = dot / (length() * other.length());
            return Math.toDegrees(StrictMath.acos(Math.max(-1, Math.min(1, cosine))));
        }
    }
}
