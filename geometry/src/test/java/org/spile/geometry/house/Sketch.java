package org.spile.geometry.house;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.ReadResult;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.kernel.clearance.Clearance;
import org.spile.geometry.kernel.clearance.Gap;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Box3;

/** Worked houses, read from the test files. */
final class Sketch {
    private Sketch() {}

    static String text(String name) {
        try (InputStream in = Sketch.class.getResourceAsStream("/org/spile/geometry/file/" + name + ".yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ToldHouse told(String text) {
        ReadResult read = HouseFile.readText("house.yaml", text);
        return assertInstanceOf(ReadResult.Sound.class, read, read::toString).house();
    }

    static House sound(String text) {
        Resolved resolved = House.of(told(text));
        return assertInstanceOf(Resolved.Sound.class, resolved, resolved::toString)
                .house();
    }

    static Scene home(String name) {
        House house = sound(text(name));
        return house.scene(house.stances().get(0));
    }

    static Part part(Scene scene, String id) {
        return scene.part(id).orElseThrow(() -> new AssertionError("no part " + id));
    }

    static Box3 bounds(Scene scene, String id) {
        return part(scene, id).body().bounds();
    }

    /** The gap between two parts, negative where they overlap. */
    static double gap(Scene scene, String a, String b) {
        return gap(part(scene, a), part(scene, b)).lowerMm();
    }

    static Gap gap(Part a, Part b) {
        return Clearance.between(a.body(), b.body());
    }

    /** The gap of two parts along their witness points, as a sum of readings. */
    static Stack stack(Part a, Part b) {
        Gap gap = gap(a, b);
        Vector3D way = gap.onB().subtract(gap.onA()).normalize();
        return b.flex().along(gap.onB(), way).minus(a.flex().along(gap.onA(), way));
    }
}
