package org.spile.exporters.table;

import java.util.Comparator;
import java.util.List;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.geometry.kernel.measure.Written;

/** Which tolerances eat a margin, the greediest first. */
final class EatenText {
    private static final int NAMED = 4;
    private static final int DECIMALS = 2;

    private EatenText() {}

    /** As "eaten by 3 mm of x, 2 mm of y and 1.5 mm of 2 more"; empty if nothing eats it. */
    static String of(List<Layer> stack, Quantity value) {
        var greedy = stack.stream()
                .filter(layer -> layer.takes() > 0)
                .sorted(Comparator.comparingDouble(layer -> -layer.takes()))
                .toList();
        var text = new StringBuilder();
        for (int i = 0; i < greedy.size() && i < NAMED; i++) {
            text.append(i == 0 ? "eaten by " : ", ")
                    .append(size(greedy.get(i).takes(), value))
                    .append(" of ")
                    .append(greedy.get(i).label());
        }
        if (greedy.size() > NAMED) {
            double rest = greedy.stream().skip(NAMED).mapToDouble(Layer::takes).sum();
            text.append(", ")
                    .append(size(rest, value))
                    .append(" of ")
                    .append(greedy.size() - NAMED)
                    .append(" more");
        }
        return text.toString();
    }

    private static String size(double takes, Quantity value) {
        return Written.number(takes, DECIMALS) + " " + value.unit();
    }
}
