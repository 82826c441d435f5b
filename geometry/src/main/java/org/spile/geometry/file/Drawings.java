package org.spile.geometry.file;

import java.util.Optional;
import org.spile.geometry.house.told.ToldOutline;

/** Takes outlines from drawings beside the house file. */
interface Drawings {
    /** The shape, or nothing, and then the scribe was told why. */
    Optional<ToldOutline> outline(DrawnShape.Drawn drawn, Spot spot, Scribe scribe);

    /** For words that stand in no folder: there are no drawings beside them. */
    static Drawings none() {
        return (drawn, spot, scribe) -> {
            scribe.wrong(spot, "\"" + drawn.from() + "\" can't be read here.", "Type the corners.");
            return Optional.empty();
        };
    }
}
