package org.spile.analysis.fit;

import java.util.List;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.solid.Body;

/** Room straight in front of a face that a limit keeps free, as deep as asked; with nothing asked there is none. */
final class Ahead {
    private final Limit limit;
    private final Part of;
    private final Face face;
    private final Body asAsked;

    Ahead(Limit limit, Part of, Face face) {
        this.limit = limit;
        this.of = of;
        this.face = face;
        this.asAsked = face.swept(limit.askedMm());
    }

    /**
     * Keeps the room free of another part.
     *
     * @param own whether the face goes with the unit; else the other part does
     * @param met the other part as it is met from the face
     */
    Ban ban(boolean own, Part other, Body met) {
        String against = own ? Named.against(other) : of.thing();
        String title = own ? other.title() : of.title();
        return Ban.of(limit, against, title, askedMm -> apart(own, met, askedMm));
    }

    private List<Ban.Apart> apart(boolean own, Body met, double askedMm) {
        if (askedMm <= 0) {
            return List.of();
        }
        Body room = askedMm == limit.askedMm() ? asAsked : face.swept(askedMm);
        return List.of(own ? new Ban.Apart(room, met, 0) : new Ban.Apart(met, room, 0));
    }
}
