package org.spile.exporters.drawing;

import java.util.List;

/**
 * A line type of ISO 128-2, its pattern stated in multiples of the line's width so that it stays in proportion.
 *
 * <p>Source: ISO 128-2 basic types 01, 02, 04 and 05 as commonly reproduced: dash 12 d, long dash 24 d, gap 3 d, dot
 * 0.5 d.
 */
public enum LineType {
    /** Type 01: visible and cut edges, dimensions, leaders, hatching. */
    CONTINUOUS("continuous"),
    /** Type 02: hidden edges. */
    DASHED("dashed"),
    /** Type 04: axes, symmetry, cutting planes. */
    LONG_DASHED_DOTTED("long-dashed-dotted"),
    /** Type 05: neighbouring parts, room kept free, end positions of what moves. */
    LONG_DASHED_DOUBLE_DOTTED("long-dashed-double-dotted");

    private final String words;

    LineType(String words) {
        this.words = words;
    }

    /** The type's name as files carry it: lower case, hyphened. */
    public String words() {
        return words;
    }

    /**
     * Dash, gap, dash, gap … on paper.
     *
     * @param widthMm the line's width (mm), above 0
     * @return lengths in mm, an even number of them; empty for a continuous line
     */
    public List<Double> patternMm(double widthMm) {
        return patternInWidths().stream().map(part -> part * widthMm).toList();
    }

    private List<Double> patternInWidths() {
        return switch (this) {
            case CONTINUOUS -> List.of();
            case DASHED -> List.of(12.0, 3.0);
            case LONG_DASHED_DOTTED -> List.of(24.0, 3.0, 0.5, 3.0);
            case LONG_DASHED_DOUBLE_DOTTED -> List.of(24.0, 3.0, 0.5, 3.0, 0.5, 3.0);
        };
    }
}
