package org.spile.geometry.kernel.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.RoundCylinder;
import org.spile.geometry.kernel.solid.Solid;

/** The nearest on a way; check values are closed forms worked beside them, or dense samples. */
class TravelGapTest {
    private static final double EXACT = 1e-6;
    private static final Vector3D X = Vector3D.Unit.PLUS_X;
    private static final Vector3D Y = Vector3D.Unit.PLUS_Y;
    private static final Vector3D UP = Vector3D.Unit.PLUS_Z;
    private static final Body CUBE = Body.of(Prism.box(0, 0, 0, 100, 100, 100));

    private static TravelGap least(Body moving, Travel travel, double to, Body fixed, double apart) {
        return TravelGap.least(moving, travel, 0, to, fixed, apart);
    }

    /** A post beside the path, turned by 45 degrees: its edge is 37 from the path's side, half way. */
    @Test
    void slide_isNearestInTheMiddle() {
        Solid post = Prism.box(-10, -10, -50, 10, 10, 150)
                .moved(Move.turn(Math.PI / 4, Vector3D.ZERO))
                .moved(Move.shift(400, 137 + 10 * Math.sqrt(2), 0));
        TravelGap gap = least(CUBE, Slide.along(X, 700), 700, Body.of(post), EXACT);
        assertEquals(37, gap.upperMm(), EXACT);
        assertEquals(37, gap.lowerMm(), EXACT);
        assertTrue(gap.parameter() >= 300 - EXACT && gap.parameter() <= 400 + EXACT, "at " + gap.parameter());
    }

    /** Towards a wall it is nearest at the end, away from one at the start. */
    @Test
    void slide_isNearestAtAnEnd() {
        Body wall = Body.of(Prism.box(300, -500, 0, 320, 500, 100));
        TravelGap towards = least(CUBE, Slide.along(X, 180), 180, wall, EXACT);
        assertEquals(20, towards.upperMm(), EXACT);
        assertEquals(180, towards.parameter(), EXACT);
        TravelGap away = least(CUBE, Slide.along(X.negate(), 180), 180, wall, EXACT);
        assertEquals(200, away.upperMm(), EXACT);
        assertEquals(0, away.parameter(), EXACT);
    }

    /**
     * A plate 2 thick passes right through a bar 10 thick: half way it takes 6 to get out, back or forth; the hull of all
     * its poses would have it much deeper.
     */
    @Test
    void plateThatPassesThroughABar_isAsDeepAsTheWorstPose() {
        Body plate = Body.of(Prism.box(-1, -200, -200, 1, 200, 200));
        Body bar = Body.of(Prism.box(95, -50, -50, 105, 50, 50));
        TravelGap gap = least(plate, Slide.along(X, 300), 300, bar, EXACT);
        assertEquals(-6, gap.upperMm(), EXACT);
        assertEquals(-6, gap.lowerMm(), EXACT);
        assertEquals(100, gap.parameter(), 1e-3);
    }

    /** Up 100 and then across: over a sill 90 high by 10, where straight across would cut 90 into it. */
    @Test
    void slideOfTwoLegs_goesRoundTheCorner() {
        Body sill = Body.of(Prism.box(200, 0, -100, 250, 100, 90));
        Slide over = new Slide(List.of(new Slide.Leg(UP, 100), new Slide.Leg(X, 500)));
        TravelGap gap = least(CUBE, over, over.fullMm(), sill, EXACT);
        assertEquals(10, gap.upperMm(), EXACT);
        assertEquals(10, gap.lowerMm(), EXACT);
    }

    /**
     * A leaf 700 long and 40 thick, its pin at the corner it turns about: the far edge runs on a circle of hypot(700, 40) about
     * the pin. A round post of 20 stands 760 from it at 50 degrees: 760 - hypot(700, 40) - 20.
     */
    @Test
    void leaf_passesAPostByTheRadiusOfItsFarEdge() {
        Body leaf = Body.of(Prism.box(0, 0, 0, 700, 40, 1900));
        double far = Math.hypot(700, 40);
        double ahead = Math.toRadians(50);
        Body post = Body.of(RoundCylinder.of(
                Vector3D.of(760 * Math.cos(ahead), 760 * Math.sin(ahead), 0),
                Vector3D.of(760 * Math.cos(ahead), 760 * Math.sin(ahead), 1900),
                20));
        TravelGap gap = least(leaf, new Hinge(Vector3D.ZERO, UP), 100, post, 0.01);
        assertEquals(760 - far - 20, gap.upperMm(), 0.01);
        assertTrue(gap.lowerMm() <= 760 - far - 20 + EXACT);
        assertTrue(gap.upperMm() - gap.lowerMm() <= 0.01 + EXACT);
        assertEquals(50 - Math.toDegrees(Math.atan2(40, 700)), gap.parameter(), 0.5);
    }

