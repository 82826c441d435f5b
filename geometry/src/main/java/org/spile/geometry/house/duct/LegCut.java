package org.spile.geometry.house.duct;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A leg cut where its bends begin and end. */
final class LegCut {
    private static final double SQUARE = 1e-9;

    private final DuctLeg leg;
    private final Optional<DuctLeg> before;
    private final Optional<DuctLeg> after;
    private final LegLine line;
    private final double radiusBefore;
    private final double radiusAfter;
    private final Optional<Mitre> near;
    private final Optional<Mitre> far;

    LegCut(List<DuctLeg> legs, int i) {
        this.leg = legs.get(i);
        this.before = i == 0 ? Optional.empty() : corner(legs.get(i - 1), leg);
        this.after = i + 1 == legs.size() ? Optional.empty() : corner(legs.get(i + 1), leg);
        this.radiusBefore = before.flatMap(b -> leg.bend()).orElse(0.0);
        this.radiusAfter = after.flatMap(DuctLeg::bend).orElse(0.0);
        boolean mitredBefore = before.isPresent() && leg.bend().isEmpty();
        boolean mitredAfter = after.filter(a -> a.bend().isEmpty()).isPresent();
        this.line = new LegLine(leg, radiusBefore, radiusAfter, mitredBefore || mitredAfter);
        this.near = before.filter(b -> mitredBefore)
                .map(b -> mitre(leg.from(), leg.axis().negate(), b.axis().negate(), line.start()));
        this.far = after.filter(a -> mitredAfter).map(a -> mitre(leg.to(), leg.axis(), a.axis(), line.end()));
    }

    /** The neighbour, if it lies at a corner and not straight on or beyond a joint of trailers. */
    private static Optional<DuctLeg> corner(DuctLeg neighbour, DuctLeg leg) {
        boolean square = Math.abs(neighbour.axis().dot(leg.axis())) < SQUARE;
        return square && neighbour.trailer().equals(leg.trailer()) ? Optional.of(neighbour) : Optional.empty();
    }

    private Mitre mitre(Vector3D corner, Vector3D out, Vector3D other, Clear clear) {
        boolean first = Math.abs(line.lie().first().dot(other)) > 0.5;
        return new Mitre(corner, out, other, (first ? clear.wideMm() : clear.highMm()) / 2);
    }

    boolean cornerBefore() {
        return before.isPresent();
    }

    boolean sheared() {
        return line.sheared();
    }

    /** How much of its axis the bend before takes (mm). */
    double beforeMm() {
        return radiusBefore + zone(near);
    }

    /** How much of its axis the bend after takes (mm). */
    double afterMm() {
        return radiusAfter + zone(far);
    }

    /** How much of its axis the bends leave (mm). */
    double middleMm() {
        return line.alongMm() - zone(near) - zone(far);
    }

    private double zone(Optional<Mitre> mitre) {
        double most = line.alongMm() / (near.isPresent() && far.isPresent() ? 2 : 1);
        return mitre.map(m -> Math.min(m.halfMm(), most)).orElse(0.0);
    }

    /** How far the run's station goes for each mm along the leg's axis. */
    double stationPerMm() {
        return leg.lengthMm() / (line.alongMm() + radiusBefore + radiusAfter);
    }

    /** Clear size square to the plane of the bend before it (mm). */
    double keptMm() {
        Vector3D bent = before.orElseThrow().axis();
        boolean first = Math.abs(line.lie().first().dot(bent)) > 0.5;
        return first ? line.start().highMm() : line.start().wideMm();
    }

    ClearPassage zoneBefore() {
        return stretch(near, 0, zone(near) / line.alongMm());
    }

    ClearPassage zoneAfter() {
        return stretch(far, 1 - zone(far) / line.alongMm(), 1);
    }

    /**
     * What the bends leave of the leg.
     *
     * @param skip less so much at its start (mm)
     * @param drop and so much at its end
     */
    ClearPassage middle(double skip, double drop) {
        double from = (zone(near) + skip) / line.alongMm();
        return stretch(Optional.empty(), from, Math.max(from, 1 - (zone(far) + drop) / line.alongMm()));
    }

    private ClearPassage stretch(Optional<Mitre> turning, double from, double to) {
        return (leg.transition() || line.sheared()) && (near.isPresent() || far.isPresent())
                ? new FoldedStretch(line, near, far, turning, from, to)
                : new SquareStretch(line, turning, from, to);
    }
}
