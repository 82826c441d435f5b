package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldBox;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** Stands things in their place: boxes, round things and outlines, turned or not, with their further boxes. */
final class Standing {
    private final Readings readings;
    private final Troubles troubles;
    private final String material;
    private final Optional<Moved> moved;

    Standing(Readings readings, Troubles troubles) {
        this(readings, troubles, "", Optional.empty());
    }

    private Standing(Readings readings, Troubles troubles, String material, Optional<Moved> moved) {
        this.readings = readings;
        this.troubles = troubles;
        this.material = material;
        this.moved = moved;
    }

    /** The same for things made of a material that grows with heat and damp. */
    Standing of(String material, Moved moved) {
        return new Standing(readings, troubles, material, Optional.of(moved));
    }

    /** A thing whose front looks forward. */
    Optional<Stood> stand(Placed placed, Enclosure in, Unsaid unsaid) {
        return stand(placed, in, unsaid, Way.FORWARD, Stack.ZERO);
    }

    /**
     * A thing in its place.
     *
     * @param front the way its own front looks: forward, aft, left or right; up and down leave it as the trailer's
     * @param wrap how far its layers take its box beyond its sizes on every side
     */
    Optional<Stood> stand(Placed placed, Enclosure in, Unsaid unsaid, Way front, Stack wrap) {
        ToldSizes sizes = placed.sizes();
        boolean sideways = front.axis() == Axis.Y;
        Stack deg = placed.turned().map(readings::of).orElse(Stack.ZERO);
        boolean turned = placed.turned().isPresent();
        Optional<Plan> drawn = Optional.empty();
        Map<Axis, Stack> own = own(sizes);
        moved.ifPresent(uses -> uses.growth(placed.path(), material, own)
                .forEach((axis, growth) -> own.merge(axis, growth, Stack::plus)));
        own.replaceAll((axis, size) -> size.plus(wrap.times(2)));
        if (sizes.outline().isPresent()) {
            drawn = drawn(sizes, deg);
            if (drawn.isEmpty()) {
                return Optional.empty();
            }
        }
        Map<Axis, Stack> box = new EnumMap<>(own);
        if (drawn.isPresent()) {
            box.put(Axis.X, drawn.get().extent(Axis.X).size());
            box.put(Axis.Y, drawn.get().extent(Axis.Y).size());
        } else if (turned && !acrossTurn(placed, own, box, deg)) {
            return Optional.empty();
        } else if (sideways) {
            swap(box);
        }
        Optional<Axis> rod = rod(sizes);
        List<FaceDistance> at = new ArrayList<>(placed.at());
        sizes.outline()
                .flatMap(told -> Drawn.outline(told, troubles))
                .ifPresent(outline -> PlanPlacing.asDrawn(outline, in, at, placed.path()));
        Asked asked = new Asked(placed.path(), at, box, round(rod, sideways), words(sideways), in, unsaid);
        Optional<Block> stood = new Placing(readings, troubles).block(asked);
        if (stood.isEmpty() || flat(placed, stood.get())) {
            return Optional.empty();
        }
        return Optional.of(turned(placed, in, stood.get(), front, deg, own, rod, drawn));
    }

    private Stood turned(
            Placed placed,
            Enclosure in,
            Block stood,
            Way front,
            Stack deg,
            Map<Axis, Stack> own,
            Optional<Axis> rod,
            Optional<Plan> drawn) {
        Spot middle = stood.middle();
        Optional<Plan> plan = drawn.map(outline -> new Plan(outline.corners().stream()
                .map(corner -> corner.plus(new Spot(middle.x(), middle.y(), Stack.ZERO)))
                .toList()));
        boolean quarter = front == Way.AFT || front.axis() == Axis.Y;
        Block box = stood;
        if (placed.turned().isPresent() && drawn.isEmpty()) {
            box = stood.with(Axis.X, Span.round(middle.x(), own.get(Axis.X)))
                    .with(Axis.Y, Span.round(middle.y(), own.get(Axis.Y)));
        } else if (front.axis() == Axis.Y) {
            box = stood.with(Axis.X, Span.round(middle.x(), stood.y().size()))
                    .with(Axis.Y, Span.round(middle.y(), stood.x().size()));
        }
        double fixed = switch (front) {
            case LEFT -> 90;
            case RIGHT -> -90;
            case AFT -> 180;
            case FORWARD, UP, DOWN -> 0;
        };
        Rigid turn = Rigid.NONE;
        if (quarter || placed.turned().isPresent()) {
            turn = Rigid.turn(middle, Vector3D.Unit.PLUS_Z, deg.plus(fixed));
        }
        Stood thing = new Stood(placed, in, box, turn, rod, plan, List.of());
        return thing.with(more(placed, thing));
    }

