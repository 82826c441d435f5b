package org.spile.exporters.table;

import java.util.List;
import org.spile.analysis.whole.TapeSheet;

/**
 * A tape-measure sheet with what it is about.
 *
 * @param spile the version
 * @param house the house file as it was named
 * @param title what people call the house; empty if they don't
 * @param options applied to it, in order
 * @param sheet the sheet
 */
public record TapeReport(String spile, String house, String title, List<String> options, TapeSheet sheet) {
    /** Copies the list. */
    public TapeReport {
        options = List.copyOf(options);
    }
}
