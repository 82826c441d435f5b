package org.spile.geometry.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Layer;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/**
 * A part's flex against finite differences: the house is worked out again with each reading a little more, and every part's
 * reach along a few directions must have moved by the flex's factor, to first order.
 */
class FlexTest {
    private static final List<Vector3D> WAYS = List.of(
            Vector3D.Unit.PLUS_X,
            Vector3D.Unit.MINUS_X,
            Vector3D.Unit.PLUS_Y,
            Vector3D.Unit.MINUS_Y,
            Vector3D.Unit.PLUS_Z,
            Vector3D.Unit.MINUS_Z,
            Vector3D.of(3, 2, 1).normalize(),
            Vector3D.of(-1, 2, -3).normalize());

    private static double reach(Part part, Vector3D way) {
        return points(part, way).stream().mapToDouble(p -> p.dot(way)).max().orElseThrow();
    }

    /** The points that reach farthest along a direction; where several do, any of them may lead once it moves. */
    private static List<Vector3D> farthest(Part part, Vector3D way) {
        double reach = reach(part, way);
        return points(part, way).stream()
                .filter(point -> point.dot(way) > reach - 1e-7)
                .toList();
    }

    /** Each corner of each convex core, moved out to its rim along a direction. */
    private static List<Vector3D> points(Part part, Vector3D way) {
        List<Vector3D> points = new ArrayList<>();
        for (Solid solid : part.body().solids()) {
            for (ConvexCore core : solid.cores()) {
                Vector3D across = way.subtract(core.axis().multiply(way.dot(core.axis())));
                boolean rim = core.discMm() > 0 && across.norm() > 1e-9;
                Vector3D out = rim ? across.normalize().multiply(core.discMm()) : Vector3D.ZERO;
                for (int i = 0; i < core.count(); i++) {
                    points.add(Vector3D.of(core.x(i), core.y(i), core.z(i)).add(out));
                }
            }
        }
        return points;
    }

    /**
     * What a part says of a reading lies between what it moves by when the reading grows and when it shrinks: the same
     * number twice but where a reading breaks a level, as at a profile's corner.
     */
    static void law(House house, String path, double step, List<String> off) {
        House more = with(house, path, step)
                .or(() -> with(house, path, -step))
                .orElseThrow(() -> new AssertionError(path + " can't change at all"));
        House less = with(house, path, -step).orElse(more);
        double ahead = now(more, path) - now(house, path);
        double behind = now(less, path) - now(house, path);
        assertEquals(step, Math.abs(ahead), 1e-9, path);
        assertEquals(step, Math.abs(behind), 1e-9, path);
        for (String stance : house.stances()) {
            for (Part part : house.scene(stance).parts()) {
                Part up = more.scene(stance).part(part.id()).orElseThrow();
                Part down = less.scene(stance).part(part.id()).orElseThrow();
                for (Vector3D way : WAYS) {
                    double here = reach(part, way);
                    double growing = (reach(up, way) - here) / ahead;
                    double shrinking = (reach(down, way) - here) / behind;
                    DoubleSummaryStatistics told = farthest(part, way).stream()
                            .mapToDouble(at -> factor(part.flex().along(at, way), path))
                            .summaryStatistics();
                    double slack = 2e-3 * Math.max(1, Math.abs(told.getMax()));
                    if (told.getMin() > Math.max(growing, shrinking) + slack
                            || told.getMax() < Math.min(growing, shrinking) - slack) {
                        off.add(path + " on " + part.id() + " in " + stance + " along " + way + ": moves " + growing
                                + " or " + shrinking + ", said " + told.getMin() + " to " + told.getMax());
                    }
                }
            }
        }
    }

    private static double now(House house, String path) {
        return house.readings().get(path).value();
    }

    /** Nothing where the house doesn't add up then: a mover at the end of its travel goes one way only. */
    private static Optional<House> with(House house, String path, double step) {
        Resolved other = house.with(Map.of(path, now(house, path) + step));
        return other instanceof Resolved.Sound sound ? Optional.of(sound.house()) : Optional.empty();
    }

    private static double factor(Stack stack, String path) {
        for (Layer layer : stack.layers()) {
            if (layer.reading().path().equals(path) && !layer.moves()) {
                return layer.factor();
            }
        }
        return 0;
    }

    @Test
    void everyReadingOfSaltmarsh() {
        everyReading("saltmarsh");
    }

    @Test
    void everyReadingOfTheBoatLocker() {
        everyReading("boat-locker");
    }

    @Test
    void everyReadingOfTheSiteCabin() {
        everyReading("site-cabin");
    }

    private static void everyReading(String name) {
        House house = Sketch.sound(Sketch.text(name));
        List<String> off = new ArrayList<>();
        int tried = 0;
        for (Reading reading : house.readings().values()) {
            if (reading.kind() == Kind.MASS
                    || reading.kind() == Kind.FLOW
                    || reading.path().endsWith(".replaces")) {
                continue;
            }
            law(house, reading.path(), reading.kind() == Kind.LENGTH ? 1e-3 : 1e-5, off);
            tried++;
        }
        assertTrue(tried > 30, "only " + tried + " readings");
        assertEquals(List.of(), off.subList(0, Math.min(20, off.size())), off.size() + " are off");
    }

    @Test
    void valueAtAPoint_isItsCoordinate() {
        Scene scene = Sketch.home("saltmarsh");
        for (Part part : scene.parts()) {
            for (Vector3D way : WAYS) {
                for (Vector3D at : farthest(part, way)) {
                    assertEquals(at.dot(way), part.flex().along(at, way).valueMm(), 1e-9, part.id());
                }
            }
        }
    }
}
