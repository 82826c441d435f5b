package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Layer;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A reading of a stack that its owner can choose freely, so that changing it is a remedy.
 *
 * <p>What was measured on the shell, and structure, is no lever.
 *
 * @param reading as it is now
 * @param factor millimetres of gap for one of it
 * @param kind what it chooses
 */
record Lever(Reading reading, double factor, Chooses kind) {

    /** What a lever chooses, in the order in which remedies are offered. */
    enum Chooses {
        /** How far a ceiling is lowered. */
        DROP,
        /** Where a unit, a terminal or a leg of a duct sits. */
        PLACE,
        /** How thick a lining or a wrap is. */
        THICKNESS,
        /** A side of a duct's section. */
        SECTION
    }

    private static final Pattern PLACE =
            Pattern.compile("(units|terminals)\\.[^.]+\\.at\\.[a-z]+|runs\\.[^.]+\\.path\\[\\d+]\\.at\\.[a-z]+");
    private static final Pattern THICKNESS =
            Pattern.compile("cavities\\..*\\.linings\\[\\d+]\\.[^.]+|(runs|lines|units)\\..*\\.layers\\[\\d+]\\.[^.]+");
    private static final Pattern SECTION = Pattern.compile(
            "runs\\..*\\.path\\[\\d+]\\.(wide|high|long|round)|units\\..*\\.spigots\\..*\\.(wide|high|long|round)");

    /**
     * The levers among the readings of a stack, best first.
     *
     * @param dropPaths of the ceilings that can be lowered
     * @param bought paths of units that come as they are: their spigots can't be changed
     */
    static List<Lever> of(Stack stack, List<String> dropPaths, List<String> bought) {
        List<Lever> levers = new ArrayList<>();
        for (Chooses kind : Chooses.values()) {
            for (Layer layer : stack.layers()) {
                boolean chosen =
                        bought.stream().noneMatch(unit -> layer.reading().path().startsWith(unit + ".spigots."));
                if (chosen && kind(layer.reading(), dropPaths).equals(Optional.of(kind))) {
                    levers.add(new Lever(layer.reading(), layer.factor(), kind));
                }
            }
        }
        return levers;
    }

    /** The least change that adds so much to the gap (mm). */
    double changeFor(double neededMm) {
        return neededMm / factor;
    }

    private static Optional<Chooses> kind(Reading reading, List<String> dropPaths) {
        String path = reading.path();
        if (reading.kind() != Kind.LENGTH) {
            return Optional.empty();
        }
        if (dropPaths.contains(path)) {
            return Optional.of(Chooses.DROP);
        }
        if (PLACE.matcher(path).matches()) {
            return Optional.of(Chooses.PLACE);
        }
        if (THICKNESS.matcher(path).matches()) {
            return Optional.of(Chooses.THICKNESS);
        }
        return SECTION.matcher(path).matches() ? Optional.of(Chooses.SECTION) : Optional.empty();
    }
}
