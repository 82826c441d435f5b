package org.spile.geometry.house.spot;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Move;
import org.spile.geometry.kernel.solid.Solid;

/**
 * A body, and how each of its points moves with the readings.
 *
 * @param body the nominal body
 * @param give what its points rest on
 */
public record Shape(Body body, Give give) {
    /**
     * Several as one.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Shape union(List<Shape> shapes) {
        if (shapes.size() == 1) {
            return shapes.get(0);
        }
        List<Solid> solids = new ArrayList<>();
        shapes.forEach(shape -> solids.addAll(shape.body.solids()));
        return new Shape(new Body(solids), new Nearest(List.copyOf(shapes)));
    }

    /** The shape after a motion. */
    public Shape moved(Rigid rigid) {
        return rigid.isNone() ? this : new Shape(body.moved(rigid.nominal()), new Carried(give, rigid));
    }

    private record Nearest(List<Shape> shapes) implements Give {
        @Override
        public Spot at(Vector3D point) {
            Give best = shapes.get(0).give;
            double least = best.outsideMm(point);
            for (Shape shape : shapes) {
                double outside = shape.give.outsideMm(point);
                if (outside < least) {
                    least = outside;
                    best = shape.give;
                }
            }
            return best.at(point);
        }

        @Override
        public double outsideMm(Vector3D point) {
            return shapes.stream()
                    .mapToDouble(shape -> shape.give.outsideMm(point))
                    .min()
                    .orElseThrow();
        }

        @Override
        public boolean meets(Vector3D from, Vector3D to) {
            return shapes.stream().anyMatch(shape -> shape.give.meets(from, to));
        }
    }

    private record Carried(Give give, Rigid rigid) implements Give {
        @Override
        public Spot at(Vector3D point) {
            Vector3D home = rigid.nominal().inverse().apply(point);
            return rigid.apply(give.at(home)).exactly(point);
        }

        @Override
        public double outsideMm(Vector3D point) {
            return give.outsideMm(rigid.nominal().inverse().apply(point));
        }

        @Override
        public boolean meets(Vector3D from, Vector3D to) {
            Move home = rigid.nominal().inverse();
            return give.meets(home.apply(from), home.apply(to));
        }
    }
}
