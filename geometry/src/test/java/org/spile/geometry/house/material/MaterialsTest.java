package org.spile.geometry.house.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.spile.geometry.house.told.ToldMaterial;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

class MaterialsTest {
    private static final Materials SHIPPED = Materials.shipped();

    @Test
    void everyShippedOne_hasASource() {
        for (Material material : SHIPPED.all()) {
            assertFalse(material.source().isBlank(), material.id());
            assertTrue(material.conducts().isPresent(), material.id());
            assertTrue(material.density().isPresent(), material.id());
        }
    }

    /** EN 12524 list and CIBSE Guide A: rigid PVC 0.17 W/mK, 1390 kg/m3, 50 000. */
    @Test
    void pvc_asListed() {
        Material pvc = SHIPPED.named("pvc").orElseThrow();
        assertEquals(0.17, pvc.conducts().orElseThrow().value());
        assertEquals(1390, pvc.density().orElseThrow().value());
        assertEquals(50_000, pvc.vapour().orElseThrow().value());
        assertEquals("materials.pvc.conducts", pvc.conducts().orElseThrow().path());
        assertEquals(Origin.DEFAULT, pvc.conducts().orElseThrow().origin());
    }

    @Test
    void thickness_typedToleranceStays() {
        Reading typed = new Reading("layer", 12, 1, 1, Origin.TYPED, true, Kind.LENGTH, "12 ± 1");
        assertSame(typed, SHIPPED.named("ply").orElseThrow().reckoned(typed));
    }

    /** EN 315: 12 mm sanded +0.56/-0.76. EN 10143: 0.6 mm ± 0.04 to 1200 wide. EN 336 planed: ± 1. */
    @Test
    void thickness_fromTheStandards() {
        assertEquals(0.56, reckoned("ply", 12).plus(), 1e-12);
        assertEquals(0.76, reckoned("ply", 12).minus(), 1e-12);
        assertEquals(0.04, reckoned("galv", 0.6).plus());
        assertEquals(1, reckoned("batten", 19).minus());
        assertTrue(reckoned("pir", 25).exact());
        assertTrue(reckoned("galv", 4).exact());
    }

    @Test
    void ownWords_overrideValueByValue() {
        Reading conducts = Reading.of("materials.ply.conducts", Kind.CONDUCTIVITY, 0.11);
        Reading tolerance = new Reading("materials.ply.tolerance", 0, 0.5, 0.25, Origin.TYPED, true, Kind.LENGTH, "");
        var own = new ToldMaterial(
                "materials.ply",
                "ply",
                Optional.of(conducts),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(tolerance),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Material ply = SHIPPED.with(List.of(own)).named("ply").orElseThrow();
        assertEquals(Optional.of(conducts), ply.conducts());
        assertEquals(70, ply.vapour().orElseThrow().value());
        assertEquals(0.5, ply.reckoned(Reading.of("p", Kind.LENGTH, 12)).plus());
        assertEquals(0.25, ply.reckoned(Reading.of("p", Kind.LENGTH, 12)).minus());
    }

    @Test
    void wall_isTheOutermostThatHoldsAShape() {
        assertEquals(1, within("galv", "foam"));
        assertEquals(2, within("foam", "galv"));
        assertEquals(1, within("pvc"));
        assertEquals(2, within("phenolic", "foam"));
        assertEquals(2, within("foam", "ply", "foam"));
        assertEquals(0, Material.withinWall(List.of()));
    }

    private static int within(String... ids) {
        return Material.withinWall(
                List.of(ids).stream().map(id -> SHIPPED.named(id).orElseThrow()).toList());
    }

    private static Reading reckoned(String material, double thickMm) {
        return SHIPPED.named(material).orElseThrow().reckoned(Reading.of("p", Kind.LENGTH, thickMm));
    }
}
