package org.spile.exporters.table;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.geometry.kernel.measure.Written;

/** A stack-up as a sum one can follow by hand: sign, size, tolerance, origin, and the reading's path last. */
final class StackTable {
    private static final int DECIMALS = 2;
    private static final int SIGN = 0;
    private static final int TIMES = 1;
    private static final int SIZE = 2;
    private static final int UNIT = 3;

    private final List<String[]> rows = new ArrayList<>();

    private StackTable() {}

    static StackTable of(List<Layer> layers, Quantity sum) {
        var table = new StackTable();
        for (var layer : layers) {
            if (isNothing(layer)) {
                continue;
            }
            table.rows.add(new String[] {
                layer.factor() < 0 ? "-" : "+",
                times(layer.factor()),
                alignable(layer.size()),
                layer.size().unit(),
                tolerance(layer),
                layer.origin(),
                layer.label()
            });
        }
        if (table.rows.isEmpty()) {
            return table;
        }
        table.rows.add(new String[] {"=", "", alignable(sum), sum.unit(), "", "", ""});
        return table;
    }

    /** The lines, each with a line feed behind it. */
    String lines(String indent) {
        var text = new StringBuilder();
        for (var row : rows) {
            var line = new StringBuilder(row[SIGN]);
            column(line, Paragraph.left(row[TIMES], width(TIMES)), " ");
            column(line, Paragraph.right(row[SIZE], width(SIZE)), " ");
            column(line, Paragraph.left(row[UNIT], width(UNIT)), " ");
            for (int rest = UNIT + 1; rest < row.length; rest++) {
                column(line, Paragraph.left(row[rest], width(rest)), "  ");
            }
            text.append(indent).append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private static void column(StringBuilder line, String cell, String gap) {
        if (!cell.isEmpty()) {
            line.append(gap).append(cell);
        }
    }

    private int width(int column) {
        return rows.stream()
                .mapToInt(row -> Paragraph.length(row[column]))
                .max()
                .orElse(0);
    }

    private static String times(double factor) {
        var size = Written.number(Math.abs(factor), 3);
        return size.equals("1") ? "" : size + " x";
    }

    /** A reading that adds nothing, not even doubt, tells nobody anything; the JSON has it all the same. */
    private static boolean isNothing(Layer layer) {
        return layer.size().number() == 0 && layer.plus() == 0 && layer.minus() == 0;
    }

    // Blanks stand in for the decimals that aren't there, so that points stand under points.
    private static String alignable(Quantity quantity) {
        var number = Written.number(quantity.number(), DECIMALS);
        int point = number.indexOf('.');
        int decimals = point < 0 ? -1 : number.length() - point - 1;
        return number + " ".repeat(DECIMALS - decimals);
    }

    private static String tolerance(Layer layer) {
        if (layer.plus() == 0 && layer.minus() == 0) {
            return "";
        }
        var plus = Written.number(layer.plus(), DECIMALS);
        var minus = Written.number(layer.minus(), DECIMALS);
        return plus.equals(minus) ? "± " + plus : "+" + plus + "/-" + minus;
    }
}
