package org.spile.geometry.file;

import java.util.List;

/** The sections of a house file that hold named things. */
final class Sections {
    /** Those whose things may not share an id. */
    static final List<String> THINGS = List.of(
            "trailers", "rooms", "cavities", "fixtures", "movers", "units", "terminals", "runs", "lines", "masses");

    private Sections() {}
}
