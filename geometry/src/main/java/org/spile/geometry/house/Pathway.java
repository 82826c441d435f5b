package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctPieces;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.LegBodies;
import org.spile.geometry.house.duct.Screws;
import org.spile.geometry.house.told.ToldRun;
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

    DuctRun told(ToldRun run, Readings readings) {
        List<DuctLeg> told = legs.stream().map(leg -> leg.told(wall.valueMm())).toList();
        List<LegBodies> bodies = shapes.stream().map(LegShape::bodies).toList();
        return new DuctRun(
                course.id(),
                course.path(),
                told,
                DuctPieces.of(told, bodies, Screws.NONE),
                run.flow().map(flow -> readings.now(flow).value()),
                run.replaces().map(pipe -> readings.now(pipe).value()));
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
