package org.spile.geometry.house.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Written;

/** Sizes in words, by the trailer's directions. */
final class SizeWords {
    private static final int DECIMALS = 1;

    private SizeWords() {}

    static List<String> of(ToldSizes sizes, Facing facing) {
        var parts = new ArrayList<String>();
        add(parts, sizes.roundMm(), "round");
        add(parts, sizes.longMm(), facing.across() ? "across" : "fore and aft");
        add(parts, sizes.wideMm(), facing.across() ? "fore and aft" : "across");
        sizes.outline()
                .ifPresent(outline ->
                        parts.add("an outline of " + outline.corners().size() + " corners"));
        add(parts, sizes.highMm(), "high");
        return parts;
    }

    static String of(ToldSection section) {
        if (section.round().isPresent()) {
            return number(section.round().get()) + " round";
        }
        var parts = new ArrayList<String>();
        add(parts, section.wide(), "wide");
        add(parts, section.high(), "high");
        add(parts, section.longMm(), "long");
        return String.join(", ", parts) + (section.oval() ? ", oval" : "");
    }

    static String number(Reading reading) {
        return Written.number(reading.value(), DECIMALS);
    }

    private static void add(List<String> parts, Optional<Reading> size, String word) {
        size.ifPresent(reading -> parts.add(number(reading) + " " + word));
    }
}
