package org.spile.analysis.duct;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.duct.ClearPassage.Least;
import org.spile.geometry.house.duct.DuctPiece;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Intrusion;

/**
 * A run developed straight: its clear area at every place.
 *
 * <p>Stations count along the run's middle line from corner to corner, as {@code after:} and all findings do. Areas are
 * square to the path and have what stands into the duct taken off. Between two breakpoints the area is a quadratic of the
 * station, or the same; ask {@link #at} for the curve.
 *
 * @param run what it is of
 * @param breakpoints in order; where the area steps, or something stands in, several at one station
 * @param pieces each with its exact least
 * @param pinches in order along the run; at least one, the run's least among them
 */
public record AreaProfile(DuctRun run, List<AreaStation> breakpoints, List<PieceArea> pieces, List<Pinch> pinches) {
    /** Copies the lists. */
    public AreaProfile {
        breakpoints = List.copyOf(breakpoints);
        pieces = List.copyOf(pieces);
        pinches = List.copyOf(pinches);
    }

    /**
     * The profile of a run.
     *
     * @throws IllegalArgumentException if it has no piece
     */
    public static AreaProfile of(DuctRun run) {
        if (run.pieces().isEmpty()) {
            throw new IllegalArgumentException(run.path() + " has no piece of duct");
        }
        List<AreaStation> breakpoints = new ArrayList<>();
        List<PieceArea> pieces = new ArrayList<>();
        for (DuctPiece piece : run.pieces()) {
            breakpoints(piece, breakpoints);
            Least least = piece.least();
            pieces.add(new PieceArea(
                    piece.path(),
                    piece.word(),
                    piece.startMm(),
                    piece.endMm(),
                    piece.lengthMm(),
                    piece.stationMm(least.atMm()),
                    least.areaMm2()));
        }
        return new AreaProfile(run, breakpoints, pieces, new Pinches(run).found());
    }

    private static void breakpoints(DuctPiece piece, List<AreaStation> into) {
        double length = piece.lengthMm();
        into.add(station(piece, 0, 0));
        for (Intrusion intrusion : piece.intrusions()) {
            double at = intrusion.atMm();
            if (at > 0 && at < length) {
                into.add(station(piece, at, 0));
            }
            into.add(station(piece, at, intrusion.areaMm2()));
            if (at < length) {
                into.add(station(piece, at, 0));
            }
        }
        into.add(station(piece, length, 0));
    }

    private static AreaStation station(DuctPiece piece, double alongMm, double offMm2) {
        return new AreaStation(
                piece.stationMm(alongMm),
                Math.max(0, piece.clearAreaMm2(alongMm) - offMm2),
                piece.wettedPerimeterMm(alongMm),
                piece.clear().wideMm(alongMm),
                piece.clear().highMm(alongMm));
    }

    /** Station of its end (mm). */
    public double lengthMm() {
        return run.pieces().get(run.pieces().size() - 1).endMm();
    }

    /** The run's least. */
    public Pinch least() {
        return pinches.stream().filter(Pinch::least).findFirst().orElseThrow();
    }

    /**
     * The section at a station, vanes and screws left out; clamped to the run, and of two that meet there the first.
     *
     * @param stationMm along the run
     */
    public AreaStation at(double stationMm) {
        DuctPiece in = run.pieces().get(0);
        for (DuctPiece piece : run.pieces()) {
            if (piece.startMm() < stationMm) {
                in = piece;
            }
        }
        return station(in, in.alongMm(stationMm), 0);
    }
}
