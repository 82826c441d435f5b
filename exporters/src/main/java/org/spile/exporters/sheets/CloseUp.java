package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Finding;
import org.spile.exporters.drawing.Extent;

/**
 * A part of a section drawn close up.
 *
 * @param window what is shown (view mm)
 * @param findings whose gaps lie in it
 */
record CloseUp(Extent window, List<Finding> findings) {
    CloseUp {
        findings = List.copyOf(findings);
    }

    /** The groups with one more; whatever its window meets becomes one group with it. */
    static List<CloseUp> joined(List<CloseUp> groups, CloseUp more) {
        List<CloseUp> apart = new ArrayList<>();
        Extent window = more.window();
        List<Finding> findings = new ArrayList<>();
        for (CloseUp group : groups) {
            if (group.window().overlaps(more.window())) {
                window = window.and(group.window());
                findings.addAll(group.findings());
            } else {
                apart.add(group);
            }
        }
        findings.addAll(more.findings());
        var whole = new CloseUp(window, findings);
        if (apart.size() < groups.size()
                && apart.stream().anyMatch(group -> group.window().overlaps(whole.window()))) {
            return joined(apart, whole);
        }
        apart.add(whole);
        return apart;
    }
}
