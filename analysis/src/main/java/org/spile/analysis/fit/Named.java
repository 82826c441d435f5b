package org.spile.analysis.fit;

import java.util.Optional;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Where;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;

/** How parts are named in findings: by the thing they belong to, but linings and shells by the side that is met. */
final class Named {
    private static final double MICRONS = 1000;

    private Named() {}

    static String against(Part part) {
        return part.kind() == PartKind.LINING || part.kind() == PartKind.SHELL ? part.id() : part.thing();
    }

    /** The piece of a thing that has several, as {@code path[3]} of a run, with the place along it if there is one. */
    static Optional<Where> where(Site site, Part part, Ends ends) {
        if (part.kind() != PartKind.DUCT) {
            return Optional.empty();
        }
        String piece = part.id().startsWith(part.thing() + ".")
                ? part.id().substring(part.thing().length() + 1)
                : part.id();
        return site.station(part, ends.at())
                .map(mm -> new Where(part.thing(), piece, Quantity.mm(Math.rint(mm * MICRONS) / MICRONS)));
    }
}
