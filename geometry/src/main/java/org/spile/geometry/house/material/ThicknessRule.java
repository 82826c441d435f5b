package org.spile.geometry.house.material;

import java.util.Optional;
import org.spile.geometry.kernel.measure.Tolerance;

/** How exact the thickness of a material is when nobody says. */
public enum ThicknessRule {
    /** Sanded plywood. */
    SANDED_PLYWOOD(PlywoodThickness.SOURCE) {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return PlywoodThickness.sanded(thickMm);
        }
    },
    /** Planed structural timber. */
    PLANED_TIMBER(SawnTimber.SOURCE) {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return SawnTimber.planed(thickMm);
        }
    },
    /** Sawn structural timber. */
    SAWN_TIMBER(SawnTimber.SOURCE) {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return SawnTimber.sawn(thickMm);
        }
    },
    /** Cold rolled steel sheet from coils up to 1200 mm wide. */
    COLD_ROLLED_SHEET(SheetThickness.COLD_ROLLED.source()) {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return SheetThickness.COLD_ROLLED.of(thickMm, COIL_MM);
        }
    },
    /** Hot-dip coated steel sheet from coils up to 1200 mm wide. */
    HOT_DIP_COATED_SHEET(SheetThickness.HOT_DIP_COATED.source()) {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return SheetThickness.HOT_DIP_COATED.of(thickMm, COIL_MM);
        }
    },
    /** Stainless sheet from coils up to 1000 mm wide. */
    STAINLESS_SHEET(SheetThickness.STAINLESS.source()) {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return SheetThickness.STAINLESS.of(thickMm, STAINLESS_COIL_MM);
        }
    },
    /** Nothing is claimed. */
    NONE("") {
        @Override
        Optional<Tolerance> of(double thickMm) {
            return Optional.empty();
        }
    };

    private static final double COIL_MM = 1200;
    private static final double STAINLESS_COIL_MM = 1000;

    private final String source;

    ThicknessRule(String source) {
        this.source = source;
    }

    /** Where the rule comes from; empty for none. */
    public String source() {
        return source;
    }

    /** The tolerance of a thickness in mm; nothing outside the rule's range. */
    abstract Optional<Tolerance> of(double thickMm);
}
