package org.spile.geometry.kernel.clearance;

import java.util.List;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;

/** A scene's answers without a tree and without the kernel's distances. */
final class SceneCheck {
    private final BoxScene scene;
    private final BruteForce plain = new BruteForce();

    SceneCheck(BoxScene scene) {
        this.scene = scene;
    }

    int nearPairs(double marginMm) {
        int near = 0;
        for (int i = 0; i < scene.twins.size(); i++) {
            for (int j = i + 1; j < scene.twins.size(); j++) {
                if (near(scene.twins.get(i).plain(), j, marginMm)) {
                    near++;
                }
            }
        }
        return near;
    }

    int nearMoved(int which, Move move, double marginMm) {
        ConvexPolyhedron body = scene.twins.get(which).plain().moved(move);
        int near = 0;
        for (int j = 0; j < scene.twins.size(); j++) {
            if (j != which && near(body, j, marginMm)) {
                near++;
            }
        }
        return near;
    }

    private boolean near(ConvexPolyhedron body, int other, double marginMm) {
        return body.bounds().gapTo(scene.bounds.get(other)) < marginMm
                && plain.signedDistance(body, scene.twins.get(other).plain()) < marginMm;
    }

    int nearBoxes(List<Box3> parts, double marginMm) {
        int near = 0;
        for (Box3 part : parts) {
            for (Box3 box : scene.bounds) {
                if (part.gapTo(box) <= marginMm) {
                    near++;
                }
            }
        }
        return near;
    }

    void count(String what, int found, int plainly) {
        if (found != plainly) {
            throw new IllegalStateException(what + ": " + found + ", one by one " + plainly);
        }
    }
}
