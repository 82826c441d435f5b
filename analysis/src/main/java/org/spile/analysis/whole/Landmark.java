package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Mouth;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/**
 * Something a tape can run to: a solid of a part, or an opening.
 *
 * @param id the part's id, or the opening's path
 * @param thing path of the thing it belongs to
 * @param trailer id of the trailer it is on
 * @param kind what it is a part of; an opening counts as {@link PartKind#TERMINAL}
 * @param box round it, in its trailer's frame (mm)
 */
record Landmark(String id, String thing, String trailer, PartKind kind, Box3 box) {
    /** Every landmark of a scene, by a name that the same landmark has in a what-if. */
    static Map<String, Landmark> of(Scene scene) {
        Map<String, Landmark> all = new LinkedHashMap<>();
        for (Part part : scene.parts()) {
            Move home = home(scene, part.trailer());
            int number = 0;
            for (var solid : part.body().solids()) {
                Box3 box = solid.moved(home).bounds();
                all.put(
                        part.id() + " " + number++,
                        new Landmark(part.id(), part.thing(), part.trailer(), part.kind(), box));
            }
        }
        for (Mouth mouth : scene.mouths()) {
            Box3 box = box(mouth, home(scene, mouth.trailer()));
            all.put(
                    "mouth " + mouth.path(),
                    new Landmark(mouth.path(), mouth.thing(), mouth.trailer(), PartKind.TERMINAL, box));
        }
        return all;
    }

    private static Box3 box(Mouth mouth, Move home) {
        double wide = mouth.section().map(Section::wideMm).orElse(0.0) / 2;
        double high = mouth.section().map(Section::highMm).orElse(0.0) / 2;
        Vector3D up = mouth.outward().cross(mouth.side());
        List<Vector3D> corners = new ArrayList<>();
        for (int across : new int[] {-1, 1}) {
            for (int along : new int[] {-1, 1}) {
                corners.add(home.apply(
                        mouth.centre().add(mouth.side().multiply(across * wide)).add(up.multiply(along * high))));
            }
        }
        return corners.stream()
                .map(at -> new Box3(at.getX(), at.getY(), at.getZ(), at.getX(), at.getY(), at.getZ()))
                .reduce(Box3::with)
                .orElseThrow();
    }

    static Move home(Scene scene, String trailer) {
        return scene.trailers().stream()
                .filter(place -> place.id().equals(trailer))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no trailer " + trailer))
                .toSite()
                .inverse();
    }

    /** Whether it is a lining, of which only the inner face is where it is said to be. */
    boolean lining() {
        return kind == PartKind.LINING;
    }

    /** Whether it bounds a space: what a reading of a room moves first. */
    boolean bounds() {
        return lining() || kind == PartKind.SHELL;
    }

    /** How many letters of a reading's path its own has: what is placed by a reading comes before all that goes along. */
    int owned(String path) {
        int letters = 0;
        for (String name : List.of(id, thing)) {
            if (path.startsWith(name + ".") || path.startsWith(name + "[")) {
                letters = Math.max(letters, name.length());
            }
        }
        return letters;
    }

    double awayFrom(Vector3D at) {
        return box.gapTo(new Box3(at.getX(), at.getY(), at.getZ(), at.getX(), at.getY(), at.getZ()));
    }

    /** The point of its box nearest to a point. */
    Vector3D nearest(Vector3D point) {
        return Vector3D.of(
                Math.max(box.minX(), Math.min(box.maxX(), point.getX())),
                Math.max(box.minY(), Math.min(box.maxY(), point.getY())),
                Math.max(box.minZ(), Math.min(box.maxZ(), point.getZ())));
    }

    /** Its least or greatest side along an axis, 0 for x. */
    double side(int axis, boolean greatest) {
        return switch (axis) {
            case 0 -> greatest ? box.maxX() : box.minX();
            case 1 -> greatest ? box.maxY() : box.minY();
            default -> greatest ? box.maxZ() : box.minZ();
        };
    }
}
