package org.spile.geometry.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Something that things are placed in, in the frame of its trailer: its faces by their words.
 *
 * @param id its id
 * @param trailer the trailer whose frame it is in
 * @param faces by word, in the order they are listed to people
 * @param resting what a thing without a height stands on: a lining's face, where there is one
 * @param hanging what a thing hangs from: a lining's face, where there is one
 * @param spaces ids of the cavity or room it is; empty if neither
 */
record Enclosure(
        String id,
        String trailer,
        Map<String, Surface> faces,
        Optional<Surface> resting,
        Optional<Surface> hanging,
        List<String> spaces) {
    Enclosure {
        faces = Collections.unmodifiableMap(new LinkedHashMap<>(faces));
        spaces = List.copyOf(spaces);
    }

    /** The faces of a box. */
    static Enclosure body(String id, String trailer, Span x, Span y, Span z) {
        Map<String, Surface> faces = new LinkedHashMap<>();
        for (Way way : Way.values()) {
            Span span = switch (way.axis()) {
                case X -> x;
                case Y -> y;
                case Z -> z;
            };
            faces.put(way.face(), Surface.level(way, span.end(way)));
        }
        return new Enclosure(
                id,
                trailer,
                faces,
                Optional.of(Surface.level(Way.DOWN, z.low())),
                Optional.of(Surface.level(Way.UP, z.high())),
                List.of());
    }

    Optional<Surface> face(String word) {
        return Optional.ofNullable(faces.get(word));
    }

    /** The first listed face that looks a way. */
    Optional<Surface> toward(Way way) {
        return faces.values().stream().filter(face -> face.outward() == way).findFirst();
    }

    /** From face to face along an axis, at the widest. */
    Optional<Span> extent(Axis axis) {
        return toward(Way.of(axis, -1))
                .flatMap(low -> toward(Way.of(axis, 1)).map(high -> new Span(widest(low), widest(high))));
    }

    private static Stack widest(Surface face) {
        return face.at().knots().stream()
                .map(Slope.Knot::value)
                .reduce(face.outward().sign() > 0 ? FirstOrder::greater : FirstOrder::lesser)
                .orElseThrow();
    }
}
