package org.spile.exporters.sheets;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Scene.TrailerPlace;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Prism;

/** Finds the part that a finding's path and witness point speak of. */
final class Subjects {
    private Subjects() {}

    /** The part of that path whose bounds come nearest to a point. */
    static Optional<Part> partAt(Scene scene, String path, Vector3D point) {
        Optional<Part> exact = scene.part(path);
        if (exact.isPresent()) {
            return exact;
        }
        Box3 there = new Box3(point.getX(), point.getY(), point.getZ(), point.getX(), point.getY(), point.getZ());
        Part best = null;
        double bestMm = Double.POSITIVE_INFINITY;
        for (Part part : scene.parts()) {
            if (part.thing().equals(path) || part.id().startsWith(path + ".")) {
                double mm = part.body().bounds().gapTo(there);
                if (mm < bestMm) {
                    best = part;
                    bestMm = mm;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The last word of a thing's path: what the builder called it. */
    static String name(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Which trailer, in a title: nothing to say of one that is only assumed. */
    static String of(TrailerPlace trailer) {
        return assumed(trailer) ? "" : " of " + trailer.id();
    }

    /** A sheet's or view's own name among those of one kind: one per trailer. */
    static String named(String kind, TrailerPlace trailer) {
        return assumed(trailer) ? kind : kind + "-" + trailer.id();
    }

    private static boolean assumed(TrailerPlace trailer) {
        return trailer.id().equals(House.ASSUMED_TRAILER);
    }

    /** Whether one of two parts may change from one plane to the next, so that a gap between them holds in one only. */
    static boolean changes(Part one, Part other, boolean across) {
        return changes(one, across) || changes(other, across);
    }

    private static boolean changes(Part part, boolean across) {
        boolean upright = part.body().solids().stream().allMatch(Prism.class::isInstance);
        // A roof's or ceiling's profile runs across the trailer: it is the same in every plane across.
        return !upright && !(across && part.kind() == PartKind.LINING);
    }
}
