package org.spile.geometry.file;

import java.util.List;

/** Whether two trees differ at one path only: the last word on every edit. */
final class Difference {
    private Difference() {}

    static boolean onlyAt(List<DocumentPath.Step> steps, Node old, Node fresh) {
        if (steps.isEmpty()) {
            return true;
        }
        DocumentPath.Step step = steps.get(0);
        List<DocumentPath.Step> rest = steps.subList(1, steps.size());
        if (old instanceof TextNode text) {
            return belowText(text, step, fresh);
        }
        if (old instanceof MapNode before && fresh instanceof MapNode after && step.isKey()) {
            boolean others = before.entries().stream()
                    .filter(entry -> !entry.name().equals(step.key()))
                    .allMatch(entry -> after.value(entry.name())
                            .filter(entry.value()::sameAs)
                            .isPresent());
            int added = before.value(step.key()).isPresent() ? 0 : 1;
            return others
                    && after.entries().size() == before.entries().size() + added
                    && after.value(step.key())
                            .filter(value -> before.value(step.key())
                                    .map(was -> onlyAt(rest, was, value))
                                    .orElse(true))
                            .isPresent();
        }
        return old instanceof ListNode before
                && fresh instanceof ListNode after
                && !step.isKey()
                && items(before.items(), after.items(), step.item(), rest);
    }

    private static boolean belowText(TextNode old, DocumentPath.Step step, Node fresh) {
        if (fresh instanceof MapNode map) {
            int kept = old.missing() ? 0 : 1;
            return map.entries().size() == kept + 1
                    && map.value(step.key()).isPresent()
                    && (old.missing() || map.value("at").filter(old::sameAs).isPresent());
        }
        return !step.isKey() && (fresh instanceof TextNode || old.missing());
    }

    private static boolean items(List<Node> before, List<Node> after, int item, List<DocumentPath.Step> rest) {
        boolean added = item == before.size() + 1;
        if (after.size() != before.size() + (added ? 1 : 0)) {
            return false;
        }
        for (int i = 0; i < before.size(); i++) {
            boolean here = i == item - 1;
            if (here
                    ? !onlyAt(rest, before.get(i), after.get(i))
                    : !before.get(i).sameAs(after.get(i))) {
                return false;
            }
        }
        return true;
    }
}
