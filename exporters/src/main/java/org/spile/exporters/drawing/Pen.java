package org.spile.exporters.drawing;

import java.util.List;
import java.util.Objects;

/**
 * How a mark is drawn and whose it is: layer, line type, width, and the house id of the thing it shows.
 *
 * @param layer what kind of thing the mark shows
 * @param type line type
 * @param widthMm line width on paper (mm), one of the widths of ISO 128-2
 * @param part path of the thing in the house file, such as {@code units.cooler}; empty if it shows none
 */
public record Pen(Layer layer, LineType type, double widthMm, String part) {
    /** Narrow lines (mm): dimensions, leaders, hidden edges, hatching. */
    public static final double NARROW_MM = 0.25;
    /** Wide lines (mm): visible edges. */
    public static final double WIDE_MM = 0.5;
    /** Cut outlines and the frame (mm). */
    public static final double CUT_MM = 0.7;

    /** The line widths that ISO 128-2 knows (mm). */
    public static final List<Double> WIDTHS_MM = List.of(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0);

    /** Refuses widths outside ISO 128-2. */
    public Pen {
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(part, "part");
        if (!WIDTHS_MM.contains(widthMm)) {
            throw new IllegalArgumentException("line width " + widthMm + " is none of ISO 128-2's " + WIDTHS_MM);
        }
    }

    /**
     * The same pen for a thing's marks.
     *
     * @param path the thing's path in the house file
     */
    public Pen of(String path) {
        return new Pen(layer, type, widthMm, path);
    }

    /** The same pen at another width (mm, ISO 128-2). */
    public Pen wide(double mm) {
        return new Pen(layer, type, mm, part);
    }

    /** The same pen with another line type. */
    public Pen as(LineType other) {
        return new Pen(layer, other, widthMm, part);
    }

    /** For edges hidden behind something: narrow, dashed. */
    public Pen hidden() {
        return wide(NARROW_MM).as(LineType.DASHED);
    }

    /** For outlines that the cut goes through: extra wide. */
    public Pen cut() {
        return wide(CUT_MM).as(LineType.CONTINUOUS);
    }

    /** For edges seen below or beyond the cut: narrow. */
    public Pen beyond() {
        return wide(NARROW_MM).as(LineType.CONTINUOUS);
    }

    /** For another position of a thing that moves: narrow, double-dotted. */
    public Pen moved() {
        return wide(NARROW_MM).as(LineType.LONG_DASHED_DOUBLE_DOTTED);
    }

    /** Whether text must keep off this line: wide lines in any case, and every line of a findings mark. */
    public boolean heavy() {
        return widthMm >= WIDE_MM;
    }
}
