package org.spile.geometry.kernel.planar;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Point;

/**
 * The place of a free plan that is farthest from its border.
 *
 * @param place the place, to {@link #FINE_MM}
 * @param roomMm how far one may go from there any way; 0 on a line or point
 */
public record Roomiest(Vector2D place, double roomMm) {
    /** How near to the very best the place is, in mm. */
    public static final double FINE_MM = 0.05;

    /** The roomiest place; of equals the first; nothing if nothing is free. */
    public static Optional<Roomiest> of(FreePlan free) {
        Optional<Roomiest> inArea =
                free.areas().stream().map(Roomiest::in).max(Comparator.comparingDouble(Roomiest::roomMm));
        return inArea.or(() -> free.lines().stream()
                        .max(Comparator.comparingDouble(line -> line.get(0).distance(line.get(line.size() - 1))))
                        .map(line -> new Roomiest(halfway(line), 0)))
                .or(() -> free.points().stream().findFirst().map(point -> new Roomiest(point, 0)));
    }

    private static Roomiest in(Outline area) {
        MaximumInscribedCircle circle = new MaximumInscribedCircle(JtsShapes.polygon(area), FINE_MM);
        Point centre = circle.getCenter();
        double room = circle.getRadiusLine().getLength();
        return new Roomiest(Rims.onGrid(centre.getX(), centre.getY()), room);
    }

    private static Vector2D halfway(List<Vector2D> line) {
        Vector2D a = line.get((line.size() - 1) / 2);
        Vector2D b = line.get(line.size() / 2);
        return line.size() % 2 == 1 ? a : a.lerp(b, 0.5);
    }
}
