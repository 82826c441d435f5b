package org.spile.exporters.drawing;

/** The point of a text that stands at its place: across, and up from the baseline to the top of the capitals. */
public enum Anchor {
    /** Left end, on the baseline. */
    LEFT(0, 0),
    /** Middle of the width, on the baseline. */
    CENTRE(0.5, 0),
    /** Right end, on the baseline. */
    RIGHT(1, 0),
    /** Left end, at half the capitals' height. */
    MIDDLE_LEFT(0, 0.5),
    /** Middle of the width, at half the capitals' height. */
    MIDDLE(0.5, 0.5),
    /** Right end, at half the capitals' height. */
    MIDDLE_RIGHT(1, 0.5),
    /** Left end, at the top of the capitals. */
    TOP_LEFT(0, 1),
    /** Middle of the width, at the top of the capitals. */
    TOP_CENTRE(0.5, 1);

    private final double across;
    private final double up;

    Anchor(double across, double up) {
        this.across = across;
        this.up = up;
    }

    /** Share of the text's width that lies left of the place. */
    public double across() {
        return across;
    }

    /** Share of the capitals' height that lies below the place. */
    public double up() {
        return up;
    }
}
