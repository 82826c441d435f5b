package org.spile.analysis.place;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.FreeUnit;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/**
 * Where to look for places, in the frame of the unit's trailer: where the box round the unit stays within the bounds of the
 * cavity it is in, or its middle within its room. A unit in no room or cavity may stand outside its trailer too, as far as it
 * reaches itself.
 */
record Window(double minX, double minY, double maxX, double maxY) {
    static Window of(FreeUnit unit, String path, Scene scene, Setting setting) {
        Move move = setting.toTrailer();
        for (var cavity : scene.cavities()) {
            if (cavity.id().equals(unit.in())) {
                return round(turned(cavity.outline(), move)).less(setting.box());
            }
        }
        for (var room : scene.rooms()) {
            if (room.id().equals(unit.in())) {
                return round(turned(room.outline(), move));
            }
        }
        Box3 box = setting.box();
        double reach = Math.max(box.maxX() - box.minX(), box.maxY() - box.minY());
        Vector3D now = unit.place();
        Box3 there = new Box3(now.getX(), now.getY(), now.getZ(), now.getX(), now.getY(), now.getZ());
        for (var part : scene.parts()) {
            if (part.kind() == PartKind.SHELL && part.trailer().equals(unit.trailer())) {
                there = there.with(setting.fixed(part.body()).bounds());
            }
        }
        return new Window(there.minX() - reach, there.minY() - reach, there.maxX() + reach, there.maxY() + reach);
    }

    private Window less(Box3 box) {
        return new Window(minX - box.minX(), minY - box.minY(), maxX - box.maxX(), maxY - box.maxY());
    }

    /** Whether there is nowhere to look, as the unit is larger than what it is in. */
    boolean isEmpty() {
        return minX > maxX || minY > maxY;
    }

    /** By how much the unit is too long or too wide (mm). */
    double lacksMm() {
        return Math.max(minX - maxX, minY - maxY);
    }

    /** The same, a line made wide enough to hold an area. */
    Window atLeast(double mm) {
        double x = Math.max(0, mm - (maxX - minX)) / 2;
        double y = Math.max(0, mm - (maxY - minY)) / 2;
        return new Window(minX - x, minY - y, maxX + x, maxY + y);
    }

    private static Outline turned(Outline plan, Move move) {
        return plan.mapped(
                move.rotation(0, 0),
                move.rotation(0, 1),
                move.rotation(1, 0),
                move.rotation(1, 1),
                move.shift().getX(),
                move.shift().getY());
    }

    private static Window round(Outline plan) {
        return new Window(plan.minX(), plan.minY(), plan.maxX(), plan.maxY());
    }
}
