package org.spile.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;

/**
 * A roof that rises 3 over 4 to the left (a right triangle with sides 3, 4, 5: sine 0.6, cosine 0.8), lined with 20 ± 1
 * square to the slope; the roof's height at y = 0 is 1000 ± 2.
 */
class SlopeTest {
    private static final Vector3D DOWN_SLOPE_NORMAL = Vector3D.of(0, 0.6, -0.8);

    /**
     * Straight up from a box whose right top edge lies at y = 0, z = 900 ± 0.5: roof 1000 - 20 / 0.8 = 975 there, so 75. The
     * lining counts 1 / 0.8 = 1.25 in the upright gap: less 2 + 1.25 + 0.5 = 3.75. Asked 72: +3, -0.75.
     */
    @Test
    void liningCountsMoreStraightUp() {
        Finding finding = Asked.of(house(Map.of("top", 72.0)))
                .expect("fit.maker/units.cooler.clearance.top", 75, 72, -0.75, Verdict.TIGHT);
        Layer lining = finding.stack().stream()
                .filter(layer -> layer.label().endsWith("pir"))
                .findFirst()
                .orElseThrow();
        assertEquals(-1.25, lining.factor(), 1e-9);
    }

    /** Square to the slope the gap is 75 x 0.8 = 60; the roof counts 0.8, the box 0.8, the lining 1: less 1.6 + 0.4 + 1 = 3. */
    @Test
    void everyReadingCountsByItsShareAlongTheGap() {
        Asked.of(house(Map.of())).expect("fit.clearance/units.cooler/cavities.loft.top", 60, 59, -2, Verdict.TIGHT);
    }

    private static House house(Map<String, Double> asked) {
        return HandHouse.of(Tell.house().clearance(59).unit("cooler", 0, asked).done(), (scene, tape) -> {
            Stack roof = tape.read("trailers.bunk.roof.at", 1000, 2);
            Stack pir = tape.read("cavities.loft.top.linings[1].pir", 20, 1);
            Stack top = tape.read("units.cooler.at.floor", 900, 0.5);
            scene.put(PartKind.UNIT, "units.cooler", "loft", Box.upright(100, 600, 0, 400, top.minus(200), top));
            scene.parts().add(lining(roof, pir));
        });
    }

    /** The lining from its face outwards; each of its points moves up with the roof and inwards with its thickness. */
    private static Part lining(Stack roof, Stack pir) {
        double faceMm = roof.valueMm() - pir.valueMm() / 0.8;
        List<Vector3D> section = List.of(
                Vector3D.of(0, -200, faceMm - 150),
                Vector3D.of(0, 600, faceMm + 450),
                Vector3D.of(0, 600, faceMm + 900),
                Vector3D.of(0, -200, faceMm + 900));
        List<Vector3D> other = section.stream()
                .map(corner -> corner.add(Vector3D.of(1800, 0, 0)))
                .toList();
        Body body = Body.of(ConvexPolyhedron.loft(section, other));
        return new Part(
                "cavities.loft.top",
                "cavities.loft",
                PartKind.LINING,
                "top of loft",
                List.of("loft"),
                "bunk",
                body,
                (point, direction) -> {
                    double inwards = DOWN_SLOPE_NORMAL.dot(direction);
                    Stack moves = roof.times(direction.getZ()).plus(pir.times(inwards));
                    return moves.plus(point.dot(direction) - moves.valueMm());
                },
                Optional.of(body));
    }
}
