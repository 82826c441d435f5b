package org.spile.analysis.whole;

import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;

/**
 * Which findings a study looks at: those of a check, or of a check about one thing.
 *
 * @param check a check's dotted name or its first parts, as {@code fit}
 * @param about the thing, and what it is held against if that matters; empty for all
 */
public record Shown(String check, String about) {
    /** From words, {@code fit.clearance} or {@code fit.maker/units.cooler}: the check, then what follows it in an id. */
    public static Shown of(String words) {
        int split = words.indexOf('/');
        return split < 0 ? new Shown(words, "") : new Shown(words.substring(0, split), words.substring(split + 1));
    }

    /** As it was typed. */
    public String says() {
        return about.isEmpty() ? check : check + "/" + about;
    }

    /** Whether what it finds is weighed against the rest rather than demanded: what a duct is worth. */
    public boolean weighed() {
        return Findings.isOf("duct", check);
    }

    /** Whether a finding is one of them. */
    public boolean takes(Finding finding) {
        if (!Findings.isOf(check, finding.check())) {
            return false;
        }
        String rest = finding.id()
                .substring(Math.min(finding.id().length(), finding.check().length() + 1));
        return about.isEmpty() || rest.equals(about) || rest.startsWith(about + "/") || rest.startsWith(about + ".");
    }
}
