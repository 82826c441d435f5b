package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.spile.analysis.finding.Finding;
import org.spile.exporters.drawing.Extent;
import org.spile.geometry.kernel.planar.Outline;

/**
 * A part of a section drawn close up.
 *
 * @param window what is shown (view mm)
 * @param findings whose gaps lie in it
 * @param bodies the things in it whose stack is dimensioned
 */
record CloseUp(Extent window, List<Finding> findings, List<Body> bodies) {
    CloseUp {
        findings = List.copyOf(findings);
        bodies = List.copyOf(bodies);
    }

    /**
     * A thing where it is cut.
     *
     * @param outline of the cut
     * @param thing its path
     */
    record Body(Outline outline, String thing) {}

    /** The groups with one more; whatever its window meets becomes one group with it. */
    static List<CloseUp> joined(List<CloseUp> groups, CloseUp more) {
        List<CloseUp> apart = new ArrayList<>();
        Extent window = more.window();
        List<Finding> findings = new ArrayList<>();
        Set<Body> bodies = new LinkedHashSet<>();
        for (CloseUp group : groups) {
            if (group.window().overlaps(more.window())) {
                window = window.and(group.window());
                findings.addAll(group.findings());
                bodies.addAll(group.bodies());
            } else {
                apart.add(group);
            }
        }
        findings.addAll(more.findings());
        bodies.addAll(more.bodies());
        var whole = new CloseUp(window, findings, List.copyOf(bodies));
        if (apart.size() < groups.size()
                && apart.stream().anyMatch(group -> group.window().overlaps(whole.window()))) {
            return joined(apart, whole);
        }
        apart.add(whole);
        return apart;
    }
}
