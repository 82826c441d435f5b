package org.spile.geometry.file;

/**
 * The house file: reads it and checks it.
 *
 * <p>Whatever is wrong comes back as {@link Problem}s, all at once; nothing in a file can make it throw.
 */
public final class HouseFile {
    private HouseFile() {}

    /**
     * Reads the words of a house file that stands in no folder: for examples. Outlines from drawings can't be had there.
     *
     * @param name what to call it in problems
     * @param text its words
     */
    public static ReadResult readText(String name, String text) {
        return new Binding(name, Drawings.none()).read(text);
    }

    /** As {@link #readText}, worked out. */
    public static HouseResult houseText(String name, String text) {
        return WorkedOut.of(readText(name, text));
    }
}
