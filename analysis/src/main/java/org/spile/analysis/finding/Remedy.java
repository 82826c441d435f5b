package org.spile.analysis.finding;

import java.util.List;

/**
 * A computed change that makes a finding pass.
 *
 * @param says one sentence with the numbers
 * @param set edits PATH=VALUE, as they go after {@code --set}; empty if it can't be said as an edit
 */
public record Remedy(String says, List<String> set) {
    /** Copies the list. */
    public Remedy {
        set = List.copyOf(set);
    }
}
