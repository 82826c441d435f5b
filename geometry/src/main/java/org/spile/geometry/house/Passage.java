package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;

/** Through which cavities and rooms a straight middle line runs: those it is in for a length, not only touches. */
final class Passage {
    private static final double LEAST_SHARE = 1e-9;

    private final Spaces spaces;
    private final Map<String, List<Outline>> open = new HashMap<>();

    Passage(Spaces spaces) {
        this.spaces = spaces;
    }

    List<String> through(String trailer, Vector3D from, Vector3D to) {
        Set<String> ids = new LinkedHashSet<>();
        for (Cavity cavity : spaces.cavities().values()) {
            if (cavity.trailer().id().equals(trailer)
                    && inside(
                            cavity.plan().outline(),
                            cavity.lower().bare(),
                            Optional.of(cavity.upper().bare()),
                            from,
                            to)) {
                ids.add(cavity.id());
            }
        }
        for (Room room : spaces.rooms().values()) {
            if (room.trailer().id().equals(trailer) && inRoom(room, from, to)) {
                ids.add(room.id());
            }
        }
        return List.copyOf(ids);
    }

    /** A room ends at the ceilings that cavities put into it, and elsewhere at its own or the roof. */
    private boolean inRoom(Room room, Vector3D from, Vector3D to) {
        Slope floor = Slope.level(room.floor());
        for (Surface.Patch patch : room.ceilings()) {
            if (inside(plan(patch), floor, Optional.of(patch.at()), from, to)) {
                return true;
            }
        }
        return open.computeIfAbsent(room.id(), id -> open(room)).stream()
                .anyMatch(plan -> inside(plan, floor, room.upper(), from, to));
    }

    private static List<Outline> open(Room room) {
        List<Outline> covered = room.ceilings().stream().map(Passage::plan).toList();
        List<Outline> whole = List.of(room.plan().outline());
        return covered.isEmpty() ? whole : Regions.difference(whole, covered);
    }

    private static Outline plan(Surface.Patch patch) {
        return Plan.rectangle(patch.x(), patch.y()).outline();
    }

    /** Between the places where anything turns, all is straight: each stretch is clipped by the two surfaces. */
    private static boolean inside(Outline plan, Slope lower, Optional<Slope> upper, Vector3D from, Vector3D to) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        Vector2D a = Vector2D.of(from.getX(), from.getY());
        Vector2D b = Vector2D.of(to.getX(), to.getY());
        List<List<Vector2D>> rings = new ArrayList<>(plan.holes());
        rings.add(plan.shell());
        for (List<Vector2D> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                cut(a, b, ring.get(i), ring.get((i + 1) % ring.size()), cuts);
            }
        }
        turns(lower, from, to, cuts);
        upper.ifPresent(slope -> turns(slope, from, to, cuts));
        Collections.sort(cuts);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double t0 = cuts.get(i);
            double t1 = cuts.get(i + 1);
            if (t1 - t0 > LEAST_SHARE
                    && plan.contains(a.lerp(b, (t0 + t1) / 2))
                    && between(lower, upper, from, to, t0, t1)) {
                return true;
            }
        }
        return false;
    }

    private static void cut(Vector2D a, Vector2D b, Vector2D p, Vector2D q, List<Double> cuts) {
        Vector2D along = b.subtract(a);
        Vector2D side = q.subtract(p);
        double turn = along.signedArea(side);
        if (turn != 0) {
            add(p.subtract(a).signedArea(side) / turn, cuts);
        }
    }

    private static void turns(Slope slope, Vector3D from, Vector3D to, List<Double> cuts) {
        if (slope.isLevel()) {
            return;
        }
        double start = slope.along().of(from);
        double run = slope.along().of(to) - start;
        for (Slope.Knot knot : slope.knots()) {
            if (run != 0) {
                add((knot.at().valueMm() - start) / run, cuts);
            }
        }
    }

    private static void add(double t, List<Double> cuts) {
        if (t > 0 && t < 1) {
            cuts.add(t);
        }
    }

    private static boolean between(
            Slope lower, Optional<Slope> upper, Vector3D from, Vector3D to, double t0, double t1) {
        double enter = t0;
        double leave = t1;
        double[] over = {above(lower, from, to, t0), above(lower, from, to, t1)};
        double[] under = {
            upper.map(slope -> -above(slope, from, to, t0)).orElse(1.0),
            upper.map(slope -> -above(slope, from, to, t1)).orElse(1.0)
        };
        for (double[] gap : List.of(over, under)) {
            if (gap[0] <= 0 && gap[1] <= 0) {
                return false;
            }
            double zero = t0 + (t1 - t0) * gap[0] / (gap[0] - gap[1]);
            enter = gap[0] < 0 ? Math.max(enter, zero) : enter;
            leave = gap[1] < 0 ? Math.min(leave, zero) : leave;
        }
        return leave - enter > LEAST_SHARE;
    }

    private static double above(Slope slope, Vector3D from, Vector3D to, double t) {
        Vector3D point = from.lerp(to, t);
        return point.getZ() - slope.at(Stack.constant(slope.along().of(point))).valueMm();
    }
}
