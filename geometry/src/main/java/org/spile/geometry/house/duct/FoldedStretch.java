package org.spile.geometry.house.duct;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A stretch of a transition or offset that ends in a mitre: its sheet is folded to a ring in the plane of the mitre, so the mesh itself
 * is cut. Between the inner corner and the mitre the cutting plane turns about that corner.
 *
 * <p>Curves count as polygons of 96 sides in them, 0.07 % less than they are. Square to the axis the area is a quadratic of
 * the place, its least at an end or at the bottom of the parabola; where the plane turns it is searched by golden section, once.
 */
final class FoldedStretch implements ClearPassage {
    private static final int QUARTER = 25;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Leaves a ten-millionth of the stretch; at a bottom the area is level to the square of that. */
    private static final int STEPS = 34;

    private final LegLine line;
    private final FoldedSheet sheet;
    private final Optional<Mitre> turning;
    private final double from;
    private final double to;
    private final Vector3D heading;
    private final Least least;
    private final List<Seen> known;

    /** A section as it is seen along the path: what is asked most, so that the sheet needn't be cut again. */
    private record Seen(double atMm, double areaMm2, double perimeterMm, double wideMm, double highMm) {}

    /**
     * @param near the mitre it starts in, if any; seen towards that corner
     * @param far the mitre it ends in, if any
     * @param turning the mitre in whose zone the stretch lies; none between the zones
     */
    FoldedStretch(
            LegLine line, Optional<Mitre> near, Optional<Mitre> far, Optional<Mitre> turning, double from, double to) {
        this.line = line;
        this.sheet = new FoldedSheet(
                ring(line, line.middle(0), line.start(), near), ring(line, line.middle(1), line.end(), far));
        this.turning = turning;
        this.from = from;
        this.to = to;
        this.heading = line.heading();
        this.least = lowest();
        this.known = Stream.of(0.0, lengthMm(), lengthMm() / 2, least.atMm())
                .distinct()
                .map(this::cut)
                .toList();
    }

    private Seen cut(double atMm) {
        List<Vector3D> ring = outline(atMm);
        return new Seen(
                atMm,
                area(ring),
                perimeter(ring),
                span(ring, line.lie().first()) * line.firstSeen(),
                span(ring, line.lie().second()) * line.secondSeen());
    }

    private Seen seen(double atMm) {
        for (Seen there : known) {
            if (there.atMm() == atMm) {
                return there;
            }
        }
        return cut(atMm);
    }

    private static List<Vector3D> ring(LegLine line, Vector3D middle, Clear clear, Optional<Mitre> mitre) {
        boolean curved = line.start().radiusMm() > 0 || line.end().radiusMm() > 0;
        List<Vector3D> square = SquareStretch.ring(line.lie(), middle, clear, curved ? QUARTER : 1);
        return mitre.map(m -> square.stream().map(m::cut).toList()).orElse(square);
    }

    private double share(double atMm) {
        double length = lengthMm();
        double part = length > 0 ? Math.max(0, Math.min(1, atMm / length)) : 0;
        return from + part * (to - from);
    }

    @Override
    public double lengthMm() {
        return line.lengthMm() * (to - from);
    }

    @Override
    public List<Vector3D> outline(double atMm) {
        Vector3D middle = middle(atMm);
        Vector3D axis = line.lie().axis();
        return sheet.cut(middle, turning.map(m -> m.normal(middle)).orElse(axis));
    }

    @Override
    public double areaMm2(double atMm) {
        return seen(atMm).areaMm2();
    }

    @Override
    public double perimeterMm(double atMm) {
        return seen(atMm).perimeterMm();
    }

    @Override
    public double wideMm(double atMm) {
        return seen(atMm).wideMm();
    }

    @Override
    public double highMm(double atMm) {
        return seen(atMm).highMm();
    }

    private double area(List<Vector3D> ring) {
        return Math.abs(FoldedSheet.areaVector(ring).dot(heading));
    }

    /** Of the section seen along the path. */
    private double perimeter(List<Vector3D> ring) {
        double sum = 0;
        for (int k = 0; k < ring.size(); k++) {
            Vector3D side = ring.get((k + 1) % ring.size()).subtract(ring.get(k));
            sum += side.subtract(heading.multiply(side.dot(heading))).norm();
        }
        return sum;
    }

    private static double span(List<Vector3D> ring, Vector3D along) {
        double most = ring.stream().mapToDouble(along::dot).max().orElseThrow();
        double least = ring.stream().mapToDouble(along::dot).min().orElseThrow();
        return most - least;
    }

    @Override
    public Vector3D middle(double atMm) {
        return line.middle(share(atMm));
    }

    @Override
    public Least least() {
        return least;
    }

    private Least lowest() {
        double length = lengthMm();
        Least best = new Least(0, area(outline(0)));
        for (double at : new double[] {length, turning.isPresent() ? turningBottom(length) : bottom(length)}) {
            double area = area(outline(at));
            if (area < best.areaMm2()) {
                best = new Least(at, area);
            }
        }
        return best;
    }

    /** Where the parabola through both ends and the middle is lowest, kept within the stretch. */
    private double bottom(double length) {
        double a = area(outline(0));
        double b = area(outline(length / 2));
        double c = area(outline(length));
        double bend = 2 * (a - 2 * b + c);
        return bend > 0 ? Math.max(0, Math.min(length, length * (3 * a - 4 * b + c) / (2 * bend))) : 0;
    }

    private double turningBottom(double length) {
        double low = 0;
        double high = length;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = area(outline(left));
        double atRight = area(outline(right));
        for (int i = 0; i < STEPS; i++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = area(outline(left));
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = area(outline(right));
            }
        }
        return (low + high) / 2;
    }
}
