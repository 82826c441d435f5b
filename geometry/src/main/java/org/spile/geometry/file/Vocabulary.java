package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.NearestName;

/**
 * Which paths an edit may name: those that lead to something in the file, and those that its things could have.
 *
 * @param root the file as it stands
 */
record Vocabulary(Spot root) {
    /**
     * Why a path can't be edited.
     *
     * @param says what is wrong
     * @param advice the nearest path
     */
    record Fault(String says, String advice) {}

    /** What is wrong with a path; nothing if an edit may name it. */
    Optional<Fault> fault(String path) {
        List<String> steps = Steps.of(path);
        Form<?> form = HouseShape.SHAPE;
        Optional<Spot> at = Optional.of(root);
        String before = "";
        for (int i = 0; i < steps.size(); i++) {
            String step = steps.get(i);
            Optional<Spot> next = at.flatMap(spot -> Steps.step(spot, step));
            Optional<Form<?>> below = form.under(step);
            boolean inventedThing = form instanceof NamedForm<?> && next.isEmpty() && i + 1 < steps.size();
            boolean gap = step.startsWith("[")
                    && next.isEmpty()
                    && at.filter(spot -> past(spot, step)).isPresent();
            if (below.isEmpty() || inventedThing || gap) {
                return Optional.of(fault(path, before, step, names(form, at), steps.subList(i + 1, steps.size())));
            }
            form = below.get();
            at = next;
            before = join(before, step);
        }
        return Optional.empty();
    }

    /** Whether an item is more than the next one of a list. */
    private static boolean past(Spot list, String step) {
        return list.isList() && !step.equals("[" + (list.items().size() + 1) + "]");
    }

    private static List<String> names(Form<?> form, Optional<Spot> at) {
        var names = new ArrayList<>(form.keys());
        at.ifPresent(spot -> spot.entries().forEach(entry -> names.add(entry.key())));
        at.ifPresent(spot -> spot.items()
                .forEach(item -> names.add(item.path().substring(item.path().lastIndexOf('[')))));
        return names;
    }

    private static Fault fault(String path, String before, String step, List<String> names, List<String> after) {
        String says = "there is no \"" + path + "\" to edit: " + (before.isEmpty() ? "the file" : before) + " has no \""
                + step + "\".";
        Optional<String> nearest = NearestName.of(step, names);
        if (nearest.isPresent()) {
            String whole = join(before, nearest.get());
            for (String further : after) {
                whole = join(whole, further);
            }
            return new Fault(says, "Nearest: \"" + whole + "\".");
        }
        return new Fault(says, names.isEmpty() ? "It is one value." : "It has " + String.join(", ", names) + ".");
    }

    private static String join(String before, String step) {
        return before.isEmpty() || step.startsWith("[") ? before + step : before + "." + step;
    }
}
