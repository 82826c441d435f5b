package org.spile.geometry.house.material;

import java.util.Locale;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/**
 * The materials that need no words in a house file.
 *
 * <p>Of a published range the end that insulates less and lets more vapour through is kept, the careful side for
 * sweating; of wet and dry vapour factors the wet one. A zero stands for a value that is not known. Emissivities are not
 * shipped: none had a source.
 */
enum ShippedMaterial {
    PLY("plywood", 0.13, 70, 500, 0.12, ThicknessRule.SANDED_PLYWOOD, Words.PLY),
    BATTEN("planed softwood", 0.13, 0, 500, 0.3, ThicknessRule.PLANED_TIMBER, Words.WOOD + Words.BOARDS),
    TIMBER("sawn softwood", 0.13, 0, 500, 0, ThicknessRule.SAWN_TIMBER, Words.WOOD),
    HARDWOOD("hardwood", 0.18, 200, 700, 0.3, ThicknessRule.PLANED_TIMBER, Words.EN_12524 + Words.BOARDS),
    GYPSUM("gypsum board", 0.25, 4, 900, 0, ThicknessRule.NONE, Words.ISO_10456),
    GALV("galvanised sheet", 50, Words.TIGHT, 7800, 0.12, ThicknessRule.HOT_DIP_COATED_SHEET, Words.METAL + Words.DUCT),
    STEEL("steel sheet", 50, Words.TIGHT, 7800, 0, ThicknessRule.COLD_ROLLED_SHEET, Words.METAL),
    STAINLESS(
            "stainless sheet",
            17,
            Words.TIGHT,
            7900,
            0.03,
            ThicknessRule.STAINLESS_SHEET,
            Words.METAL + "; roughness from memory"),
    ALU("aluminium", 160, Words.TIGHT, 2800, 0.05, ThicknessRule.NONE, Words.METAL + Words.DUCT),
    COPPER("copper", 380, Words.TIGHT, 8900, 0, ThicknessRule.NONE, Words.EN_12524),
    GLASS("glass", 1.0, Words.TIGHT, 2500, 0, ThicknessRule.NONE, Words.EN_12524),
    PVC("rigid PVC", 0.17, 50_000, 1390, 0.03, ThicknessRule.NONE, Words.METAL + Words.DUCT),
    ACRYLIC("acrylic sheet", 0.20, 10_000, 1050, 0, ThicknessRule.NONE, Words.EN_12524),
    POLYCARBONATE("polycarbonate sheet", 0.20, 5000, 1200, 0, ThicknessRule.NONE, Words.EN_12524),
    PIR("PIR board", 0.028, 60, 35, 0, ThicknessRule.NONE, "range a board maker declares; " + Words.ISO_10456),
    PHENOLIC("foil-faced phenolic board", 0.023, 50, 35, 0.27, ThicknessRule.NONE, Words.ISO_10456 + Words.DUCT),
    XPS("extruded polystyrene", 0.036, 150, 35, 0, ThicknessRule.NONE, Words.ISO_10456 + "; EN 13164, from memory"),
    EPS("expanded polystyrene", 0.040, 60, 20, 0, ThicknessRule.NONE, Words.ISO_10456 + "; EN 13163, from memory"),
    FOAM("closed-cell elastomeric foam", 0.038, 7000, 60, 0, ThicknessRule.NONE, "EN 14304, from memory"),
    GLASS_WOOL("glass wool", 0.040, 1, 30, 0, ThicknessRule.NONE, Words.ISO_10456 + "; EN 13162, from memory"),
    POLYESTER("polyester batt", 0.055, 1, 15, 0, ThicknessRule.NONE, "AS/NZS 4859.1 practice, from memory"),
    CORK("expanded cork", 0.045, 5, 115, 0, ThicknessRule.NONE, "EN 13170 and ISO 10456, from memory"),
    AEROGEL("aerogel blanket", 0.021, 5, 165, 0, ThicknessRule.NONE, "ASTM C1728, from memory"),
    AIR("still air", 0.025, 1, 1.23, 0, ThicknessRule.NONE, Words.ISO_10456);

    private final String title;
    private final double conducts;
    private final double vapour;
    private final double density;
    private final double roughMm;
    private final ThicknessRule thickness;
    private final String source;

    ShippedMaterial(
            String title,
            double conducts,
            double vapour,
            double density,
            double roughMm,
            ThicknessRule thickness,
            String source) {
        this.title = title;
        this.conducts = conducts;
        this.vapour = vapour;
        this.density = density;
        this.roughMm = roughMm;
        this.thickness = thickness;
        this.source = source;
    }

    /** The name that layers use. */
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Material material() {
        return new Material(
                id(),
                title,
                value("conducts", Kind.CONDUCTIVITY, conducts),
                Double.isInfinite(vapour) ? Optional.empty() : value("vapour", Kind.NUMBER, vapour),
                Double.isInfinite(vapour),
                value("density", Kind.DENSITY, density),
                value("rough", Kind.LENGTH, roughMm),
                Optional.empty(),
                thickness,
                Optional.empty(),
                ShippedMovement.of(id()),
                source);
    }

    private Optional<Reading> value(String key, Kind kind, double base) {
        return base == 0
                ? Optional.empty()
                : Optional.of(Reading.byDefault("materials." + id() + "." + key, kind, base));
    }

    // A nested class: an enum's own constants can't name its static fields.
    private static final class Words {
        static final double TIGHT = Double.POSITIVE_INFINITY;
        static final String EN_12524 = "EN 12524 list";
        static final String METAL = "prEN ISO 10077-2 / EN 12524 list and CIBSE Guide A table 3.36";
        static final String ISO_10456 = "ISO 10456, from memory";
        static final String WOOD = "EN 12524 list; its vapour factor (up to 200) is too wide a range to ship";
        static final String DUCT = "; roughness from the ASHRAE duct roughness table";
        static final String BOARDS = "; roughness of planed boards from Idelchik, Handbook of Hydraulic Resistance";
        static final String PLY = "ISO 10456:2007 table 3, from memory; roughness across the grain from Idelchik,"
                + " Handbook of Hydraulic Resistance";
    }
}
