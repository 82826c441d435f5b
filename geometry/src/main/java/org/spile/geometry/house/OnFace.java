package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.Asked.Unsaid;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/** Puts something on a face: a spigot, a grille, a door's leaf, a room for service. */
final class OnFace {
    private final Readings readings;
    private final Troubles troubles;

    OnFace(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.troubles = troubles;
    }

    /**
     * What lies on a face.
     *
     * @param path where it is told
     * @param face word of the enclosure's face
     * @param out how far it reaches; nothing if it is flat
     * @param outside whether it reaches out of the enclosure rather than into it
     * @param fills whether it takes the whole face where no size is told, rather than being a point
     */
    record Wish(
            String path,
            String face,
            Stack out,
            boolean outside,
            boolean fills,
            ToldSizes sizes,
            List<FaceDistance> at,
            Enclosure in,
            Unsaid unsaid) {}

    Optional<Block> block(Wish wish) {
        Optional<Surface> face = wish.in().face(wish.face());
        if (face.isEmpty()) {
            troubles.wrong(
                    wish.path() + ".face",
                    wish.in().id() + " has no face \"" + wish.face() + "\"",
                    "Its faces: " + String.join(", ", wish.in().faces().keySet()) + ".");
            return Optional.empty();
        }
        Axis square = face.get().axis();
        Map<Axis, Stack> sizes = sizes(wish.sizes(), square);
        Set<Axis> round = EnumSet.noneOf(Axis.class);
        for (Axis axis : Axis.values()) {
            if (axis != square && wish.sizes().roundMm().isPresent()) {
                round.add(axis);
            } else if (axis != square && !wish.fills() && !sizes.containsKey(axis) && !pair(wish, axis)) {
                sizes.put(axis, Stack.ZERO);
                round.add(axis);
            }
        }
        sizes.put(square, wish.out());
        List<FaceDistance> at = new ArrayList<>(wish.at());
        Reading zero = Reading.of("", Kind.LENGTH, 0);
        at.add(new FaceDistance(wish.path() + ".face", wish.face(), zero, Optional.empty(), wish.outside()));
        Asked asked = new Asked(wish.path(), at, sizes, round, words(square), wish.in(), wish.unsaid());
        return new Placing(readings, troubles).block(asked);
    }

    /** Whether both sides along an axis are told. */
    private static boolean pair(Wish wish, Axis axis) {
        int told = 0;
        for (FaceDistance distance : wish.at()) {
            boolean on = AxisPlacing.coordinate(distance).filter(a -> a == axis).isPresent()
                    || wish.in()
                            .face(distance.face())
                            .filter(f -> f.axis() == axis)
                            .isPresent();
            told += on ? distance.far().isPresent() ? 2 : 1 : 0;
        }
        return told > 1;
    }

    /** Along the face as one looks at it: wide is level; on a floor or ceiling wide is across and long fore and aft. */
    private Map<Axis, Stack> sizes(ToldSizes told, Axis square) {
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        told.highMm().ifPresent(size -> sizes.put(Axis.Z, readings.of(size)));
        told.longMm().ifPresent(size -> sizes.put(Axis.X, readings.of(size)));
        told.wideMm().ifPresent(size -> sizes.put(square == Axis.Y ? Axis.X : Axis.Y, readings.of(size)));
        told.roundMm().ifPresent(size -> {
            for (Axis axis : Axis.values()) {
                sizes.put(axis, readings.of(size));
            }
        });
        sizes.remove(square);
        return sizes;
    }

    private static Map<Axis, String> words(Axis square) {
        Map<Axis, String> words = Asked.ownWords();
        if (square == Axis.Y) {
            words.put(Axis.X, "wide");
        }
        return words;
    }

    /** The axis along {@code wide} on a face. */
    static Axis wide(Way face) {
        return face.axis() == Axis.Y ? Axis.X : Axis.Y;
    }
}
