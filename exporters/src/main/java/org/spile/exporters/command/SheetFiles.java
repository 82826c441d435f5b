package org.spile.exporters.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.spile.exporters.Formats;
import org.spile.exporters.drawing.SheetSet;

/** Sheets as files, in every format. */
final class SheetFiles {
    private SheetFiles() {}

    /** The files of a set, by name. */
    static Map<String, FileContent> of(SheetSet sheets) {
        var files = new LinkedHashMap<String, FileContent>();
        for (var writer : Formats.all()) {
            if (writer.oneSheetAFile()) {
                for (var single : sheets.single()) {
                    files.put(single.sheets().get(0).name() + "." + writer.ending(), out -> writer.write(single, out));
                }
            } else {
                files.put(sheets.name() + "." + writer.ending(), out -> writer.write(sheets, out));
            }
        }
        return files;
    }

    /** The house file's name without folder and ending, letters that a file's name may not have anywhere left out. */
    static String plainName(String file) {
        var name = Path.of(file).getFileName().toString().replaceFirst("\\.[^.]*$", "");
        var plain = name.replaceAll("[^A-Za-z0-9_-]+", "-").replaceFirst("^[-_]+", "");
        return plain.isEmpty() ? "house" : plain;
    }
}
