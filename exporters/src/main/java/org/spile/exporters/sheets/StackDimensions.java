package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.layout.Side;
import org.spile.geometry.kernel.planar.Outline;

/**
 * The dimensions round a body in a close-up: the stack of faces above and below its middle, its width, and the free room
 * at both sides. Every value runs between two faces that are drawn.
 */
final class StackDimensions {
    private static final double LEAST_MM = 0.05;

    private final Canvas canvas;
    private final List<Outline> others;
    private final Outline body;
    private final String part;
    private final DimensionsOnce dimensions;

    StackDimensions(Canvas canvas, DimensionsOnce dimensions, List<Outline> neighbours, Outline body, String part) {
        this.canvas = canvas;
        this.dimensions = dimensions;
        this.body = body;
        this.part = part;
        this.others =
                neighbours.stream().filter(outline -> !outline.equals(body)).toList();
    }

    void ask() {
        Extent extent = Canvas.extent(body);
        stack(extent);
        width(extent);
    }

    private void stack(Extent extent) {
        List<Double> faces = faces(extent, true);
        chain(faces.stream().map(z -> Vector2D.of(extent.minX(), z)).toList(), Side.LEFT);
    }

    private void width(Extent extent) {
        List<Double> faces = faces(extent, false);
        List<Double> near = new ArrayList<>();
        faces.stream()
                .filter(x -> x < extent.minX() - LEAST_MM)
                .reduce((a, b) -> b)
                .ifPresent(near::add);
        near.add(extent.minX());
        near.add(extent.maxX());
        faces.stream().filter(x -> x > extent.maxX() + LEAST_MM).findFirst().ifPresent(near::add);
        chain(near.stream().map(x -> Vector2D.of(x, extent.minY())).toList(), Side.BELOW);
    }

    private List<Double> faces(Extent extent, boolean upright) {
        List<Outline> all = new ArrayList<>(others);
        all.add(body);
        return Ray.faces(all, extent.middle(), upright).stream()
                .filter(at -> canvas.shows(
                        upright
                                ? Vector2D.of(extent.middle().getX(), at)
                                : Vector2D.of(at, extent.middle().getY())))
                .toList();
    }

    private void chain(List<Vector2D> points, Side side) {
        List<Vector2D> apart = new ArrayList<>();
        for (Vector2D point : points) {
            if (apart.isEmpty() || point.distance(apart.get(apart.size() - 1)) > LEAST_MM) {
                apart.add(point);
            }
        }
        for (int i = 1; i < apart.size(); i++) {
            if (side == Side.LEFT) {
                dimensions.upright(apart.get(i - 1), apart.get(i), side, part);
            } else {
                dimensions.level(apart.get(i - 1), apart.get(i), side, part);
            }
        }
    }
}
