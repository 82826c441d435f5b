package org.spile.geometry.file;

import java.util.Objects;

/**
 * A place in a file, as editors count: lines and columns from 1, columns in whole characters.
 *
 * @param file the file as its reader was told of it; for words that stand in no file, those words
 * @param line the line; 0 if the place is the file as a whole
 * @param column the column; 0 if the place is the file as a whole
 */
public record Place(String file, int line, int column) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException unless line and column are both 0 or both above it
     */
    public Place {
        Objects.requireNonNull(file, "file");
        if (line < 0 || column < 0 || (line == 0) != (column == 0)) {
            throw new IllegalArgumentException("lines and columns count from 1: " + line + ", " + column);
        }
    }

    /** A file as a whole. */
    public static Place whole(String file) {
        return new Place(file, 0, 0);
    }

    /** {@code house.yaml:5:11}, or {@code house.yaml} for the whole file. */
    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
