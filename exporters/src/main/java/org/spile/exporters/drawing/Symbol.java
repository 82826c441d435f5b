package org.spile.exporters.drawing;

import java.util.List;

/**
 * A picture drawn once and put in place many times.
 *
 * @param name its own name within a drawing, letters, digits, hyphens
 * @param picture strokes round the origin (mm)
 */
public record Symbol(String name, List<Stroke> picture) {
    /** Copies the strokes and refuses names that some format could not carry. */
    public Symbol {
        picture = List.copyOf(picture);
        if (!name.matches("[A-Za-z0-9-]{1,60}")) {
            throw new IllegalArgumentException("symbol name '" + name + "' is not letters, digits and hyphens");
        }
        if (picture.isEmpty()) {
            throw new IllegalArgumentException("symbol " + name + " has no strokes");
        }
    }
}
