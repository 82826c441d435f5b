package org.spile.analysis.whole;

import java.util.regex.Pattern;
import org.spile.analysis.finding.Layer;
import org.spile.geometry.kernel.measure.Kind;

/**
 * How far a length may be off that says no tolerance: only to choose what to measure; no finding counts with it.
 *
 * <p>Common practice, no source: a tape in a bare shell ±5 mm, the size of one thing ±2 mm, a board or sheet, a maker's size
 * and a careful reading of a tape ±1 mm, a guess ±10 mm. A length of nothing is a contact, and
 * room that is asked for is a demand: there is nothing to measure.
 */
final class PresumedTolerance {
    private static final double GUESS_MM = 10;
    private static final double SHELL_MM = 5;
    private static final double THING_MM = 2;
    private static final double FINE_MM = 1;
    private static final Pattern LAYER = Pattern.compile(".*\\.(linings|layers)\\[\\d+]\\..*");
    private static final Pattern SIZE =
            Pattern.compile("(units|fixtures|movers|terminals|lines|runs)\\..*\\.(long|wide|high|round)(\\[\\d+])?");

    private PresumedTolerance() {}

    /** Either way, in mm; 0 where none is presumed. */
    static double mm(Layer layer) {
        boolean said = layer.plus() > 0 || layer.minus() > 0;
        boolean length = layer.size().unit().equals(Kind.LENGTH.baseSymbol());
        if (said
                || !length
                || layer.size().number() == 0
                || layer.label().isEmpty()
                || layer.label().contains(".service.")) {
            return 0;
        }
        return switch (Trust.of(layer)) {
            case ASSUMED -> GUESS_MM;
            case MAKER, MEASURED -> FINE_MM;
            case UNTOLERANCED, TOLERANCED -> unsaid(layer.label());
        };
    }

    private static double unsaid(String path) {
        if (LAYER.matcher(path).matches()) {
            return FINE_MM;
        }
        return SIZE.matcher(path).matches() ? THING_MM : SHELL_MM;
    }
}
