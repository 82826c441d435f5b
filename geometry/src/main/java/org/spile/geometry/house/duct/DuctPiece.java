package org.spile.geometry.house.duct;

import java.util.List;
import org.spile.geometry.house.duct.ClearPassage.Least;
import org.spile.geometry.kernel.solid.Body;

/**
 * One piece of a run as it is made: a straight, an offset, a transition, a bend or a takeoff.
 *
 * <p>Pieces follow each other without a gap. Two lengths are kept apart: a <em>station</em> counts along the run's middle
 * line from corner to corner, as {@code after:} and every finding do; a place <em>along the piece</em> counts along the path
 * the air takes, which a bend with a radius shortens. Points are in the frame of {@link #trailer}.
 */
public sealed interface DuctPiece permits Straight, Offset, Transition, Bend, Takeoff {
    /** The leg it belongs to; of a bend the leg after it, which says how it is made. */
    DuctLeg leg();

    /** Station where it begins (mm). */
    double startMm();

    /** Station where it ends (mm). */
    double endMm();

    /** What is clear inside. */
    ClearPassage clear();

    /** Its outside over all layers; of a mitred bend the two legs that meet in it. */
    Body outside();

    /** What stands into it, besides layers; in order along it. */
    List<Intrusion> intrusions();

    /** The same piece with other things standing into it. */
    DuctPiece with(List<Intrusion> others);

    /** The trade's word for it, as {@code transition}. */
    String word();

    /** The station that says it, as {@code runs.lab-supply.path[3]}. */
    default String path() {
        return leg().path();
    }

    /** Id of the trailer whose frame its points are in. */
    default String trailer() {
        return leg().trailer();
    }

    /** Length along its path (mm). */
    default double lengthMm() {
        return clear().lengthMm();
    }

    /** Clear area square to the path, intrusions left out (mm2). */
    default double clearAreaMm2(double atMm) {
        return clear().areaMm2(atMm);
    }

    /** Wetted perimeter (mm). */
    default double wettedPerimeterMm(double atMm) {
        return clear().perimeterMm(atMm);
    }

    /** Least clear area with what stands into it taken off. */
    default Least least() {
        Least least = clear().least();
        for (Intrusion intrusion : intrusions()) {
            double left = Math.max(0, clear().areaMm2(intrusion.atMm()) - intrusion.areaMm2());
            if (left < least.areaMm2()) {
                least = new Least(intrusion.atMm(), left);
            }
        }
        return least;
    }

    /** Place along the piece of a station; clamped to the piece. */
    default double alongMm(double stationMm) {
        double span = endMm() - startMm();
        double share = span > 0 ? (stationMm - startMm()) / span : 0;
        return Math.max(0, Math.min(1, share)) * lengthMm();
    }

    /** Station of a place along the piece. */
    default double stationMm(double alongMm) {
        double length = lengthMm();
        return length > 0 ? startMm() + (endMm() - startMm()) * alongMm / length : startMm();
    }
}
