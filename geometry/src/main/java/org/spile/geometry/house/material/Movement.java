package org.spile.geometry.house.material;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * How a material gives under load and grows with heat and damp.
 *
 * @param stiff modulus of elasticity (Pa)
 * @param grows linear growth with heat (1/K)
 * @param swells growth across the grain for one hundredth more of its dry mass in water, as a share; absent where there
 *     is no grain, or it isn't known
 */
public record Movement(Optional<Reading> stiff, Optional<Reading> grows, Optional<Reading> swells) {
    /** Nothing is known of it. */
    public static final Movement UNKNOWN = new Movement(Optional.empty(), Optional.empty(), Optional.empty());

    /** These, with what a house says of its own. */
    Movement with(Optional<Reading> ownStiff, Optional<Reading> ownGrows, Optional<Reading> ownSwells) {
        return new Movement(ownStiff.or(() -> stiff), ownGrows.or(() -> grows), ownSwells.or(() -> swells));
    }
}
