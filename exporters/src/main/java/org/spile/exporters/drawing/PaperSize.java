package org.spile.exporters.drawing;

/**
 * Trimmed sheet sizes, the A-series as ISO 5457 uses it: A4 upright, larger ones lying.
 *
 * <p>Source: ISO 5457 as commonly reproduced: margin 20 at the left, 10 elsewhere; grid fields of 50 counted from the
 * centring marks.
 */
public enum PaperSize {
    /** 210 × 297, upright. */
    A4(210, 297, 4, 6),
    /** 420 × 297. */
    A3(420, 297, 8, 6),
    /** 594 × 420. */
    A2(594, 420, 12, 8),
    /** 841 × 594. */
    A1(841, 594, 16, 12),
    /** 1189 × 841. */
    A0(1189, 841, 24, 16);

    /** Margin for filing, at the left (mm). */
    public static final double FILING_MM = 20;
    /** Margin on the other sides (mm). */
    public static final double MARGIN_MM = 10;

    private final int wideMm;
    private final int highMm;
    private final int columns;
    private final int rows;

    PaperSize(int wideMm, int highMm, int columns, int rows) {
        this.wideMm = wideMm;
        this.highMm = highMm;
        this.columns = columns;
        this.rows = rows;
    }

    /** Width (mm). */
    public int wideMm() {
        return wideMm;
    }

    /** Height (mm). */
    public int highMm() {
        return highMm;
    }

    /** Fields of the grid along the width, numbered from the left. */
    public int columns() {
        return columns;
    }

    /** Fields of the grid along the height, lettered from the top. */
    public int rows() {
        return rows;
    }

    /** The drawing space, bounded by the frame; origin at the sheet's lower left corner (mm). */
    public Extent space() {
        return new Extent(FILING_MM, MARGIN_MM, wideMm - MARGIN_MM, highMm - MARGIN_MM);
    }

    /** The whole trimmed sheet (mm). */
    public Extent sheet() {
        return new Extent(0, 0, wideMm, highMm);
    }
}
