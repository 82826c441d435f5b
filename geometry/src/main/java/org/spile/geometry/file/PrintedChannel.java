package org.spile.geometry.file;

import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldSection;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Written;

/**
 * Asks about sections that are printed on bought flat channel: those are outside sizes, and a run's are inside.
 *
 * <p>Sizes from a duct size guide for flat plastic channel.
 */
final class PrintedChannel {
    private static final List<List<Integer>> PRINTED_MM = List.of(
            List.of(110, 54),
            List.of(150, 70),
            List.of(180, 90),
            List.of(204, 60),
            List.of(220, 90),
            List.of(234, 29),
            List.of(308, 29));

    private PrintedChannel() {}

    static void check(Spot path, List<ToldStation> stations, List<ToldLayer> layers, Scribe scribe) {
        int within = Within.wall(layers, scribe);
        double wall = layers.subList(0, within).stream()
                .mapToDouble(layer -> layer.thick().value())
                .sum();
        for (int i = 0; i < stations.size() && i < path.items().size(); i++) {
            Optional<ToldSection> section = stations.get(i).section();
            if (section.isPresent()) {
                ask(path.items().get(i), section.get(), wall, scribe);
            }
        }
    }

    private static void ask(Spot spot, ToldSection section, double wallMm, Scribe scribe) {
        Optional<Reading> other = section.high().or(section::longMm);
        if (section.wide().isEmpty() || other.isEmpty()) {
            return;
        }
        double wide = section.wide().get().value();
        double high = other.get().value();
        boolean printed = PRINTED_MM.stream()
                .anyMatch(pair ->
                        (pair.get(0) == wide && pair.get(1) == high) || (pair.get(0) == high && pair.get(1) == wide));
        if (printed) {
            scribe.doubt(
                    spot,
                    spot.child(SectionKeys.WIDE.name()).map(Spot::place).orElse(spot.place()),
                    number(wide) + " x " + number(high)
                            + " is usually printed on the outside. With layers, sizes are inside.",
                    "Write sizes: outside (clear " + number(wide - 2 * wallMm) + " x " + number(high - 2 * wallMm)
                            + "), or sizes: inside.");
        }
    }

    private static String number(double mm) {
        return Written.number(mm, 2);
    }
}
