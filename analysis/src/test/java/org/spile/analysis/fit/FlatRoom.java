package org.spile.analysis.fit;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.CavitySpace.Depth;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** A room under a level ceiling. */
record FlatRoom(String id, Outline outline, Stack floor, Stack ceiling) implements RoomSpace {
    @Override
    public String path() {
        return "rooms." + id;
    }

    @Override
    public String title() {
        return id;
    }

    @Override
    public String trailer() {
        return "bunk";
    }

    @Override
    public Depth leastHeight(Outline footprint) {
        double x = (footprint.minX() + footprint.maxX()) / 2;
        double y = (footprint.minY() + footprint.maxY()) / 2;
        return new Depth(
                Vector3D.of(x, y, floor.valueMm()), Vector3D.of(x, y, ceiling.valueMm()), ceiling.minus(floor));
    }
}
