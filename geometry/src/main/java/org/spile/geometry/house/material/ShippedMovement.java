package org.spile.geometry.house.material;

import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/**
 * Stiffness and growth of the shipped materials; a zero stands for a value that is not known.
 *
 * <p>Growth with heat: the thermal expansion table of an open encyclopaedia (aluminium 23.1, carbon steel 10.8, stainless
 * 17.3, copper 17, glass 8.5; softwood the Douglas-fir's largest, 45 across the grain), rigid PVC 80 by a workshop table.
 * Growth with damp: Wood Handbook FPL-GTR-190, table 13-5, tangential; softwood as Douglas-fir 0.00267 by a flooring page
 * that quotes it, hardwood as red oak 0.00369. Stiffness: softwood C24 along the grain 11 000 MPa (EN 338), steel 210 000
 * and aluminium 70 000 MPa (EN 1993-1-1 and EN 1999-1-1), stainless 200 000 MPa (EN 1993-1-4), all from memory.
 */
final class ShippedMovement {
    private static final double MPA = 1e6;
    private static final double MILLIONTH = 1e-6;

    private record Values(double stiffMpa, double growsMillionths, double swells) {}

    private static final Values SOFTWOOD = new Values(11_000, 45, 0.00267);
    private static final Values SHEET_STEEL = new Values(210_000, 10.8, 0);

    private static final Map<String, Values> KNOWN = Map.of(
            "batten", SOFTWOOD,
            "timber", SOFTWOOD,
            "hardwood", new Values(0, 54, 0.00369),
            "galv", SHEET_STEEL,
            "steel", SHEET_STEEL,
            "stainless", new Values(200_000, 17.3, 0),
            "alu", new Values(70_000, 23.1, 0),
            "copper", new Values(0, 17, 0),
            "glass", new Values(0, 8.5, 0),
            "pvc", new Values(0, 80, 0));

    private ShippedMovement() {}

    static Movement of(String id) {
        Values values = KNOWN.get(id);
        return values == null
                ? Movement.UNKNOWN
                : new Movement(
                        value(id, "stiff", Kind.STIFFNESS, values.stiffMpa * MPA),
                        value(id, "grows", Kind.EXPANSION, values.growsMillionths * MILLIONTH),
                        value(id, "swells", Kind.RATIO, values.swells));
    }

    private static Optional<Reading> value(String id, String key, Kind kind, double base) {
        return base == 0 ? Optional.empty() : Optional.of(Reading.byDefault("materials." + id + "." + key, kind, base));
    }
}
