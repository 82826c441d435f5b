package org.spile.geometry.file;

import java.util.Optional;
import org.spile.geometry.house.told.ToldOutline;

/** Takes outlines from drawings beside the house file. */
interface Drawings {
    /** The shape, or nothing, and then the scribe was told why. */
    Optional<ToldOutline> outline(DrawnShape.Drawn drawn, Spot spot, Scribe scribe);

    /** For text that stands in no folder: there are no drawings beside it. */
    static Drawings none() {
        return (drawn, spot, scribe) -> {
            scribe.wrong(
                    spot, "there is no folder to look for \"" + drawn.from() + "\" in.", "Read the house from a file.");
            return Optional.empty();
        };
    }
}
