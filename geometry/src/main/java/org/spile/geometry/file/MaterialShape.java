package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldMaterial;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** What a layer is made of. */
final class MaterialShape {
    private static final Key<Reading> CONDUCTS = Key.of(
                    "conducts", Quantity.positive(Kind.CONDUCTIVITY), "M", "its thermal conductivity")
            .unsaid("as shipped");
    private static final Key<Reading> VAPOUR = Key.of(
                    "vapour", Quantity.positive(Kind.NUMBER), "M", "its vapour resistance factor")
            .unsaid("as shipped");
    private static final Key<Reading> DENSITY = Key.of("density", Quantity.positive(Kind.DENSITY), "M T", "its density")
            .unsaid("as shipped");
    private static final Key<Reading> ROUGH = Key.of(
                    "rough", Quantity.size(), "A", "the absolute roughness of its face")
            .unsaid("as shipped");
    private static final Key<Reading> EMITS = Key.of(
                    "emits", Quantity.of(Kind.RATIO), "M", "the emissivity of its face")
            .unsaid("not known");
    private static final Key<Reading> TOLERANCE = Key.of(
                    "tolerance", new ToleranceForm(), "F", "of its thickness, where a layer doesn't say its own")
            .unsaid("as shipped");

    private static final Key<Reading> STIFF = Key.of(
                    "stiff", Quantity.positive(Kind.STIFFNESS), "F", "its modulus of elasticity")
            .unsaid("as shipped");
    private static final Key<Reading> GROWS = Key.of("grows", Quantity.of(Kind.EXPANSION), "F", "its growth with heat")
            .unsaid("as shipped");
    private static final Key<Reading> SWELLS = Key.of(
                    "swells", Quantity.of(Kind.RATIO), "F", "its growth across the grain for 1 % more water in it")
            .unsaid("as shipped");

    static final Shape<ToldMaterial> SHAPE = Shape.of(
            "material",
            "a material",
            "What a layer is made of; each value left out is the shipped one, if there is one.",
            List.of(CONDUCTS, VAPOUR, DENSITY, ROUGH, EMITS, TOLERANCE, STIFF, GROWS, SWELLS),
            values -> new ToldMaterial(
                    values.path(),
                    values.id(),
                    values.maybe(CONDUCTS),
                    values.maybe(VAPOUR),
                    values.maybe(DENSITY),
                    values.maybe(ROUGH),
                    values.maybe(EMITS),
                    values.maybe(TOLERANCE),
                    values.maybe(STIFF),
                    values.maybe(GROWS),
                    values.maybe(SWELLS)));

    private MaterialShape() {}
}
