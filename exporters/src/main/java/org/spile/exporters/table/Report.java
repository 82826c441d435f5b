package org.spile.exporters.table;

import java.util.List;
import org.spile.analysis.finding.Findings;

/**
 * The answers to one run of checks.
 *
 * @param spile the version that answered
 * @param house the house file, as its reader named it
 * @param title what the house is called; empty if unsaid
 * @param options the options applied, in that order
 * @param stances every stance that was looked at
 * @param findings the answers
 */
public record Report(
        String spile, String house, String title, List<String> options, List<String> stances, Findings findings) {
    /** Copies the lists. */
    public Report {
        options = List.copyOf(options);
        stances = List.copyOf(stances);
    }
}
