package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Cavity.Lined;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Loft;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/**
 * The bodies round a cavity: for each surface convex slabs outside the clear void, which meet it in their inner face.
 *
 * <p>Each reaches {@link #BACKING_MM} beyond what was measured, so that a body beyond it is found too; only a ceiling ends
 * at the face seen from its room, where the room's own things begin. Slabs of one surface meet at mitres; the slab of a
 * side of the plan ends at its neighbours' mitres, and is thinner where another side of the plan lies behind it.
 */
final class Linings {
    /** How far a slab reaches beyond the surface (mm). */
    static final double BACKING_MM = 300;

    /** Least thickness of a slab that stands for a bare face (mm). */
    private static final double FACE_MM = 1;

    private final Cavity cavity;
    private final List<Piece> pieces = new ArrayList<>();

    Linings(Cavity cavity) {
        this.cavity = cavity;
    }

    List<Piece> pieces() {
        boolean ceiling = cavity.hasCeiling();
        upright(cavity.lowerKey(), cavity.lowerTitle(), cavity.lower(), -1, ceiling);
        upright("top", "top", cavity.upper(), 1, false);
        sides();
        cavity.leaning().forEach(this::leaning);
        return pieces;
    }

    private void upright(String key, String title, Lined surface, int sign, boolean seen) {
        Axis along = surface.lined().isLevel() ? Axis.X : surface.lined().along();
        Axis across = along == Axis.X ? Axis.Y : Axis.X;
        Span range = cavity.plan().extent(along);
        Span width = cavity.plan().extent(across);
        Slope inner = surface.lined().spread(along, range);
        Slope face = surface.bare().spread(along, range);
        Slope outer = seen ? solid(face, inner, sign) : face.plus(Stack.constant(sign * BACKING_MM));
        add(
                key,
                title,
                Slabs.between(inner, outer, Axis.Z, width),
                differ(inner, face) ? Slabs.between(inner, face, Axis.Z, width) : List.of(),
                seen);
    }

    /** A bare ceiling still needs a body. */
    private static Slope solid(Slope face, Slope inner, int sign) {
        return differ(inner, face) ? face : face.plus(Stack.constant(sign * FACE_MM));
    }

    private static boolean differ(Slope one, Slope other) {
        double a = one.knots().get(0).value().valueMm();
        double b = other.knots().get(0).value().valueMm();
        return Math.abs(a - b) > 1e-6;
    }

    private void sides() {
        List<Plan.Side> faces = cavity.plan().sides();
        List<Plan.Side> clear = cavity.clear().sides();
        List<Stack> out = new ArrayList<>();
        for (Plan.Side side : faces) {
            out.add(Stack.constant(-Math.min(BACKING_MM, room(side))));
        }
        Plan outer = cavity.plan().inset(out);
        Map<Way, List<Shape>> bodies = new LinkedHashMap<>();
        Map<Way, List<Shape>> shown = new LinkedHashMap<>();
        for (int i = 0; i < faces.size(); i++) {
            Way way = faces.get(i).way();
            if (!cavity.leaning().containsKey(way)) {
                Span height = height(faces.get(i));
                Plan.Side inner = clear.get(i);
                bodies.computeIfAbsent(way, w -> new ArrayList<>())
                        .add(wall(inner, outer.sides().get(i), height));
                if (inner.from().at().distance(faces.get(i).from().at()) > 1e-6) {
                    shown.computeIfAbsent(way, w -> new ArrayList<>()).add(wall(inner, faces.get(i), height));
                }
            }
        }
        bodies.forEach((way, shapes) -> add(way.face(), side(way), shapes, shown.getOrDefault(way, List.of()), false));
    }

    private static String side(Way way) {
        return way.axis() == Axis.Y ? way.face() + " side" : way.face();
    }

    private static Shape wall(Plan.Side inner, Plan.Side outer, Span height) {
        List<Spot> ring = List.of(outer.from(), outer.to(), inner.to(), inner.from());
        return Loft.between(
                ring.stream().map(spot -> spot.with(Axis.Z, height.low())).toList(),
                ring.stream().map(spot -> spot.with(Axis.Z, height.high())).toList());
    }

