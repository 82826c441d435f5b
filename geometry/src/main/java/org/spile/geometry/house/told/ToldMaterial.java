package org.spile.geometry.house.told;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Reading;

/**
 * What a layer is made of; whatever is unsaid is the shipped value, if there is one.
 *
 * @param conducts W/mK
 * @param vapour vapour resistance factor
 * @param density kg/m3
 * @param rough absolute roughness (mm)
 * @param emits emissivity, 0..1
 * @param tolerance of its thickness; a reading of 0 with plus and minus (mm)
 * @param stiff modulus of elasticity (Pa)
 * @param grows linear growth with heat (1/K)
 * @param swells growth across the grain for one hundredth more of its dry mass in water, as a share
 */
public record ToldMaterial(
        String path,
        String id,
        Optional<Reading> conducts,
        Optional<Reading> vapour,
        Optional<Reading> density,
        Optional<Reading> rough,
        Optional<Reading> emits,
        Optional<Reading> tolerance,
        Optional<Reading> stiff,
        Optional<Reading> grows,
        Optional<Reading> swells) {}
