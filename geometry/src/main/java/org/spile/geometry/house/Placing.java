package org.spile.geometry.house;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.Asked.Upright;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.kernel.measure.NearestName;

/**
 * Puts a box where its distances say: first along the axes whose faces are plumb and level, then along those whose face
 * slopes, at its nearest place over what is already known of the box.
 */
final class Placing {
    private final Readings readings;
    private final Troubles troubles;

    Placing(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.troubles = troubles;
    }

    /** Where the thing goes; nothing, and a trouble, if that can't be said. */
    Optional<Block> block(Asked asked) {
        if (!facesKnown(asked)) {
            return Optional.empty();
        }
        Map<Axis, Span> known = new EnumMap<>(Axis.class);
        for (int pass = 0; pass < Axis.values().length; pass++) {
            for (Axis axis : Axis.values()) {
                if (!known.containsKey(axis) && ready(asked, axis, known)) {
                    Optional<Span> span = new AxisPlacing(readings, troubles, asked, axis, known).span();
                    if (span.isEmpty()) {
                        return Optional.empty();
                    }
                    known.put(axis, span.get());
                }
            }
        }
        if (known.size() < Axis.values().length) {
            troubles.wrong(
                    asked.path() + ".at",
                    "every face it could be measured from slopes along another way that isn't known yet",
                    "Give one of the two places from a level or plumb face, or as a coordinate.");
            return Optional.empty();
        }
        return Optional.of(new Block(known.get(Axis.X), known.get(Axis.Y), known.get(Axis.Z)));
    }

    private boolean facesKnown(Asked asked) {
        boolean all = true;
        for (FaceDistance distance : asked.at()) {
            boolean coordinate = AxisPlacing.coordinate(distance).isPresent();
            if (!coordinate && asked.in().face(distance.face()).isEmpty()) {
                all = false;
                var words = asked.in().faces().keySet();
                String nearest = NearestName.of(distance.face(), words)
                        .map(word -> "Nearest: " + word + ".")
                        .orElse("Its faces: " + String.join(", ", words) + ".");
                troubles.wrong(distance.path(), asked.in().id() + " has no face \"" + distance.face() + "\"", nearest);
            }
        }
        return all;
    }

    /** Whether every face that this axis would be measured from is known where the thing will be. */
    private static boolean ready(Asked asked, Axis axis, Map<Axis, Span> known) {
        boolean told = false;
        for (FaceDistance distance : asked.at()) {
            Optional<Surface> face = asked.in().face(distance.face());
            if (face.isPresent() && face.get().axis() == axis) {
                told = true;
                if (!face.get().reached(known)) {
                    return false;
                }
            }
            told |= AxisPlacing.coordinate(distance).filter(a -> a == axis).isPresent();
        }
        return told || axis != Axis.Z || unsaidReached(asked, known);
    }

    private static boolean unsaidReached(Asked asked, Map<Axis, Span> known) {
        Enclosure in = asked.in();
        Optional<Surface> from = asked.unsaid().upright() == Upright.HANGS ? in.hanging() : in.resting();
        return asked.unsaid().upright() == Upright.ON
                || from.map(face -> face.reached(known)).orElse(true);
    }
}
