package org.spile.geometry.file;

import java.nio.file.Path;
import java.util.List;
import org.spile.geometry.kernel.measure.QuantityText;

/**
 * The house file: reads it, checks it, applies options and edits, and works the house out.
 *
 * <p>Whatever is wrong comes back as {@link Problem}s, all at once; nothing in a file can make it throw.
 */
public final class HouseFile {
    private HouseFile() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param options names of the file's own options, applied in this order
     * @param edits each {@code PATH=VALUE}, applied after them in this order; nothing is written to the file
     */
    public static ReadResult read(Path file, List<String> options, List<String> edits) {
        String name = file.toString();
        SourceText source = SourceText.read(file, name);
        if (source instanceof SourceText.Unusable unusable) {
            return new ReadResult.Wrong(List.of(unusable.problem()));
        }
        return read(
                new Binding(name, FolderDrawings.beside(file)), ((SourceText.Legible) source).text(), options, edits);
    }

    /**
     * Reads the words of a house file that stands in no folder: for examples. Outlines from drawings can't be had there.
     *
     * @param name what to call it in problems
     * @param text its words
     * @param options as for {@link #read}
     * @param edits as for {@link #read}
     */
    public static ReadResult readText(String name, String text, List<String> options, List<String> edits) {
        return read(new Binding(name, Drawings.none()), text, options, edits);
    }

    /** As {@link #readText(String, String, List, List)}, as it stands. */
    public static ReadResult readText(String name, String text) {
        return readText(name, text, List.of(), List.of());
    }

    /** As {@link #read}, worked out. */
    public static HouseResult house(Path file, List<String> options, List<String> edits) {
        return WorkedOut.of(read(file, options, edits));
    }

    /** How numbers are read as this file's own are: its bare lengths may be inches. A file that can't be read has millimetres. */
    public static QuantityText quantities(Path file) {
        boolean inches = SourceText.read(file, file.toString()) instanceof SourceText.Legible legible
                && Tree.of(file.toString(), legible.text())
                        .root()
                        .value("lengths")
                        .filter(unit ->
                                unit instanceof TextNode text && text.text().equals("in"))
                        .isPresent();
        return inches ? QuantityText.inInches() : QuantityText.inMillimetres();
    }

    /** As {@link #readText(String, String, List, List)}, worked out. */
    public static HouseResult houseText(String name, String text, List<String> options, List<String> edits) {
        return WorkedOut.of(readText(name, text, options, edits));
    }

    private static ReadResult read(Binding binding, String text, List<String> options, List<String> edits) {
        return new Variant(binding, text)
                .read(options, edits.stream().map(Edit::of).toList());
    }
}
