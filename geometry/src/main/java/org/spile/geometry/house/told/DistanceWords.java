package org.spile.geometry.house.told;

import java.util.Set;

/** Where something is, in words. */
final class DistanceWords {
    private static final Set<String> AXES = Set.of("x", "y", "z");

    private DistanceWords() {}

    /** {@code 520 from the rear}, {@code 90 to 1890 from the left}, {@code 180 out of the front}, {@code y -300}. */
    static String of(FaceDistance distance) {
        String near = SizeWords.number(distance.near());
        String span =
                distance.far().map(far -> near + " to " + SizeWords.number(far)).orElse(near);
        if (AXES.contains(distance.face())) {
            return distance.face() + " " + span;
        }
        return span + (distance.out() ? " out of the " : " from the ") + distance.face();
    }
}
