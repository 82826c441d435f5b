package org.spile.exporters.drawing;

import java.util.List;

/**
 * How large a view is drawn.
 *
 * @param paper millimetres on paper, a whole number …
 * @param model … for so many millimetres of the thing
 */
public record Scale(int paper, int model) {
    /** Full size. */
    public static final Scale FULL = new Scale(1, 1);

    /** Scales of ISO 5455 for this work, from the largest picture to the smallest. */
    public static final List<Scale> STANDARD = List.of(
            new Scale(10, 1),
            new Scale(5, 1),
            new Scale(2, 1),
            FULL,
            oneTo(2),
            oneTo(5),
            oneTo(10),
            oneTo(20),
            oneTo(50),
            oneTo(100),
            oneTo(200),
            oneTo(500),
            oneTo(1000));

    /** Refuses scales of nothing. */
    public Scale {
        if (paper < 1 || model < 1) {
            throw new IllegalArgumentException("scale " + paper + ":" + model + ": both numbers must be 1 or more");
        }
    }

    /** A reduction, 1:n. */
    public static Scale oneTo(int n) {
        return new Scale(1, n);
    }

    /** Millimetres of the model that one millimetre on paper stands for: N of 1:N. */
    public double modelPerPaper() {
        return (double) model / paper;
    }

    /** The next smaller standard scale; itself at the end of the list. */
    public Scale smaller() {
        return STANDARD.stream()
                .filter(scale -> scale.modelPerPaper() > modelPerPaper())
                .findFirst()
                .orElse(this);
    }

    /** As title blocks write it: {@code 1:20}. */
    public String says() {
        return paper + ":" + model;
    }
}
