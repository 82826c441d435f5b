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
 */
public record ToldMaterial(
        String path,
        String id,
        Optional<Reading> conducts,
        Optional<Reading> vapour,
        Optional<Reading> density,
        Optional<Reading> rough,
        Optional<Reading> emits,
        Optional<Reading> tolerance) {}
