package org.spile.analysis.fit;

/**
 * Whether a builder could live with a changed value: nothing gets a negative size, a lining or wrap keeps a third of its
 * thickness and a duct half of its side [common practice, no source].
 */
final class Sane {
    private static final double LINING_KEEPS = 1.0 / 3;
    private static final double DUCT_KEEPS = 0.5;

    private Sane() {}

    static boolean is(Lever lever, double value) {
        double now = lever.reading().value();
        return switch (lever.kind()) {
            case DROP -> value > now;
            case PLACE -> value >= 0;
            case THICKNESS -> value >= now * LINING_KEEPS;
            case SECTION -> value >= now * DUCT_KEEPS;
        };
    }
}