    /** From the lowest place of the lower surface along a side to the highest of the upper one. */
    private Span height(Plan.Side side) {
        return new Span(
                extreme(cavity.lower().bare(), side, false),
                extreme(cavity.upper().bare(), side, true));
    }

    private static Stack extreme(Slope slope, Plan.Side side, boolean greatest) {
        if (slope.isLevel()) {
            return slope.knots().get(0).value();
        }
        Stack from = side.from().get(slope.along());
        Stack to = side.to().get(slope.along());
        Span range = new Span(FirstOrder.lesser(from, to), FirstOrder.greater(from, to));
        return greatest ? slope.greatest(range) : slope.least(range);
    }

    /** Half the way from a side outwards to the next side of the plan that lies before it. */
    private double room(Plan.Side side) {
        double least = Double.POSITIVE_INFINITY;
        var from = side.from().at();
        for (Plan.Side other : cavity.plan().sides()) {
            double a = other.from().at().subtract(from).dot(side.outward());
            double b = other.to().at().subtract(from).dot(side.outward());
            if (Math.max(a, b) > 1e-6) {
                least = Math.min(least, other.index() == side.index() ? least : gap(side, other));
            }
        }
        return least / 2;
    }

    private static double gap(Plan.Side side, Plan.Side other) {
        if (touching(side, other)) {
            return Double.POSITIVE_INFINITY;
        }
        double least = Double.POSITIVE_INFINITY;
        for (var a : List.of(side.from().at(), side.to().at())) {
            least = Math.min(least, distance(a, other));
        }
        for (var b : List.of(other.from().at(), other.to().at())) {
            least = Math.min(least, distance(b, side));
        }
        return least;
    }

    /** Neighbours meet at a mitre, however sharp. */
    private static boolean touching(Plan.Side side, Plan.Side other) {
        return side.to().equals(other.from()) || other.to().equals(side.from());
    }

    private static double distance(Vector3D point, Plan.Side side) {
        var from = side.from().at();
        var along = side.to().at().subtract(from);
        double t = Math.max(0, Math.min(1, point.subtract(from).dot(along) / along.normSq()));
        return point.distance(from.add(along.multiply(t)));
    }

    /** A side with a profile: one slab for each straight piece, plumb beyond the first and the last point. */
    private void leaning(Way way, Lined side) {
        Span x = cavity.plan().extent(Slabs.third(way.axis(), Axis.Z));
        Span range = new Span(
                cavity.lower()
                        .bare()
                        .least(cavity.plan().extent(alongOf(cavity.lower().bare()))),
                cavity.upper()
                        .bare()
                        .greatest(cavity.plan().extent(alongOf(cavity.upper().bare()))));
        Slope inner = side.lined().spread(Axis.Z, range);
        Slope face = side.bare().spread(Axis.Z, range);
        Slope outer = face.plus(Stack.constant(way.sign() * BACKING_MM));
        add(
                way.face(),
                side(way),
                Slabs.between(inner, outer, way.axis(), x),
                differ(inner, face) ? Slabs.between(inner, face, way.axis(), x) : List.of(),
                false);
    }

    private static Axis alongOf(Slope slope) {
        return slope.isLevel() ? Axis.X : slope.along();
    }

    private void add(String key, String title, List<Shape> bodies, List<Shape> shown, boolean seen) {
        List<String> spaces = new ArrayList<>(List.of(cavity.id()));
        if (seen) {
            spaces.add(cavity.over().orElseThrow().id());
        }
        pieces.add(new Piece(
                cavity.path() + "." + key,
                cavity.path(),
                PartKind.LINING,
                title + " of " + cavity.told().placed().title(),
                spaces,
                cavity.trailer().id(),
                Shape.union(bodies),
                shown.isEmpty() ? Optional.empty() : Optional.of(Shape.union(shown)),
                "",
                ""));
    }
}
