package org.spile.exporters.table;

import java.util.ArrayList;
import java.util.List;

/** A table of words: a heading and rows, the first column set left, the others right; empty headings are left out. */
final class Columns {
    private final List<List<String>> rows = new ArrayList<>();

    Columns(String... heads) {
        rows.add(List.of(heads));
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** The lines, each with a line feed behind it. */
    String lines(String indent) {
        var text = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            if (i == 0 && rows.get(0).get(0).isEmpty()) {
                continue;
            }
            var line = new StringBuilder(indent);
            for (int column = 0; column < rows.get(i).size(); column++) {
                var cell = rows.get(i).get(column);
                line.append(
                        column == 0
                                ? Paragraph.left(cell, width(column))
                                : "  " + Paragraph.right(cell, width(column)));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream()
                .filter(row -> column < row.size())
                .mapToInt(row -> Paragraph.length(row.get(column)))
                .max()
                .orElse(0);
    }
}
