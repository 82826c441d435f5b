package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Unit;

/** Turns the entities of a DXF text into lines in plan, in mm. */
final class DxfPaths {
    private static final int CLOSED = 1;
    private static final int NO_PLAN_LINE = 16 | 64;
    private static final int FRAME_POINT = 16;
    private static final double UPRIGHT = 1 - 1e-9;

    private final List<DxfEntity> entities;
    private final Unit unit;
    private int at;

    DxfPaths(List<DxfEntity> entities, Unit unit) {
        this.entities = entities;
        this.unit = unit;
    }

    List<PlanPath> paths() throws DrawingFault {
        var paths = new ArrayList<PlanPath>();
        for (at = 0; at < entities.size(); at++) {
            path(entities.get(at)).ifPresent(paths::add);
        }
        return paths;
    }

    private Optional<PlanPath> path(DxfEntity entity) throws DrawingFault {
        return switch (entity.type()) {
            case "LINE" ->
                Optional.of(new PlanPath(
                        entity.layer(), List.of(point(entity, 10, 20, 1), point(entity, 11, 21, 1)), false));
            case "LWPOLYLINE" -> Optional.of(light(entity));
            case "POLYLINE" -> old(entity);
            case "ARC" -> Optional.of(arc(entity, entity.needed(50), entity.needed(51), false));
            case "CIRCLE" -> Optional.of(arc(entity, 0, 360, true));
            default -> Optional.empty();
        };
    }

    private PlanPath light(DxfEntity entity) throws DrawingFault {
        double mirror = mirror(entity);
        var corners = new ArrayList<Vector2D>();
        var bulges = new ArrayList<Double>();
        double x = 0;
        for (DxfPair group : entity.groups()) {
            switch (group.code()) {
                case 10 -> x = mirror * mm(group.number()) + 0.0;
                case 20 -> {
                    corners.add(Vector2D.of(x, mm(group.number())));
                    bulges.add(0.0);
                }
                case 42 -> bulges.set(last(bulges, group), mirror * group.number());
                default -> {}
            }
        }
        boolean closed = (entity.whole(70, 0) & CLOSED) != 0;
        return new PlanPath(entity.layer(), bent(corners, bulges, closed), closed);
    }

    private static int last(List<Double> bulges, DxfPair group) throws DrawingFault {
        if (bulges.isEmpty()) {
            throw DrawingFault.error("line " + group.line() + ": a bulge before any corner.", "Save the file anew.");
        }
        return bulges.size() - 1;
    }

    private Optional<PlanPath> old(DxfEntity entity) throws DrawingFault {
        double mirror = mirror(entity);
        int flags = entity.whole(70, 0);
        var corners = new ArrayList<Vector2D>();
        var bulges = new ArrayList<Double>();
        while (at + 1 < entities.size() && entities.get(at + 1).type().equals("VERTEX")) {
            at++;
            DxfEntity vertex = entities.get(at);
            if ((vertex.whole(70, 0) & FRAME_POINT) == 0) {
                corners.add(point(vertex, 10, 20, mirror));
                bulges.add(mirror * vertex.number(42, 0));
            }
        }
        boolean closed = (flags & CLOSED) != 0;
        return (flags & NO_PLAN_LINE) != 0
                ? Optional.empty()
                : Optional.of(new PlanPath(entity.layer(), bent(corners, bulges, closed), closed));
    }

    private PlanPath arc(DxfEntity entity, double fromDeg, double toDeg, boolean closed) throws DrawingFault {
        double mirror = mirror(entity);
        double turnDeg = toDeg - fromDeg;
        turnDeg = closed ? 360 : turnDeg <= 0 ? turnDeg + 360 : turnDeg;
        double radius = mm(entity.needed(40));
        var arc = new Arc(Vector2D.ZERO, radius, StrictMath.toRadians(fromDeg), StrictMath.toRadians(turnDeg));
        Vector2D centre = point(entity, 10, 20, 1);
        var corners = new ArrayList<Vector2D>(List.of(arc.start()));
        corners.addAll(arc.between());
        if (!closed) {
            corners.add(arc.end());
        }
        List<Vector2D> placed = corners.stream()
                .map(corner -> corner.add(centre))
                .map(corner -> Vector2D.of(mirror * corner.getX(), corner.getY()))
                .toList();
        return new PlanPath(entity.layer(), placed, closed);
    }

    private static List<Vector2D> bent(List<Vector2D> corners, List<Double> bulges, boolean closed) {
        var bent = new ArrayList<Vector2D>();
        for (int i = 0; i < corners.size(); i++) {
            Vector2D here = corners.get(i);
            bent.add(here);
            Vector2D next = corners.get((i + 1) % corners.size());
            boolean side = closed || i + 1 < corners.size();
            if (side && Math.abs(bulges.get(i)) > 1e-12 && !here.equals(next)) {
                bent.addAll(Arc.bulged(here, next, bulges.get(i)).between());
            }
        }
        return bent;
    }

    /** Seen from below, x runs the other way; anything slanted is no plan. */
    private static double mirror(DxfEntity entity) throws DrawingFault {
        double up = entity.number(230, 1);
        if (Math.abs(up) < UPRIGHT) {
            throw DrawingFault.error(
                    "a " + entity.type() + " on layer " + entity.layer() + " is drawn on a slant.", "Draw it in plan.");
        }
        return Math.signum(up);
    }

    private Vector2D point(DxfEntity entity, int codeX, int codeY, double mirror) throws DrawingFault {
        return Vector2D.of(mirror * mm(entity.needed(codeX)) + 0.0, mm(entity.needed(codeY)));
    }

    private double mm(double drawn) throws DrawingFault {
        double mm = unit.toBase(drawn) + 0.0;
        if (!(Math.abs(mm) < 1e9)) {
            throw DrawingFault.error("a corner lies beyond any house.", "Is the unit right? State it: unit: mm.");
        }
        return mm;
    }
}
