package org.spile.exporters.drawing;

import java.util.List;

/**
 * Cut materials, and the pattern that shows each. Patterns for building materials are national, so a legend on the sheet
 * says what each means; they differ by direction, spacing and dashes, not by colour.
 *
 * <p>House choice: ISO 128 fixes only that lines are narrow, at 45 degrees, 0.7 apart or more.
 */
public enum Material {
    /** Any solid material not named below. */
    GENERAL("general", "cut, general"),
    /** Timber across the grain: a wide and a narrow space in turn. */
    TIMBER("timber", "timber"),
    /** Plywood: close lines, against the direction of timber. */
    PLY("ply", "plywood"),
    /** Gypsum, cement or mineral board: short level dashes, like grains. */
    BOARD("board", "board"),
    /** Soft insulation: wide crossed lines, like a quilt. */
    WOOL("wool", "insulation, wool"),
    /** Rigid foam: crossed dashes. */
    FOAM("foam", "insulation, foam"),
    /** Steel and aluminium sections: close lines in pairs. */
    METAL("metal", "metal section"),
    /** Glass: few short slanting strokes. */
    GLASS("glass", "glass"),
    /** Sheet metal, film and whatever is too thin to hatch: filled. */
    SHEET("sheet", "sheet, or too thin to hatch");

    private final String words;
    private final String title;

    Material(String words, String title) {
        this.words = words;
        this.title = title;
    }

    /** The pattern's name as files carry it. */
    public String words() {
        return words;
    }

    /** What the legend says. */
    public String title() {
        return title;
    }

    /** The pattern's lines; none means filled. */
    public List<HatchFamily> families() {
        return switch (this) {
            case GENERAL -> List.of(HatchFamily.lines(45, 3));
            case TIMBER ->
                List.of(HatchFamily.lines(45, 3.5), HatchFamily.lines(45, 3.5).from(1));
            case PLY -> List.of(HatchFamily.lines(135, 1.5));
            case BOARD -> List.of(HatchFamily.dashed(0, 1, 1.3, 0.6, 2));
            case WOOL -> List.of(HatchFamily.lines(60, 3), HatchFamily.lines(120, 3));
            case FOAM -> List.of(HatchFamily.dashed(45, 1.8, 0, 1.2, 0.9), HatchFamily.dashed(135, 1.8, 0, 1.2, 0.9));
            case METAL ->
                List.of(HatchFamily.lines(45, 1.6), HatchFamily.lines(45, 1.6).from(0.8));
            case GLASS -> List.of(HatchFamily.dashed(45, 2.5, 4, 3, 5));
            case SHEET -> List.of();
        };
    }
}
