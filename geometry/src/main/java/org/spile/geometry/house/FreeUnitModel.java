package org.spile.geometry.house;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Way;

/** A freed unit of a house that adds up without what was left out. */
record FreeUnitModel(UnitPlace unit, House house, List<String> leftOut, RestingHeights heights) implements FreeUnit {
    FreeUnitModel {
        leftOut = List.copyOf(leftOut);
    }

    @Override
    public String id() {
        return unit.id();
    }

    @Override
    public String trailer() {
        return unit.trailer();
    }

    @Override
    public String in() {
        return unit.stood().in().id();
    }

    @Override
    public Vector3D place() {
        return unit.stood().shape().body().bounds().middle();
    }

    @Override
    public double yawDeg() {
        Vector3D front = unit.stood().toTrailer(Way.FORWARD);
        double deg = Math.toDegrees(StrictMath.atan2(front.getY(), front.getX()));
        double fine = Math.rint(deg * 1e9) / 1e9;
        return fine < 0 ? fine + 360 : fine + 0.0;
    }

    @Override
    public Optional<List<RestingPlace>> resting(
            double minX, double minY, double maxX, double maxY, double alongXMm, double alongYMm) {
        return heights.over(minX, minY, maxX, maxY, alongXMm, alongYMm);
    }
}
