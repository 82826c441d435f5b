package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldOutline;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** Makes trailers: the told ones, or one round everything where none is told. */
final class TrailerMaker {
    private final Readings readings;
    private final Troubles troubles;

    TrailerMaker(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.troubles = troubles;
    }

    Optional<Trailer> of(ToldTrailer told) {
        Optional<Plan> deck = told.deck().sizes().outline().isPresent()
                ? drawn(told.deck().sizes().outline().get())
                : rectangle(told.deck());
        if (deck.isEmpty()) {
            return Optional.empty();
        }
        Trailer bare = new Trailer(told.deck().id(), Optional.of(told), deck.get(), Optional.empty(), Optional.empty());
        if (told.roof().isEmpty()) {
            return Optional.of(bare);
        }
        Optional<Slope> under = new SurfaceReader(readings, troubles)
                .upright(told.roof().get(), bare.enclosure().faces(), Stack.ZERO);
        if (under.isEmpty()) {
            if (troubles.none()) {
                troubles.wrong(
                        told.roof().get().path(), "has no height", "Write profile:, or at: its height above the deck.");
            }
            return Optional.empty();
        }
        Slope whole = under.get().over(deck.get().extent(along(under.get())));
        Slope over = whole.offset(readings.of(told.roof().get().layers()), 1);
        return Optional.of(new Trailer(bare.id(), bare.told(), bare.deck(), Optional.of(whole), Optional.of(over)));
    }

    private static Axis along(Slope slope) {
        return slope.isLevel() ? Axis.X : slope.along();
    }

    private Optional<Plan> rectangle(Placed deck) {
        ToldSizes sizes = deck.sizes();
        for (var size : List.of(new Wanted("long", sizes.longMm()), new Wanted("wide", sizes.wideMm()))) {
            if (size.reading().isEmpty()) {
                troubles.wrong(deck.path(), "has no " + size.word(), "Write " + size.word() + ":, or an outline:.");
            }
        }
        if (sizes.longMm().isEmpty() || sizes.wideMm().isEmpty()) {
            return Optional.empty();
        }
        Span x = new Span(Stack.ZERO, readings.of(sizes.longMm().get()));
        Span y = Span.round(Stack.ZERO, readings.of(sizes.wideMm().get()));
        return Optional.of(Plan.rectangle(x, y));
    }

    private record Wanted(String word, Optional<Reading> reading) {}

    /** Its own bounds' rear edge is at 0 and its middle line too. */
    private Optional<Plan> drawn(ToldOutline told) {
        return Drawn.outline(told, troubles).map(outline -> {
            double dy = -(outline.minY() + outline.maxY()) / 2;
            return Plan.of(outline, Spot.of(Vector3D.of(-outline.minX(), dy, 0)));
        });
    }

    /** One trailer just large enough for the rooms and cavities that name no other place. */
    Trailer assumed(ToldHouse house) {
        List<Placed> tops = new ArrayList<>();
        house.rooms().values().stream()
                .map(room -> room.placed())
                .filter(placed -> placed.in().isEmpty())
                .forEach(tops::add);
        house.cavities().values().stream()
                .filter(cavity -> cavity.over().isEmpty())
                .map(cavity -> cavity.placed())
                .filter(placed -> placed.in().isEmpty())
                .forEach(tops::add);
        Stack length = reach(tops, Axis.X);
        Stack width = reach(tops, Axis.Y);
        Plan deck = Plan.rectangle(new Span(Stack.ZERO, length), Span.round(Stack.ZERO, width));
        return new Trailer(House.ASSUMED_TRAILER, Optional.empty(), deck, Optional.empty(), Optional.empty());
    }

    private Stack reach(List<Placed> tops, Axis axis) {
        return tops.stream()
                .map(placed -> reach(placed, axis))
                .flatMap(Optional::stream)
                .reduce(FirstOrder::greater)
                // Nothing has a size: whatever lacks it is told where it is placed.
                .orElse(Stack.constant(1));
    }

    /** From the side it is measured from to its far side. */
    private Optional<Stack> reach(Placed placed, Axis axis) {
        ToldSizes sizes = placed.sizes();
        if (sizes.outline().isPresent()) {
            Optional<Outline> outline = Drawn.outline(sizes.outline().get(), troubles);
            return outline.map(o -> Stack.constant(axis == Axis.X ? o.maxX() : o.maxY()));
        }
        Optional<Stack> size = (axis == Axis.X ? sizes.longMm() : sizes.wideMm()).map(readings::of);
        Optional<Stack> reach = size;
        for (FaceDistance distance : placed.at()) {
            boolean on = axis == Axis.X
                    ? List.of("rear", "front").contains(distance.face())
                    : List.of("left", "right").contains(distance.face());
            if (on && distance.far().isPresent()) {
                reach = distance.far().map(readings::of);
            } else if (on && size.isPresent()) {
                reach = Optional.of(size.get().plus(readings.of(distance.near())));
            }
        }
        return reach;
    }
}
