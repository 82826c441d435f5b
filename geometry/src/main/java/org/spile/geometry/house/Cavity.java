package org.spile.geometry.house;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A cavity in the frame of its trailer: its surfaces as measured, and as lined.
 *
 * @param over the room below it, if any
 * @param plan outline as measured
 * @param clear outline between the side linings
 * @param lower the face of the ceiling as seen from below, or the floor
 * @param upper the surface above
 * @param leaning sides that aren't plumb, by the way they look
 */
record Cavity(
        ToldCavity told,
        Trailer trailer,
        Optional<Room> over,
        Plan plan,
        Plan clear,
        Lined lower,
        Lined upper,
        Map<Way, Lined> leaning) {
    Cavity {
        leaning = Collections.unmodifiableMap(leaning.isEmpty() ? Map.of() : new EnumMap<>(leaning));
    }

    /**
     * A surface, and what is fixed in front of it.
     *
     * @param bare where the tape touched
     * @param lined the face of its linings
     */
    record Lined(Slope bare, Slope lined) {}

    String id() {
        return told.placed().id();
    }

    String path() {
        return told.placed().path();
    }

    /** Whether its lower face is a ceiling with a room below. */
    boolean hasCeiling() {
        return over.isPresent() && (told.belowIsCeiling() || unsaid());
    }

    /** Whether nothing was said of its lower face but how far it drops: then it goes by either word. */
    private boolean unsaid() {
        return told.below()
                .map(surface -> surface.at().isEmpty()
                        && surface.profile().isEmpty()
                        && surface.linings().isEmpty()
                        && surface.layers().isEmpty())
                .orElse(true);
    }

    /** Key of its lower face in the file. */
    String lowerKey() {
        return told.below().isPresent() && !told.belowIsCeiling() ? "floor" : "ceiling";
    }

    /** What people call its lower face. */
    String lowerTitle() {
        return unsaid() && over.isEmpty() ? "bottom" : lowerKey();
    }

    String dropPath() {
        return told.below().flatMap(ToldSurface::drop).map(Reading::path).orElse(path() + ".ceiling.drop");
    }

    Optional<ToldSurface> side(Way way) {
        return Optional.ofNullable(told.sides().get(way.face()));
    }

    /** Its faces as measured, for things placed in it. */
    Enclosure enclosure() {
        Map<String, Surface> faces = Room.sides(plan);
        leaning.forEach((way, side) -> faces.put(way.face(), Surface.of(way, side.bare())));
        Surface bottom = Surface.of(Way.DOWN, lower.bare());
        if (unsaid()) {
            faces.put("floor", bottom);
        }
        faces.put(lowerKey(), bottom);
        faces.put("top", Surface.of(Way.UP, upper.bare()));
        return new Enclosure(
                id(),
                trailer.id(),
                faces,
                Optional.of(Surface.of(Way.DOWN, lower.lined())),
                Optional.of(Surface.of(Way.UP, upper.lined())),
                List.of(id()));
    }
}
