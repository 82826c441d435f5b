package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Prism;

/**
 * One face of the box round a thing (site frame, mm).
 *
 * @param word as {@code bottom}
 * @param middle of the face
 * @param normal unit vector, outwards
 * @param halfA half of one side, as a vector in the face
 * @param halfB half of the other side, square to it
 * @param depthMm of the box behind it
 */
record Face(String word, Vector3D middle, Vector3D normal, Vector3D halfA, Vector3D halfB, double depthMm) {
    private static final double UPRIGHT = 1 - 1e-12;
    private static final double THIN_MM = 1;

    /** The room straight out of it, as deep as asked; at least a sheet, so that there is a body to hold against. */
    Body swept(double outMm) {
        return between(0, Math.max(outMm, THIN_MM / 1000));
    }

    /** The opposite face of the same box, still looking this way: where a room stands against what it serves. */
    Face behind() {
        return new Face(word, middle.subtract(normal.multiply(depthMm)), normal, halfA, halfB, depthMm);
    }

    /** A sheet just inside the face, to be moved out of it until it meets something. */
    Body sheet() {
        return between(-Math.min(THIN_MM, depthMm / 2), 0);
    }

    private Body between(double fromMm, double toMm) {
        Vector3D from = middle.add(normal.multiply(fromMm));
        Vector3D to = middle.add(normal.multiply(toMm));
        List<Vector3D> corners = new ArrayList<>(corners(from));
        corners.addAll(corners(to));
        return Body.of(upright(corners));
    }

    /** An upright box is a prism, which the kernel measures exactly and fast. */
    private org.spile.geometry.kernel.solid.Solid upright(List<Vector3D> corners) {
        Vector3D[] axes = {normal, halfA.normalize(), halfB.normalize()};
        for (Vector3D axis : axes) {
            if (Math.abs(axis.getZ()) >= UPRIGHT) {
                return prism(corners);
            }
        }
        return ConvexPolyhedron.hull(corners);
    }

    private static Prism prism(List<Vector3D> corners) {
        double low = corners.stream().mapToDouble(Vector3D::getZ).min().orElseThrow();
        double high = corners.stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
        List<Vector2D> plan = new ArrayList<>();
        for (Vector3D corner : corners) {
            if (corner.getZ() < (low + high) / 2) {
                plan.add(Vector2D.of(corner.getX(), corner.getY()));
            }
        }
        return Prism.of(Outline.of(inTurn(plan)), low, high);
    }

    /** The lower corners of an upright box, put in turn round their middle. */
    private static List<Vector2D> inTurn(List<Vector2D> plan) {
        Vector2D middle = plan.stream().reduce(Vector2D.ZERO, Vector2D::add).multiply(1.0 / plan.size());
        return plan.stream()
                .sorted((one, other) -> Double.compare(turn(one, middle), turn(other, middle)))
                .toList();
    }

    private static double turn(Vector2D corner, Vector2D middle) {
        return StrictMath.atan2(corner.getY() - middle.getY(), corner.getX() - middle.getX());
    }

    private List<Vector3D> corners(Vector3D centre) {
        return List.of(
                centre.subtract(halfA).subtract(halfB),
                centre.add(halfA).subtract(halfB),
                centre.add(halfA).add(halfB),
                centre.subtract(halfA).add(halfB));
    }
}
