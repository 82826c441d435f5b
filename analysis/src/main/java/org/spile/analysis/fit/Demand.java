package org.spile.analysis.fit;

import java.util.Optional;
import org.spile.analysis.finding.Source;
import org.spile.geometry.house.House;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

/**
 * How much room is asked for.
 *
 * @param mm as said
 * @param plusMm how much more it may be, if the demand itself has a tolerance
 * @param source who asks
 * @param restsOn path of the demand where it is a guess or a default, else empty
 */
record Demand(double mm, double plusMm, String source, Optional<String> restsOn) {
    /** Room round everything where nobody says otherwise. */
    private static final double GENERAL_MM = 5;

    /** Two things may touch. */
    static final Demand TOUCH = new Demand(0, 0, Source.reason("two things can't share room"), Optional.empty());

    /** What the house file asks for. */
    static Demand typed(Reading reading) {
        String source = reading.origin() == Origin.MAKER ? Source.maker(reading.path()) : Source.file(reading.path());
        Optional<String> guess = reading.origin() == Origin.ASSUMED ? Optional.of(reading.path()) : Optional.empty();
        return new Demand(reading.value(), reading.plus(), source, guess);
    }

    /** What the maker of a unit asks for, whether or not the house file says that it is the maker's. */
    static Demand maker(Reading reading) {
        Demand typed = typed(reading);
        return new Demand(typed.mm, typed.plusMm, Source.maker(reading.path()), typed.restsOn);
    }

    /** The user's clearance round everything, or the usual one. */
    static Demand general(House house) {
        return house.told()
                .limits()
                .clearance()
                .filter(reading -> reading.origin() != Origin.DEFAULT)
                .map(reading -> typed(house.now(reading)))
                .orElseGet(() -> new Demand(
                        GENERAL_MM,
                        0,
                        Source.COMMON_PRACTICE + ": 5 mm round everything (limits.clearance)",
                        Optional.of("limits.clearance")));
    }

    /** What must be there when everything is against us. */
    double worstMm() {
        return mm + plusMm;
    }
}
