package org.spile.exporters.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.Projection;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.TitleBlock;
import org.spile.exporters.drawing.View;

/** Gaps and rows as ISO 129-1 has them (as commonly reproduced); the rest by the overlap checker. */
class DimensionLayoutTest {
    private static final List<Side> SIDES = List.of(Side.ABOVE, Side.BELOW, Side.LEFT, Side.RIGHT);

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    private static ViewDraft box(double wide, double high) {
        return ViewDraft.named("box", "Box")
                .outline(Layer.UNITS.pen(), Extent.ofSize(0, 0, wide, high).corners());
    }

    private static List<Dimensioned> dimensions(View view) {
        return view.marks().stream()
                .filter(Dimensioned.class::isInstance)
                .map(Dimensioned.class::cast)
                .toList();
    }

    @Test
    void firstRowTenFromTheOutline_thenEight_shorterInside() {
        var view = box(1200, 600)
                .dimension(Dimension.level(at(0, 0), at(1200, 0), Side.BELOW))
                .dimension(Dimension.level(at(0, 0), at(700, 0), Side.BELOW))
                .at(Scale.oneTo(10));
        assertEquals(
                List.of(-180.0, -100.0),
                dimensions(view).stream().map(d -> d.lineAt().getY()).toList());
    }

    @Test
    void aChain_sharesOneRow() {
        var view = box(1200, 600)
                .dimensions(Dimension.chain(List.of(at(0, 0), at(300, 0), at(700, 0), at(1200, 0)), Side.BELOW))
                .at(Scale.oneTo(10));
        assertEquals(
                List.of(-100.0),
                dimensions(view).stream().map(d -> d.lineAt().getY()).distinct().toList());
    }

    @Test
    void valuesStandAboveLevelLines_andLeftOfUprightOnes() {
        var view = box(1200, 600)
                .dimension(Dimension.level(at(0, 0), at(1200, 0), Side.BELOW))
                .dimension(Dimension.upright(at(1200, 0), at(1200, 600), Side.RIGHT))
                .at(Scale.oneTo(10));
        var level = dimensions(view).get(0);
        var upright = dimensions(view).get(1);
        assertTrue(level.textAt().getY() > level.lineAt().getY());
        assertTrue(upright.textAt().getX() < upright.lineAt().getX());
        assertEquals(90, text(upright).angleDeg());
        assertEquals("600", text(upright).says());
    }

    private static Text text(Dimensioned dimension) {
        return (Text) dimension.drawn().stream()
                .filter(Text.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aNarrowGap_getsItsArrowsOutside_andItsValueBeside() {
        var view = box(1200, 600)
                .dimension(Dimension.level(at(500, 0), at(513.5, 0), Side.BELOW))
                .at(Scale.oneTo(10));
        var gap = dimensions(view).get(0);
        assertEquals("13.5", text(gap).says());
        assertTrue(gap.textAt().getX() > 513.5 + 30, "beside the outer arrow of 3 on paper");
    }

    @Test
    void aToleranceFollowsTheMeasuredValue() {
        var view = box(1200, 600)
                .dimension(Dimension.level(at(0, 0), at(208, 0), Side.BELOW).tolerated("±3"))
                .at(Scale.oneTo(10));
        assertEquals("208 ±3", text(dimensions(view).get(0)).says());
        assertEquals(208, dimensions(view).get(0).span().measuredMm());
    }

    @Test
    void aSlantingDistance_isMeasuredStraight_andReadsFromTheBottomOrRight() {
        var view = box(1200, 600)
                .dimension(Dimension.straight(at(1200, 900), at(0, 0), Side.ABOVE))
                .at(Scale.oneTo(10));
        var slant = dimensions(view).get(0);
        // 1200² + 900² = 1500²
        assertEquals("1500", text(slant).says());
        assertEquals(Math.toDegrees(Math.atan2(900, 1200)), text(slant).angleDeg(), 1e-9);
    }

    @Property(tries = 60)
    void randomDimensions_neverOverlap(@ForAll long seed) {
        law(seed);
    }

    /** Dozens of dimensions of a random part, on all sides and inside, running ones too: the checker finds nothing. */
    static void law(long seed) {
        var random = new Random(seed);
        var scale = List.of(Scale.FULL, Scale.oneTo(5), Scale.oneTo(20)).get(random.nextInt(3));
        var unit = scale.modelPerPaper();
        var draft = box(120 * unit, 80 * unit);
        var corners = new ArrayList<Vector2D>();
        for (var i = 0; i < 2 + random.nextInt(14); i++) {
            corners.add(at(snapped(random, 120) * unit, snapped(random, 80) * unit));
        }
        for (var i = 1; i < corners.size(); i++) {
            ask(draft, corners.get(i - 1), corners.get(i), random);
        }
        if (random.nextBoolean()) {
            draft.running(RunningDimension.from(at(0, 0), corners, SIDES.get(random.nextInt(4))));
        }
        var view = draft.name("named thing", "units.cooler", at(60 * unit, 40 * unit))
                .flag(1, "f", corners.get(0), corners.get(1), "units.cooler")
                .at(scale);
        var clashes = Overlaps.of(sheet(view)).stream()
                .filter(clash -> clash.kind() != Overlaps.Kind.OUTSIDE_FRAME)
                .filter(clash -> clash.kind() != Overlaps.Kind.VIEW_ON_VIEW)
                .toList();
        assertEquals(List.of(), clashes, "seed " + seed);
    }

    private static void ask(ViewDraft draft, Vector2D from, Vector2D to, Random random) {
        var side = SIDES.get(random.nextInt(4));
        var kind = random.nextInt(4);
        var wide = side == Side.ABOVE || side == Side.BELOW;
        if (kind == 0 && from.distance(to) > 1e-3) {
            draft.dimension(Dimension.straight(from, to, side));
        } else if (wide && Math.abs(from.getX() - to.getX()) > 1e-3) {
            var level = Dimension.level(from, to, side);
            draft.dimension(kind == 1 ? level.near().tolerated("±0.5") : level);
        } else if (!wide && Math.abs(from.getY() - to.getY()) > 1e-3) {
            var upright = Dimension.upright(from, to, side);
            draft.dimension(kind == 1 ? upright.near().worded("(<>)") : upright);
        }
    }

    private static double snapped(Random random, double most) {
        return random.nextInt(4) == 0 ? most * random.nextInt(5) / 4 : most * random.nextDouble();
    }

    /** The view far from frame and title block, so that only its own clashes count. */
    private static Sheet sheet(View view) {
        return new Sheet(
                "test",
                PaperSize.A0,
                TitleBlock.of("", "", ""),
                Projection.FIRST_ANGLE,
                1,
                1,
                List.of(view.placed(Vector2D.of(2000, 2000))),
                List.of());
    }
}
