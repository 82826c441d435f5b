package org.spile.geometry.kernel.clearance;

import java.util.List;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Move;

/**
 * Several travels at once: a leaf that turns on a deck that slides. Its parameter is the share of the way, 0 to 1, that each
 * link has gone of its own range.
 *
 * @param links the innermost first: what it moves rides the next one
 */
public record Chain(List<Link> links) implements Travel {
    /**
     * One link.
     *
     * @param travel how it moves, with what it carries where it lies
     * @param from its own parameter at the start
     * @param to its own parameter at the end
     */
    public record Link(Travel travel, double from, double to) {
        private double parameter(double share) {
            return from + share * (to - from);
        }

        private double fastest(Box3 bounds, double strayMm) {
            return Math.abs(to - from) * travel.speedMm(bounds, strayMm);
        }

        /** How far any point may be from where it lies, anywhere on the way. */
        private double farthest(Box3 bounds, double strayMm) {
            return Math.max(Math.abs(from), Math.abs(to)) * travel.speedMm(bounds, strayMm);
        }
    }

    /**
     * Takes the links in order.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Chain {
        links = List.copyOf(links);
        if (links.isEmpty()) {
            throw new IllegalArgumentException("a chain needs at least one link");
        }
    }

    @Override
    public Move at(double parameter) {
        return links.stream()
                .map(link -> link.travel().at(link.parameter(parameter)))
                .reduce(Move.identity(), Move::then);
    }

    /** The links' speeds add up, each with the farthest that the inner ones carry a point out. */
    @Override
    public double speedMm(Box3 bounds, double strayMm) {
        double speed = 0;
        double stray = strayMm;
        for (Link link : links) {
            speed += link.fastest(bounds, stray);
            stray += link.farthest(bounds, stray);
        }
        return speed;
    }

    /** What it is in the middle of the range, and no more than the speed allows from there. */
    @Override
    public double reachMm(ConvexCore core, double nx, double ny, double nz, double from, double to) {
        double half = (to - from) / 2;
        Move middle = at(from + half);
        Vector3D n = Vector3D.of(nx, ny, nz);
        Vector3D own = middle.inverse().applyDirection(n);
        double reach =
                core.reach(own.getX(), own.getY(), own.getZ()) + middle.shift().dot(n);
        return reach + half * speedMm(corners(core), core.discMm());
    }

    private static Box3 corners(ConvexCore core) {
        Box3 box = null;
        for (int i = 0; i < core.count(); i++) {
            Box3 corner = new Box3(core.x(i), core.y(i), core.z(i), core.x(i), core.y(i), core.z(i));
            box = box == null ? corner : box.with(corner);
        }
        return box;
    }

    @Override
    public List<Double> knots(double from, double to) {
        TreeSet<Double> knots = new TreeSet<>(List.of(from, to));
        for (Link link : links) {
            double way = link.to() - link.from();
            if (way != 0) {
                double one = link.parameter(from);
                double other = link.parameter(to);
                for (double own : link.travel().knots(Math.min(one, other), Math.max(one, other))) {
                    knots.add(Math.max(from, Math.min(to, (own - link.from()) / way)));
                }
            }
        }
        return List.copyOf(knots);
    }
}
