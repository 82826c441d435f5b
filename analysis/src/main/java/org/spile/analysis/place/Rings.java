package org.spile.analysis.place;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.fit.Ban;
import org.spile.geometry.house.RestingPlace;
import org.spile.geometry.kernel.clearance.GlidePlane;
import org.spile.geometry.kernel.clearance.TooNear;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Solid;

/** The places that bans forbid on one piece of the plan. */
final class Rings {
    private final TooNear tooNear = new TooNear();

    /** The forbidden places of two bodies that reach into a piece. */
    List<List<Vector2D>> of(Setting setting, Ban.Apart apart, RestingPlace piece) {
        Body moving = setting.moving(apart.moving());
        Body fixed = setting.fixed(apart.fixed());
        List<List<Vector2D>> rings = new ArrayList<>();
        for (Solid mine : moving.solids()) {
            for (Solid other : fixed.solids()) {
                if (reaches(mine.bounds(), other.bounds(), apart.distanceMm(), piece)) {
                    rings.addAll(tooNear.places(mine, other, apart.distanceMm(), piece.height()));
                }
            }
        }
        return rings;
    }

    private static boolean reaches(Box3 mine, Box3 other, double distanceMm, RestingPlace piece) {
        double out = Math.max(0, distanceMm);
        Outline over = piece.over();
        GlidePlane height = piece.height();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Vector2D corner : over.shell()) {
            double lift = height.at(corner.getX(), corner.getY());
            least = Math.min(least, lift);
            most = Math.max(most, lift);
        }
        return over.minX() + mine.minX() < other.maxX() + out
                && over.maxX() + mine.maxX() > other.minX() - out
                && over.minY() + mine.minY() < other.maxY() + out
                && over.maxY() + mine.maxY() > other.minY() - out
                && least + mine.minZ() < other.maxZ() + out
                && most + mine.maxZ() > other.minZ() - out;
    }
}
