package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.told.ToldSizes;

/** Sizes that can't stand together. */
final class SizeRules {
    private SizeRules() {}

    static void check(Values values, ToldSizes sizes) {
        List<String> given = given(sizes);
        if (sizes.outline().isPresent()
                && (given.contains("long") || given.contains("wide") || given.contains("round"))) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            " has an outline and \"" + first(given) + "\" too.",
                            "The outline is its plan: leave the other out.");
        } else if (sizes.roundMm().isPresent() && given.size() > 2) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            " is round and has " + Phrases.and(given.subList(0, given.size() - 1)) + " too.",
                            "A round thing has one other size, along its axis.");
        }
    }

    private static String first(List<String> given) {
        return given.stream().filter(size -> !size.equals("high")).findFirst().orElse("");
    }

    private static List<String> given(ToldSizes sizes) {
        var given = new ArrayList<String>();
        sizes.longMm().ifPresent(size -> given.add("long"));
        sizes.wideMm().ifPresent(size -> given.add("wide"));
        sizes.highMm().ifPresent(size -> given.add("high"));
        sizes.roundMm().ifPresent(size -> given.add("round"));
        return given;
    }
}