    /** Its further boxes, placed from the faces of the first. */
    private List<Block> more(Placed placed, Stood first) {
        List<Block> boxes = new ArrayList<>();
        for (ToldBox box : placed.bodies()) {
            Map<Axis, Stack> sizes = own(box.sizes());
            Asked asked =
                    new Asked(box.path(), box.at(), sizes, Set.of(), Asked.ownWords(), first.faces(), Unsaid.CENTRED);
            new Placing(readings, troubles).block(asked).ifPresent(boxes::add);
        }
        return boxes;
    }

    private Map<Axis, Stack> own(ToldSizes told) {
        Map<Axis, Stack> own = new EnumMap<>(Axis.class);
        told.longMm().ifPresent(size -> own.put(Axis.X, readings.of(size)));
        told.wideMm().ifPresent(size -> own.put(Axis.Y, readings.of(size)));
        told.highMm().ifPresent(size -> own.put(Axis.Z, readings.of(size)));
        rod(told).ifPresent(along -> {
            for (Axis axis : Axis.values()) {
                if (axis != along) {
                    own.put(axis, readings.of(told.roundMm().orElseThrow()));
                }
            }
        });
        return own;
    }

    /** The own axis of a round thing: the one whose length is given, else the upright. */
    static Optional<Axis> rod(ToldSizes told) {
        if (told.roundMm().isEmpty()) {
            return Optional.empty();
        }
        if (told.longMm().isPresent()) {
            return Optional.of(Axis.X);
        }
        return Optional.of(told.wideMm().isPresent() ? Axis.Y : Axis.Z);
    }

    private static Set<Axis> round(Optional<Axis> rod, boolean sideways) {
        Set<Axis> round = EnumSet.noneOf(Axis.class);
        rod.ifPresent(along -> {
            round.addAll(EnumSet.complementOf(EnumSet.of(along)));
            if (sideways && along != Axis.Z) {
                round.remove(along == Axis.X ? Axis.Y : Axis.X);
                round.add(along);
            }
        });
        return round;
    }

    private static Map<Axis, String> words(boolean sideways) {
        Map<Axis, String> words = Asked.ownWords();
        if (sideways) {
            words.put(Axis.X, Axis.Y.size());
            words.put(Axis.Y, Axis.X.size());
        }
        return words;
    }

    private static void swap(Map<Axis, Stack> box) {
        Stack along = box.remove(Axis.X);
        Stack across = box.remove(Axis.Y);
        if (across != null) {
            box.put(Axis.X, across);
        }
        if (along != null) {
            box.put(Axis.Y, along);
        }
    }

    /** The size of a turned box from outermost corner to outermost corner. */
    private boolean acrossTurn(Placed placed, Map<Axis, Stack> own, Map<Axis, Stack> box, Stack deg) {
        if (!own.containsKey(Axis.X) || !own.containsKey(Axis.Y)) {
            troubles.wrong(
                    placed.path(),
                    "is turned and has no " + (own.containsKey(Axis.X) ? "wide" : "long"),
                    "A turned thing needs both its sizes.");
            return false;
        }
        Stack cosine = FirstOrder.magnitude(FirstOrder.cosine(deg));
        Stack sine = FirstOrder.magnitude(FirstOrder.sine(deg));
        Stack along = own.get(Axis.X);
        Stack across = own.get(Axis.Y);
        box.put(Axis.X, FirstOrder.product(along, cosine).plus(FirstOrder.product(across, sine)));
        box.put(Axis.Y, FirstOrder.product(along, sine).plus(FirstOrder.product(across, cosine)));
        return true;
    }

    /** The outline turned, round the middle of its bounds as turned. */
    private Optional<Plan> drawn(ToldSizes sizes, Stack deg) {
        Optional<Outline> outline = sizes.outline().flatMap(told -> Drawn.outline(told, troubles));
        return outline.map(o -> {
            Rigid turn = Rigid.turn(Spot.ORIGIN, Vector3D.Unit.PLUS_Z, deg);
            Plan turned = new Plan(
                    Plan.of(o, Spot.ORIGIN).corners().stream().map(turn::apply).toList());
            Spot middle = new Spot(
                    turned.extent(Axis.X).middle(), turned.extent(Axis.Y).middle(), Stack.ZERO);
            return new Plan(turned.corners().stream().map(c -> c.minus(middle)).toList());
        });
    }

    private boolean flat(Placed placed, Block box) {
        for (Axis axis : Axis.values()) {
            double size = box.get(axis).size().valueMm();
            if (!(size > 0)) {
                troubles.wrong(
                        placed.path(),
                        axis.size() + " is " + AxisPlacing.number(size),
                        "A body needs a size along every way.");
                return true;
            }
        }
        return false;
    }
}
