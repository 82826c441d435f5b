package org.spile.geometry.house.duct;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The two ends that meet in a mitre, one after the other. */
final class MitrePassage implements ClearPassage {
    private final ClearPassage before;
    private final ClearPassage after;

    MitrePassage(ClearPassage before, ClearPassage after) {
        this.before = before;
        this.after = after;
    }

    private boolean first(double atMm) {
        return atMm <= before.lengthMm();
    }

    private double rest(double atMm) {
        return atMm - before.lengthMm();
    }

    @Override
    public double lengthMm() {
        return before.lengthMm() + after.lengthMm();
    }

    @Override
    public double areaMm2(double atMm) {
        return first(atMm) ? before.areaMm2(atMm) : after.areaMm2(rest(atMm));
    }

    @Override
    public double perimeterMm(double atMm) {
        return first(atMm) ? before.perimeterMm(atMm) : after.perimeterMm(rest(atMm));
    }

    @Override
    public double wideMm(double atMm) {
        return first(atMm) ? before.wideMm(atMm) : after.wideMm(rest(atMm));
    }

    @Override
    public double highMm(double atMm) {
        return first(atMm) ? before.highMm(atMm) : after.highMm(rest(atMm));
    }

    @Override
    public Vector3D middle(double atMm) {
        return first(atMm) ? before.middle(atMm) : after.middle(rest(atMm));
    }

    @Override
    public List<Vector3D> outline(double atMm) {
        return first(atMm) ? before.outline(atMm) : after.outline(rest(atMm));
    }

    @Override
    public Least least() {
        Least near = before.least();
        Least far = after.least();
        return far.areaMm2() < near.areaMm2() ? new Least(before.lengthMm() + far.atMm(), far.areaMm2()) : near;
    }
}
