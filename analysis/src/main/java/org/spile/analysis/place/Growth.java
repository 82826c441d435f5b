package org.spile.analysis.place;

import java.util.List;

/**
 * The places' area as a ceiling goes down.
 *
 * @param path of the ceiling's drop
 * @param rows from the least drop
 */
public record Growth(String path, List<Row> rows) {
    /** Copies the list. */
    public Growth {
        rows = List.copyOf(rows);
    }

    /**
     * At one drop.
     *
     * @param dropMm the drop
     * @param areasMm2 at each yaw asked, in order
     */
    public record Row(double dropMm, List<Double> areasMm2) {
        /** Copies the list. */
        public Row {
            areasMm2 = List.copyOf(areasMm2);
        }
    }
}
