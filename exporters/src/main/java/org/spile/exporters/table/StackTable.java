package org.spile.exporters.table;

import java.util.ArrayList;
import java.util.List;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.geometry.kernel.measure.Written;

/** A stack-up as a sum one can follow by hand: sign, size, tolerance, origin, and the reading's path last. */
final class StackTable {
    private static final int DECIMALS = 2;

    private final List<String[]> rows = new ArrayList<>();

    private StackTable() {}

    static StackTable of(List<Layer> layers, Quantity sum) {
        var table = new StackTable();
        for (var layer : layers) {
            table.rows.add(new String[] {
                sign(layer.factor()),
                alignable(layer.size()),
                layer.size().unit(),
                tolerance(layer),
                layer.origin(),
                layer.label()
            });
        }
        table.rows.add(new String[] {"=", alignable(sum), sum.unit(), "", "", ""});
        return table;
    }

    /** The lines, each with a line feed behind it. */
    String lines(String indent) {
        var text = new StringBuilder();
        for (var row : rows) {
            var line = Paragraph.right(row[0], width(0)) + " " + Paragraph.right(row[1], width(1));
            for (int column = 2; column < row.length; column++) {
                if (width(column) > 0) {
                    line += (column == 2 ? " " : "  ") + Paragraph.left(row[column], width(column));
                }
            }
            text.append(indent).append(line.stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream()
                .mapToInt(row -> Paragraph.length(row[column]))
                .max()
                .orElse(0);
    }

    private static String sign(double factor) {
        var sign = factor < 0 ? "-" : "+";
        var size = Written.number(Math.abs(factor), 3);
        return size.equals("1") ? sign : sign + " " + size + " x";
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
