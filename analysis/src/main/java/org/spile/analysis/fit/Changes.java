package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Which parts are elsewhere, or another shape, or gone, or new, from one scene to another. Two parts that aren't among them
 * stand as they stood, so what was found about them still holds.
 */
final class Changes {
    private static final double SAME_MM = 1e-9;

    private final Set<String> ids = new LinkedHashSet<>();
    private final List<Box3> places = new ArrayList<>();

    private Changes() {}

    /**
     * Compares two scenes.
     *
     * @param sways whether units may shift on the road: then they stand less surely there than elsewhere
     */
    static Changes between(Scene before, Scene after, boolean sways) {
        boolean shaken = sways && before.road() != after.road();
        Changes changes = new Changes();
        Map<String, Part> old = new LinkedHashMap<>();
        before.parts().forEach(part -> old.put(part.id(), part));
        for (Part part : after.parts()) {
            Part was = old.remove(part.id());
            if (was == null) {
                changes.add(part);
            } else if ((shaken && part.kind() == PartKind.UNIT) || !same(was.body(), part.body())) {
                changes.add(was);
                changes.add(part);
            }
        }
        old.values().forEach(changes::add);
        return changes;
    }

    private void add(Part part) {
        ids.add(part.id());
        places.add(part.body().bounds());
    }

    /** Whether a part may meet others differently than before. */
    boolean concern(Part part) {
        return ids.contains(part.id());
    }

    /** Whether anything changed over or under a place. */
    boolean concern(Box3 place) {
        return places.stream().anyMatch(changed -> meetInPlan(changed, place));
    }

    private static boolean meetInPlan(Box3 one, Box3 other) {
        return one.minX() <= other.maxX()
                && other.minX() <= one.maxX()
                && one.minY() <= other.maxY()
                && other.minY() <= one.maxY();
    }

    private static boolean same(Body one, Body other) {
        if (one.solids().size() != other.solids().size()) {
            return false;
        }
        for (int i = 0; i < one.solids().size(); i++) {
            if (!same(one.solids().get(i), other.solids().get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(Solid one, Solid other) {
        List<ConvexCore> a = one.cores();
        List<ConvexCore> b = other.cores();
        if (a.size() != b.size()) {
            return false;
        }
        for (int i = 0; i < a.size(); i++) {
            if (!same(a.get(i), b.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(ConvexCore one, ConvexCore other) {
        boolean same = one.count() == other.count()
                && Math.abs(one.discMm() - other.discMm()) <= SAME_MM
                && Math.abs(one.roundMm() - other.roundMm()) <= SAME_MM;
        for (int i = 0; same && i < one.count(); i++) {
            same = Math.abs(one.x(i) - other.x(i)) <= SAME_MM
                    && Math.abs(one.y(i) - other.y(i)) <= SAME_MM
                    && Math.abs(one.z(i) - other.z(i)) <= SAME_MM;
        }
        return same;
    }
}
