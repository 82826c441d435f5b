package org.spile.analysis.place;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.spile.analysis.fit.Limit;

/**
 * Why there is no place for a unit: what each limit by itself would leave, and what each change by itself would open.
 *
 * @param tooLargeMm by how much the unit is larger in the plan than what it is in, at the yaw where that is least; 0 if it
 *     isn't at every yaw
 * @param limits every demand that takes places away, in the order it is asked
 * @param things everything that stands in the way, in the order of the file
 * @param pairs where no single limit opens a place: the pairs of limits that do if neither is asked
 * @param levers what lowering a ceiling or thinning an insulation would open
 */
public record NoPlace(
        double tooLargeMm, List<Asked> limits, List<Way> things, List<List<Limit>> pairs, List<Lever> levers) {
    /** Copies the lists. */
    public NoPlace {
        limits = List.copyOf(limits);
        things = List.copyOf(things);
        pairs = pairs.stream().map(List::copyOf).toList();
        levers = List.copyOf(levers);
    }

    /**
     * A demand.
     *
     * @param limit who asks, and how much
     * @param aloneMm2 the area that would be left if nothing else were asked
     * @param yieldMm by how much it would have to ask less for a place to open, rounded up to 0.1 mm; none if even asking
     *     for nothing opens none
     */
    public record Asked(Limit limit, double aloneMm2, OptionalDouble yieldMm) {}

    /**
     * Something in the way.
     *
     * @param id its id
     * @param title what people call it
     * @param yieldMm by how much it would have to give way for a place to open, rounded up to 0.1 mm; none if taking it out
     *     opens none
     */
    public record Way(String id, String title, OptionalDouble yieldMm) {}

    /**
     * A number of the file that could be changed.
     *
     * @param path of the reading
     * @param nowMm what it is
     * @param emptyToMm between the present value and this one there is surely no place
     * @param toMm the first value, in tenths of a millimetre, at which there is one; none if none was found in reach
     * @param areaMm2 of the places there, over all yaws
     * @param set the change as an edit of the house file, if it was found
     * @param but what the change does elsewhere: that the house doesn't add up, or what fails because of it
     */
    public record Lever(
            String path,
            double nowMm,
            double emptyToMm,
            OptionalDouble toMm,
            double areaMm2,
            Optional<String> set,
            List<String> but) {
        /** Copies the list. */
        public Lever {
            but = List.copyOf(but);
        }
    }

    /** The limit that has to yield least, of those that open a place alone; of equals the first. */
    public Optional<Asked> governing() {
        Asked least = null;
        for (Asked asked : limits) {
            if (asked.yieldMm().isPresent()
                    && (least == null
                            || asked.yieldMm().getAsDouble() < least.yieldMm().getAsDouble())) {
                least = asked;
            }
        }
        return Optional.ofNullable(least);
    }

    /** Whether each demand by itself leaves room, so that only all of them together leave none. */
    public boolean onlyTogether() {
        return !limits.isEmpty() && limits.stream().allMatch(asked -> asked.aloneMm2() > 0);
    }
}
