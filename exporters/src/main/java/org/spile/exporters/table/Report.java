package org.spile.exporters.table;

import java.util.List;
import org.spile.analysis.finding.Finding;

/**
 * The answers to one run of checks.
 *
 * @param spile the version that answered
 * @param house the house file, as its reader named it
 * @param title what the house is called; empty if unsaid
 * @param options the options applied, in that order
 * @param findings in the order of the checks
 */
public record Report(String spile, String house, String title, List<String> options, List<Finding> findings) {
    /** Copies the lists. */
    public Report {
        options = List.copyOf(options);
        findings = List.copyOf(findings);
    }

    /** How many findings of each verdict there are. */
    public Tally tally() {
        return Tally.of(findings);
    }
}
