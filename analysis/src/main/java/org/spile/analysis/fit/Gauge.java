package org.spile.analysis.fit;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.clearance.Clearance;
import org.spile.geometry.kernel.clearance.Gap;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Move;

/**
 * Measures the room between two parts, and says it as a sum of readings.
 *
 * <p>With p and q the two ends and m the direction square to the surfaces that face each other there, each side's flex gives
 * p·m and q·m as sums of readings; their difference is the gap along m. A gap measured along another direction n is longer by
 * 1/(n·m), and so is every reading's share of it:
 *
 * <pre>
 *        subject           against (sloping)
 *       ________|          /
 *               |p - - - q/     along n; the surface itself is m-wards: gap = (q·m - p·m) / (n·m)
 *               |        /
 * </pre>
 */
final class Gauge {
    /** Short of contact by this, the nearest points show the surfaces' common normal. */
    private static final double SHORT_MM = 1;

    /** Surfaces more askew than this to the direction of measuring give no sensible factor. */
    private static final double LEAST_COSINE = 0.1;

    private Gauge() {}

    /** The distance between two parts, whichever way; empty if the other isn't built where the first is. */
    static Optional<Pair> apart(Part subject, Part against) {
        Optional<Body> one = Facing.body(subject, against);
        Optional<Body> other = Facing.body(against, subject);
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        Gap gap = Clearance.between(one.get(), other.get());
        Vector3D towards = gap.direction();
        Ends ends = new Ends(gap.onA(), gap.onB());
        Stack stack = stack(subject, against, ends, towards);
        return Optional.of(new Pair(
                subject,
                against,
                new Keep.Round(one.get()),
                other.get(),
                gap.lowerMm(),
                gap.upperMm(),
                ends,
                towards,
                stack));
    }

    /** The room straight out of a face up to another part; empty if that part doesn't lie in front of it. */
    static Optional<Pair> ahead(Part subject, Face face, Part against) {
        Optional<Body> other = Facing.body(against, subject);
        OptionalDouble met = other.isEmpty()
                ? OptionalDouble.empty()
                : FirstContact.of(face.sheet(), face.normal(), other.get(), -face.depthMm() / 2);
        return met.isEmpty()
                ? Optional.empty()
                : Optional.of(ahead(subject, face, against, other.get(), met.getAsDouble()));
    }

    private static Pair ahead(Part subject, Face face, Part against, Body other, double gapMm) {
        Vector3D shift = face.normal().multiply(gapMm - SHORT_MM);
        Gap near = Clearance.between(face.sheet().moved(Move.shift(shift)), other);
        boolean askew = near.lowerMm() <= 0 || near.direction().dot(face.normal()) < LEAST_COSINE;
        Vector3D normal = askew ? face.normal() : near.direction();
        Vector3D at = near.onA().subtract(shift);
        Vector3D to = at.add(face.normal().multiply(gapMm));
        Ends ends = new Ends(at, to);
        double factor = 1 / normal.dot(face.normal());
        Spot worst = new Spot(ends, stack(subject, against, ends, normal).times(factor));
        for (Ends flat : FlatFaces.corners(face.sheet(), other, face.normal().multiply(gapMm), normal)) {
            worst = worst.orWorse(flat, stack(subject, against, flat, normal).times(factor));
        }
        return new Pair(
                subject,
                against,
                new Keep.Ahead(face),
                other,
                gapMm,
                gapMm,
                worst.ends(),
                face.normal(),
                worst.stack());
    }

    /** The same pair, measured where its tolerances take most, if the faces that face each other are flat. */
    static Pair atWorst(Pair pair) {
        Vector3D across = pair.ends().to().subtract(pair.ends().at());
        Spot worst = new Spot(pair.ends(), pair.stack());
        for (Ends flat : FlatFaces.corners(pair.keep().body(0), pair.met(), across, pair.normal())) {
            worst = worst.orWorse(flat, stack(pair.subject(), pair.against(), flat, pair.normal()));
        }
        return new Pair(
                pair.subject(),
                pair.against(),
                pair.keep(),
                pair.met(),
                pair.lowMm(),
                pair.highMm(),
                worst.ends(),
                pair.normal(),
                worst.stack());
    }

    private static Stack stack(Part subject, Part against, Ends ends, Vector3D normal) {
        return against.flex().along(ends.to(), normal).minus(subject.flex().along(ends.at(), normal));
    }

    /** Two ends and the gap between them as a sum of readings. */
    private record Spot(Ends ends, Stack stack) {
        Spot orWorse(Ends others, Stack sum) {
            boolean worse = down(sum) > down(stack) + GeometryTolerance.CONTACT_MM;
            return worse ? new Spot(others, sum) : this;
        }

        private static double down(Stack sum) {
            return sum.valueMm() - sum.worstLow();
        }
    }
}
