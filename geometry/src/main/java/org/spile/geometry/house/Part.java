package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.solid.Body;

/**
 * One body of the scene.
 *
 * @param id unique in the scene and the same in every stance, as {@code units.cooler}, {@code units.cooler.service.electric},
 *     {@code runs.lab-supply.path[3]}, {@code cavities.lobby-top.ceiling}
 * @param thing path of the thing it belongs to, as {@code units.cooler}
 * @param kind what kind of thing
 * @param title in people's words, as "cooler", "lab-supply, leg 3", "ceiling of lobby-top"
 * @param spaces ids of the cavities and rooms it lies in, or for a lining the cavity it bounds (and, for a ceiling, the
 *     room below)
 * @param trailer id of the trailer it belongs to
 * @param body in the site frame (mm); for a lining thick enough to catch a body beyond it, so more than is there
 * @param flex what its points rest on
 * @param shown what a drawing shows of it: the body, but for a lining only what is really built; absent if nothing is
 */
public record Part(
        String id,
        String thing,
        PartKind kind,
        String title,
        List<String> spaces,
        String trailer,
        Body body,
        Flex flex,
        Optional<Body> shown) {
    /** Copies the list. */
    public Part {
        spaces = List.copyOf(spaces);
    }

    /** A part that is drawn as it is. */
    public Part(
            String id,
            String thing,
            PartKind kind,
            String title,
            List<String> spaces,
            String trailer,
            Body body,
            Flex flex) {
        this(id, thing, kind, title, spaces, trailer, body, flex, Optional.of(body));
    }
}
