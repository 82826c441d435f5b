package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * Sheets that belong together, in order, each knowing its number.
 *
 * @param name what they are called together, such as the house file's name
 * @param sheets at least one, each with a name of its own
 */
public record SheetSet(String name, List<Sheet> sheets) {
    /** Copies the sheets and refuses two of one name. */
    public SheetSet {
        name = Lettering.printable(name);
        sheets = List.copyOf(sheets);
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("a set needs a sheet");
        }
        var names = new LinkedHashSet<String>();
        for (var sheet : sheets) {
            if (!names.add(sheet.name())) {
                throw new IllegalArgumentException("two sheets are named " + sheet.name());
            }
        }
    }

    /** A set whose sheets are numbered 1 to the last. */
    public static SheetSet numbered(String name, List<Sheet> sheets) {
        var numbered = new ArrayList<Sheet>();
        for (var i = 0; i < sheets.size(); i++) {
            numbered.add(sheets.get(i).numbered(i + 1, sheets.size()));
        }
        return new SheetSet(name, numbered);
    }

    /** The sets to write in turn by a format that takes one sheet a file. */
    public List<SheetSet> single() {
        return sheets.stream().map(sheet -> new SheetSet(name, List.of(sheet))).toList();
    }
}
