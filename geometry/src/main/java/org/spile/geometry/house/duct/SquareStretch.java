package org.spile.geometry.house.duct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A stretch of a leg between two sections square to its axis; straight, sheared, or folded from one section to another.
 *
 * <p>Closed forms throughout; the least area is at an end, as the root of the area is concave (see {@link Clear}).
 */
final class SquareStretch implements ClearPassage {
    /** Points on each quarter of a curve, ends included. */
    private static final int QUARTER = 7;

    private final LegLine line;
    private final Clear start;
    private final Clear end;
    private final Optional<Mitre> turning;
    private final double from;
    private final double to;
    private final double lengthMm;

    /**
     * @param line the whole leg
     * @param turning the mitre in whose zone the stretch lies, if any: its outlines turn with the path
     * @param from share of the leg where the stretch begins
     * @param to share of the leg where it ends
     */
    SquareStretch(LegLine line, Optional<Mitre> turning, double from, double to) {
        this.line = line;
        this.start = line.start();
        this.end = line.end();
        this.turning = turning;
        this.from = from;
        this.to = to;
        this.lengthMm = line.lengthMm() * (to - from);
    }

    private double share(double atMm) {
        double part = lengthMm > 0 ? Math.max(0, Math.min(1, atMm / lengthMm)) : 0;
        return from + part * (to - from);
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }

    @Override
    public double lengthMm() {
        return lengthMm;
    }

    @Override
    public double areaMm2(double atMm) {
        double t = share(atMm);
        double first = mix(start.firstMm(), end.firstMm(), t);
        double second = mix(start.secondMm(), end.secondMm(), t);
        double radius = mix(start.radiusMm(), end.radiusMm(), t);
        return Clear.area(first, second, radius) * line.squareness();
    }

    @Override
    public double perimeterMm(double atMm) {
        double t = share(atMm);
        double first = mix(start.firstMm(), end.firstMm(), t);
        double second = mix(start.secondMm(), end.secondMm(), t);
        double radius = mix(start.radiusMm(), end.radiusMm(), t);
        double flats = 2 * (first * line.firstSeen() + second * line.secondSeen());
        return flats + radius * line.circleSeen();
    }

    @Override
    public double wideMm(double atMm) {
        double t = share(atMm);
        return (mix(start.firstMm(), end.firstMm(), t) + 2 * mix(start.radiusMm(), end.radiusMm(), t))
                * line.firstSeen();
    }

    @Override
    public double highMm(double atMm) {
        double t = share(atMm);
        return (mix(start.secondMm(), end.secondMm(), t) + 2 * mix(start.radiusMm(), end.radiusMm(), t))
                * line.secondSeen();
    }

    @Override
    public Vector3D middle(double atMm) {
        return line.middle(share(atMm));
    }

    @Override
    public List<Vector3D> outline(double atMm) {
        double t = share(atMm);
        Vector3D middle = line.middle(t);
        Clear here = start.toward(end, t);
        List<Vector3D> ring = ring(line.lie(), middle, here, here.radiusMm() > 0 ? QUARTER : 1);
        return turning.map(mitre -> turned(ring, middle, mitre.normal(middle))).orElse(ring);
    }

    /** Slid along the leg into a plane through its middle. */
    private List<Vector3D> turned(List<Vector3D> ring, Vector3D middle, Vector3D normal) {
        Vector3D heading = line.heading();
        return ring.stream()
                .map(p -> p.subtract(heading.multiply(p.subtract(middle).dot(normal) / heading.dot(normal))))
                .toList();
    }

    /**
     * A section as points round it, from first towards second.
     *
     * @param each points at each corner
     */
    static List<Vector3D> ring(Lie lie, Vector3D middle, Clear clear, int each) {
        List<Vector3D> ring = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            double first = (corner == 0 || corner == 3 ? 0.5 : -0.5) * clear.firstMm();
            double second = (corner < 2 ? 0.5 : -0.5) * clear.secondMm();
            for (int k = 0; k < each; k++) {
                double angle = Math.PI / 2 * (corner + (each == 1 ? 0.5 : (double) k / (each - 1)));
                ring.add(lie.at(
                        middle,
                        first + clear.radiusMm() * Math.cos(angle),
                        second + clear.radiusMm() * Math.sin(angle)));
            }
        }
        return ring;
    }

    @Override
    public Least least() {
        double near = areaMm2(0);
        double far = areaMm2(lengthMm);
        return far < near ? new Least(lengthMm, far) : new Least(0, near);
    }
}
