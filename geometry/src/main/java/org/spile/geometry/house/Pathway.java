package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctPieces;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.LegBodies;
import org.spile.geometry.house.duct.Screws;
import org.spile.geometry.house.duct.Tap;
import org.spile.geometry.house.duct.Vanes;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A run or line worked out.
 *
 * @param start where it starts, in the frame of its first leg
 * @param shapes one for each leg
 */
record Pathway(Course course, Opening start, Target target, List<Leg> legs, List<LegShape> shapes, Stack wall) {
    Pathway {
        legs = List.copyOf(legs);
        shapes = List.copyOf(shapes);
    }

    /**
     * As it is told.
     *
     * @param walls of all runs, by id (mm)
     */
    DuctRun told(ToldRun run, Readings readings, Map<String, Double> walls) {
        List<DuctLeg> told = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            told.add(legs.get(i).told(wall.valueMm(), vanes(i, run, readings)));
        }
        List<LegBodies> bodies = shapes.stream().map(LegShape::bodies).toList();
        return new DuctRun(
                course.id(),
                course.path(),
                told,
                DuctPieces.of(told, bodies, screws(run, readings), tap(run.from(), walls), tap(run.to(), walls)),
                run.flow().map(flow -> readings.now(flow).value()),
                run.replaces().map(pipe -> readings.now(pipe).value()));
    }

    /** The screws of its joints. */
    Screws screws(ToldRun run, Readings readings) {
        return run.screws()
                .map(s -> new Screws(mm(s.tip(), readings), mm(s.thick(), readings), mm(s.apart(), readings)))
                .orElse(Screws.NONE);
    }

    private static double mm(Reading reading, Readings readings) {
        return readings.now(reading).value();
    }

    private static Optional<Tap> tap(ToldEnd end, Map<String, Double> walls) {
        return end.onRun()
                ? Optional.of(new Tap("runs." + end.name(), end.side(), walls.getOrDefault(end.name(), 0.0)))
                : Optional.empty();
    }

    /** The vanes in the corner before a leg: one less than the spaces they part along the mitre, one at least. */
    Vanes vanes(int i, ToldRun run, Readings readings) {
        Leg leg = legs.get(i);
        String kind = leg.station().bendKind().isEmpty()
                ? course.bendKind()
                : leg.station().bendKind();
        if (i == 0 || !kind.equals("vanes") || !LegShapes.corner(legs.get(i - 1), leg)) {
            return Vanes.NONE;
        }
        double mitre =
                Math.sqrt(2) * leg.start().size(legs.get(i - 1).way().axis()).valueMm();
        double spaces = Math.ceil(mitre / mm(run.vanes().apart(), readings) - 1e-9);
        return new Vanes(Math.max(1, (int) spaces - 1), mm(run.vanes().thick(), readings));
    }

    List<Piece> pieces(Passage passage) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            Piece piece = Piece.of(
                    leg.path(),
                    course.path(),
                    course.kind(),
                    course.title() + ", leg " + (i + 1),
                    passage.through(leg.trailer(), leg.from().at(), leg.to().at()),
                    leg.trailer(),
                    shapes.get(i).whole());
            pieces.add(leg.comesOut() ? piece.needing(target.trailer()) : piece);
        }
        return pieces;
    }

    /** The leg that holds a place along it, and what is left to go from its start. */
    Optional<Along> at(double mm) {
        double left = mm;
        for (Leg leg : legs) {
            double length = leg.to().at().distance(leg.from().at());
            if (left <= length + AxisPlacing.SAME_PLACE_MM) {
                return Optional.of(new Along(leg, Math.min(left, length) / length));
            }
            left -= length;
        }
        return Optional.empty();
    }

    /** A place on a leg, as a share of its length. */
    record Along(Leg leg, double share) {}
}
