package org.spile.analysis.fit;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Part;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/** A cavity between two level linings. */
record FlatCavity(String id, Outline outline, Stack floor, Stack roof, boolean hasCeiling, String over)
        implements CavitySpace {
    @Override
    public String path() {
        return "cavities." + id;
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
    public Depth leastDepth(Outline footprint) {
        double x = (footprint.minX() + footprint.maxX()) / 2;
        double y = (footprint.minY() + footprint.maxY()) / 2;
        return new Depth(Vector3D.of(x, y, floor.valueMm()), Vector3D.of(x, y, roof.valueMm()), roof.minus(floor));
    }

    @Override
    public List<Outline> shallower(double depthMm) {
        return roof.minus(floor).valueMm() < depthMm ? List.of(outline) : List.of();
    }

    @Override
    public List<Part> linings() {
        return List.of();
    }

    @Override
    public String dropPath() {
        return path() + ".ceiling.drop";
    }
}
