package org.spile.geometry.house.material;

import java.util.List;
import java.util.Optional;

/**
 * General tolerances of linear sizes of machined and bent metal parts, by ISO 2768-1.
 *
 * <p>Not for timber, tape work or bought units. A size on a bound belongs to the column below it (120 is in 30 to 120).
 */
public enum GeneralTolerance {
    /** Class f. */
    FINE,
    /** Class m. */
    MEDIUM,
    /** Class c. */
    COARSE,
    /** Class v. */
    VERY_COARSE;

    /** Where the table comes from. */
    public static final String SOURCE = "ISO 2768-1, from two copies of the DIN edition that agree";

    private static final List<Double> BOUNDS_MM = List.of(0.5, 3.0, 6.0, 30.0, 120.0, 400.0, 1000.0, 2000.0, 4000.0);

    /** How far a size of so many mm may be off either way (mm); nothing where the table has no value. */
    public Optional<Double> of(double sizeMm) {
        List<Double> eitherMm = row();
        double size = TableSize.of(sizeMm);
        for (int i = 0; i < eitherMm.size(); i++) {
            boolean above = i == 0 ? size >= BOUNDS_MM.get(0) : size > BOUNDS_MM.get(i);
            if (above && size <= BOUNDS_MM.get(i + 1)) {
                return Optional.of(eitherMm.get(i)).filter(mm -> mm > 0);
            }
        }
        return Optional.empty();
    }

    // One value for each column between two bounds; zero where the table has none.
    private List<Double> row() {
        return switch (this) {
            case FINE -> List.of(0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.0);
            case MEDIUM -> List.of(0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2.0);
            case COARSE -> List.of(0.2, 0.3, 0.5, 0.8, 1.2, 2.0, 3.0, 4.0);
            case VERY_COARSE -> List.of(0.0, 0.5, 1.0, 1.5, 2.5, 4.0, 6.0, 8.0);
        };
    }
}
