package org.spile.geometry.house.duct;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A bend round a centre: its section is the same all the way, its path a quarter of a circle. */
final class ArcPassage implements ClearPassage {
    private static final int QUARTER = 7;

    private final Vector3D centre;
    private final Vector3D in;
    private final Vector3D out;
    private final Lie lie;
    private final Clear clear;
    private final double radiusMm;
    private final double areaMm2;
    private final double perimeterMm;

    /**
     * @param before leg into the bend
     * @param after leg out of it, whose start section it has
     * @param radiusMm of the middle line
     */
    ArcPassage(DuctLeg before, DuctLeg after, double radiusMm) {
        this.in = before.axis();
        this.out = after.axis();
        this.centre = after.from().subtract(in.multiply(radiusMm)).add(out.multiply(radiusMm));
        this.lie = Lie.across(out);
        this.clear = Clear.of(after.start());
        this.radiusMm = radiusMm;
        this.areaMm2 = clear.areaMm2();
        this.perimeterMm = after.start().perimeterMm();
    }

    @Override
    public double lengthMm() {
        return radiusMm * Math.PI / 2;
    }

    @Override
    public double areaMm2(double atMm) {
        return areaMm2;
    }

    @Override
    public double perimeterMm(double atMm) {
        return perimeterMm;
    }

    @Override
    public double wideMm(double atMm) {
        return clear.wideMm();
    }

    @Override
    public double highMm(double atMm) {
        return clear.highMm();
    }

    @Override
    public Vector3D middle(double atMm) {
        return centre.add(spoke(angle(atMm)).multiply(radiusMm));
    }

    private double angle(double atMm) {
        return Math.max(0, Math.min(Math.PI / 2, atMm / radiusMm));
    }

    /** From the centre of the bend to its middle line. */
    private Vector3D spoke(double angle) {
        return in.multiply(Math.sin(angle)).subtract(out.multiply(Math.cos(angle)));
    }

    /** The section out of the bend, turned back about the bend's centre: what lay along {@code in} lies along the spoke. */
    @Override
    public List<Vector3D> outline(double atMm) {
        Vector3D spoke = spoke(angle(atMm));
        Vector3D first = turned(lie.first(), spoke);
        Vector3D second = turned(lie.second(), spoke);
        Lie here = new Lie(lie.axis(), first, second);
        return SquareStretch.ring(here, middle(atMm), clear, clear.radiusMm() > 0 ? QUARTER : 1);
    }

    private Vector3D turned(Vector3D across, Vector3D spoke) {
        double along = across.dot(in);
        return across.subtract(in.multiply(along)).add(spoke.multiply(along));
    }

    @Override
    public Least least() {
        return new Least(0, areaMm2);
    }
}
