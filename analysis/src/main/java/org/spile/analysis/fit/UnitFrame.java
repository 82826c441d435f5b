package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Which way a unit's faces look in the site frame: its front is where it blows to, and its left is on the left of somebody
 * who looks that way.
 *
 * @param front unit vector
 * @param left unit vector
 * @param up unit vector
 */
record UnitFrame(Vector3D front, Vector3D left, Vector3D up) {

    /** The frame of a unit that is there. */
    static UnitFrame of(Scene scene, String unit) {
        return new UnitFrame(way(scene, unit, "front"), way(scene, unit, "left"), way(scene, unit, "top"));
    }

    private static Vector3D way(Scene scene, String unit, String face) {
        return scene.outward(unit, face)
                .orElseThrow(() -> new IllegalArgumentException("no face \"" + face + "\" of unit \"" + unit + "\""));
    }

    /** The face of the box round a body that a face word names. */
    Face face(String word, Body body) {
        Vector3D normal = normal(word);
        boolean level = !word.equals("top") && !word.equals("bottom");
        boolean fore = word.equals("front") || word.equals("rear");
        Vector3D sideA = fore ? left : front;
        Vector3D sideB = level ? up : left;
        double out = reach(body, normal);
        double in = -reach(body, normal.negate());
        double aLow = -reach(body, sideA.negate());
        double aHigh = reach(body, sideA);
        double bLow = -reach(body, sideB.negate());
        double bHigh = reach(body, sideB);
        Vector3D middle =
                normal.multiply(out).add(sideA.multiply((aLow + aHigh) / 2)).add(sideB.multiply((bLow + bHigh) / 2));
        return new Face(
                word, middle, normal, sideA.multiply((aHigh - aLow) / 2), sideB.multiply((bHigh - bLow) / 2), out - in);
    }

    /** The outward direction of a face. */
    Vector3D normal(String word) {
        return switch (word) {
            case "front" -> front;
            case "rear" -> front.negate();
            case "left" -> left;
            case "right" -> left.negate();
            case "top" -> up;
            case "bottom" -> up.negate();
            default ->
                throw new IllegalArgumentException(
                        "a unit has no face \"" + word + "\"; its faces are front, rear, left, right, top and bottom");
        };
    }

    /** How far a body reaches in a direction, measured from the origin (mm). */
    static double reach(Body body, Vector3D direction) {
        double far = Double.NEGATIVE_INFINITY;
        for (Solid solid : body.solids()) {
            for (ConvexCore core : solid.cores()) {
                double reach = core.reach(direction.getX(), direction.getY(), direction.getZ());
                far = Math.max(far, reach + core.roundMm());
            }
        }
        return far;
    }
}
