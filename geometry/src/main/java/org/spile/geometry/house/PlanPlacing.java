package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** Puts the plan of a room or cavity where its distances say; a way without a size is filled from side to side. */
final class PlanPlacing {
    private final Readings readings;
    private final Troubles troubles;

    PlanPlacing(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.troubles = troubles;
    }

    /** The plan, or nothing and a trouble; heights are left out. */
    Optional<Plan> plan(Placed placed, Enclosure in) {
        Optional<Outline> drawn = Optional.empty();
        if (placed.sizes().outline().isPresent()) {
            drawn = Drawn.outline(placed.sizes().outline().get(), troubles);
            if (drawn.isEmpty()) {
                return Optional.empty();
            }
        }
        Map<Axis, Stack> sizes = sizes(placed.sizes(), drawn);
        List<FaceDistance> at = level(placed.at(), in);
        drawn.ifPresent(outline -> asDrawn(outline, in, at, placed.path()));
        sizes.put(Axis.Z, Stack.ZERO);
        Unsaid unsaid = new Unsaid(true, Asked.Upright.ON, Stack.ZERO, Optional.of(Stack.ZERO));
        Asked asked = new Asked(placed.path(), at, sizes, Set.of(), Asked.ownWords(), in, unsaid);
        Optional<Block> block = new Placing(readings, troubles).block(asked);
        return block.map(box -> plan(box, placed));
    }

    /** A plan set down with the least corner of its bounds at the least corner of a box. */
    Plan plan(Block box, Placed placed) {
        return placed.sizes()
                .outline()
                .flatMap(told -> Drawn.outline(told, troubles))
                .map(outline -> Plan.of(
                        outline,
                        new Spot(
                                box.x().low().minus(outline.minX()),
                                box.y().low().minus(outline.minY()),
                                Stack.ZERO)))
                .orElseGet(() -> Plan.rectangle(box.x(), box.y()));
    }

    private Map<Axis, Stack> sizes(ToldSizes told, Optional<Outline> drawn) {
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        if (drawn.isPresent()) {
            sizes.put(Axis.X, Stack.constant(drawn.get().maxX() - drawn.get().minX()));
            sizes.put(Axis.Y, Stack.constant(drawn.get().maxY() - drawn.get().minY()));
        } else {
            told.longMm().ifPresent(size -> sizes.put(Axis.X, readings.of(size)));
            told.wideMm().ifPresent(size -> sizes.put(Axis.Y, readings.of(size)));
        }
        return sizes;
    }

    private static List<FaceDistance> level(List<FaceDistance> at, Enclosure in) {
        List<FaceDistance> level = new ArrayList<>();
        for (FaceDistance distance : at) {
            boolean upright = distance.face().equals("z")
                    || in.face(distance.face())
                            .filter(face -> face.axis() == Axis.Z)
                            .isPresent();
            if (!upright) {
                level.add(distance);
            }
        }
        return level;
    }

    /** Ways that {@code at} leaves out stay as drawn, from the rear right corner. */
    static void asDrawn(Outline outline, Enclosure in, List<FaceDistance> at, String path) {
        if (unsaid(at, in, Axis.X)) {
            at.add(drawn(path, "rear", outline.minX()));
        }
        if (unsaid(at, in, Axis.Y)) {
            at.add(drawn(path, "right", outline.minY()));
        }
    }

    private static boolean unsaid(List<FaceDistance> at, Enclosure in, Axis axis) {
        return at.stream()
                .noneMatch(d -> AxisPlacing.coordinate(d).filter(a -> a == axis).isPresent()
                        || in.face(d.face()).filter(f -> f.axis() == axis).isPresent());
    }

    private static FaceDistance drawn(String path, String face, double mm) {
        Reading reading = Reading.of("", Kind.LENGTH, mm);
        return new FaceDistance(path + ".outline", face, reading, Optional.empty(), false);
    }
}