    /** A wall beside the pin is 5 from the leaf all along the way: nothing to search for, and found out soon. */
    @Test
    void leaf_keepsTheGapOfItsPin() {
        Body leaf = Body.of(Prism.box(0, 0, 0, 700, 40, 1900));
        Body wall = Body.of(Prism.box(-60, -500, 0, -5 - 1e-9, 500, 1900));
        TravelGap gap = least(leaf, new Hinge(Vector3D.ZERO, UP), 90, wall, 0.01);
        // Wide open it has turned its thickness to the wall: 40 beyond the pin.
        assertEquals(5 - 40, gap.upperMm(), 0.01);
        assertEquals(90, gap.parameter(), 0.5);
    }

    /** An L in plan is not convex: its inner corner lets the cube in, the hull of it would not. */
    @Test
    void concavePrisms_areTakenAsTheyAre() {
        Outline angle = Outline.of(List.of(
                Vector2D.of(0, 0),
                Vector2D.of(500, 0),
                Vector2D.of(500, 50),
                Vector2D.of(50, 50),
                Vector2D.of(50, 500),
                Vector2D.of(0, 500)));
        Body corner = Body.of(Prism.of(angle, 0, 100));
        Body part = Body.of(Prism.box(600, 70, 0, 700, 170, 100));
        TravelGap gap = least(part, Slide.along(X.negate(), 530), 530, corner, EXACT);
        assertEquals(20, gap.upperMm(), EXACT);
        assertEquals(20, gap.lowerMm(), EXACT);
    }

    /** A leaf turns by 90 degrees while its deck slides by 300: its bounds hold what dense samples show. */
    @Test
    void chain_addsItsLinks() {
        Body leaf = Body.of(Prism.box(0, 0, 0, 400, 30, 500));
        Body post = Body.of(Prism.box(430, 320, 0, 470, 360, 500));
        Chain both = new Chain(List.of(
                new Chain.Link(new Hinge(Vector3D.ZERO, UP), 0, 90), new Chain.Link(Slide.along(X, 300), 0, 300)));
        assertBounds(leaf, both, 1, post, 0.01, 4000);
    }

    @Test
    void misuse_isTold() {
        Travel slide = Slide.along(X, 10);
        assertThrows(IllegalArgumentException.class, () -> TravelGap.least(CUBE, slide, 5, 4, CUBE, 0.01));
        assertThrows(IllegalArgumentException.class, () -> TravelGap.least(CUBE, slide, 0, 4, CUBE, 0));
        assertThrows(IllegalArgumentException.class, () -> TravelGap.least(CUBE, slide, 0, Double.NaN, CUBE, 0.01));
        assertThrows(IllegalArgumentException.class, () -> Slide.along(X.multiply(2), 10));
        assertThrows(IllegalArgumentException.class, () -> Slide.along(X, -1));
        assertThrows(IllegalArgumentException.class, () -> new Slide(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Hinge(Vector3D.ZERO, X.add(Y)));
        assertThrows(IllegalArgumentException.class, () -> new Chain(List.of()));
    }

    /** The least is never above any pose, and never below its own lower bound. */
    @Property(tries = 60)
    void anySlide_isBoundedByItsPoses(@ForAll long seed) {
        RandomSolids random = new RandomSolids(seed);
        Body moving = Body.of(random.box().moved(random.anyTurn()));
        Body fixed = Body.of(random.lump().moved(Move.shift(random.place(500))));
        assertBounds(moving, Slide.along(random.direction(), 800), 800, fixed, EXACT, 200);
    }

    @Property(tries = 60)
    void anyHinge_isBoundedByItsPoses(@ForAll long seed) {
        RandomSolids random = new RandomSolids(seed);
        Body moving = Body.of(
                random.box().moved(random.anyTurn()),
                RoundCylinder.of(random.place(300), random.place(300), random.between(5, 60))
                        .rounded(random.between(0, 10)));
        Body fixed = Body.of(random.lump().moved(Move.shift(random.place(700))));
        assertBounds(moving, new Hinge(random.place(200), random.direction()), 200, fixed, 0.01, 200);
    }

    private static void assertBounds(Body moving, Travel travel, double to, Body fixed, double apart, int poses) {
        TravelGap gap = least(moving, travel, to, fixed, apart);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= poses; i++) {
            Gap there = Clearance.between(moving.moved(travel.at(to * i / poses)), fixed);
            least = Math.min(least, there.upperMm());
        }
        assertTrue(gap.lowerMm() <= least + EXACT, gap.lowerMm() + " is above a pose's " + least);
        assertTrue(gap.upperMm() <= least + apart + EXACT, gap.upperMm() + " is above a pose's " + least);
        assertTrue(gap.upperMm() - gap.lowerMm() <= apart + 2e-5, gap.lowerMm() + " to " + gap.upperMm());
    }
}
