package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Loft;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Slope.Knot;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Stack;

/** A trailer's own shell, as far as it was told: roof layers, wall layers inside the deck's edges, floor layers below it. */
final class Shells {
    private final Readings readings;
    private final Trailer trailer;

    Shells(Readings readings, Trailer trailer) {
        this.readings = readings;
        this.trailer = trailer;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        if (trailer.told().isEmpty()) {
            return pieces;
        }
        ToldTrailer told = trailer.told().get();
        if (told.roof().isPresent() && !told.roof().get().layers().isEmpty()) {
            pieces.add(piece("roof", roof()));
        }
        if (!told.walls().isEmpty()) {
            walls(readings.of(told.walls()), pieces);
        }
        if (!told.floor().isEmpty()) {
            Stack bottom = readings.of(told.floor()).times(-1);
            pieces.add(piece("floor", trailer.deck().upright(bottom, Stack.ZERO)));
        }
        return pieces;
    }

    private Piece piece(String key, Shape shape) {
        return Piece.of(
                trailer.path() + "." + key,
                trailer.path(),
                PartKind.SHELL,
                key + " of " + trailer.title(),
                List.of(),
                trailer.id(),
                shape);
    }

    private Shape roof() {
        Slope under = trailer.under().orElseThrow();
        Axis along = under.isLevel() ? Axis.X : under.along();
        Axis across = along == Axis.X ? Axis.Y : Axis.X;
        Span width = trailer.deck().extent(across);
        Slope inner = under.spread(along, trailer.deck().extent(along));
        Slope outer = trailer.over().orElseThrow().spread(along, trailer.deck().extent(along));
        return Shape.union(Slabs.between(inner, outer, Axis.Z, width));
    }

    /** Each wall from the deck to the bare roof at its lower edge; without a roof nobody knows how high. */
    private void walls(Stack thick, List<Piece> pieces) {
        if (trailer.under().isEmpty()) {
            return;
        }
        Slope under = trailer.under().get();
        List<Stack> by = new ArrayList<>();
        List<Plan.Side> sides = trailer.deck().sides();
        sides.forEach(side -> by.add(thick));
        Plan inner = trailer.deck().inset(by);
        for (Way way : List.of(Way.AFT, Way.FORWARD, Way.LEFT, Way.RIGHT)) {
            List<Shape> slabs = new ArrayList<>();
            for (Plan.Side side : sides) {
                if (side.way() == way) {
                    slabs.addAll(wall(side, inner.sides().get(side.index()), under));
                }
            }
            if (!slabs.isEmpty()) {
                pieces.add(piece("walls." + way.face(), Shape.union(slabs)));
            }
        }
    }

    /** Split where the roof turns, so that each piece's top is flat under the roof. */
    private static List<Shape> wall(Plan.Side outer, Plan.Side inner, Slope under) {
        List<Shape> slabs = new ArrayList<>();
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        if (!under.isLevel()) {
            double from = outer.from().get(under.along()).valueMm();
            double to = outer.to().get(under.along()).valueMm();
            for (Knot knot : under.knots()) {
                double t = (knot.at().valueMm() - from) / (to - from);
                if (t > 1e-9 && t < 1 - 1e-9) {
                    cuts.add(t);
                }
            }
            cuts.sort(Double::compare);
        }
        for (int i = 0; i + 1 < cuts.size(); i++) {
            List<Spot> ring = List.of(
                    outer.from().toward(outer.to(), cuts.get(i)),
                    outer.from().toward(outer.to(), cuts.get(i + 1)),
                    inner.from().toward(inner.to(), cuts.get(i + 1)),
                    inner.from().toward(inner.to(), cuts.get(i)));
            slabs.add(Loft.between(
                    ring, ring.stream().map(spot -> topped(spot, under)).toList()));
        }
        return slabs;
    }

    private static Spot topped(Spot spot, Slope under) {
        Stack place = under.isLevel() ? Stack.ZERO : spot.get(under.along());
        return spot.with(Axis.Z, under.at(place));
    }
}
