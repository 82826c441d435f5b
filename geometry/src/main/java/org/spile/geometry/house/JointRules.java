package org.spile.geometry.house;

import java.util.List;
import org.spile.geometry.house.duct.Screws;
import org.spile.geometry.house.duct.Vanes;
import org.spile.geometry.house.told.ToldRun;

/** What stands into a run at its joints must leave air a way through: screws and vanes that don't are refused. */
final class JointRules {
    private final Pathway way;
    private final ToldRun run;
    private final Readings readings;
    private final Troubles troubles;

    JointRules(Pathway way, ToldRun run, Readings readings, Troubles troubles) {
        this.way = way;
        this.run = run;
        this.readings = readings;
        this.troubles = troubles;
    }

    void check() {
        Screws screws = way.screws(run, readings);
        boolean sound = run.screws().isEmpty() || tips(screws);
        for (int i = 0; i < way.legs().size() && sound; i++) {
            sound = free(way.legs().get(i), way.vanes(i, run, readings), screws, i);
        }
    }

    /** Whether screws from both sides pass each other everywhere; told once, where it is narrowest. */
    private boolean tips(Screws screws) {
        double least = Double.POSITIVE_INFINITY;
        Leg narrowest = way.legs().get(0);
        for (Leg leg : way.legs()) {
            for (Cross section : List.of(leg.start(), leg.end())) {
                double side = section.sizes().values().stream()
                        .mapToDouble(size -> size.valueMm())
                        .min()
                        .orElseThrow();
                if (side < least) {
                    least = side;
                    narrowest = leg;
                }
            }
        }
        if (2 * screws.tipMm() < least) {
            return true;
        }
        troubles.wrong(
                run.screws().orElseThrow().tip().path(),
                "screw tips of " + AxisPlacing.number(screws.tipMm()) + " meet in the middle of "
                        + AxisPlacing.number(least) + " of duct at " + narrowest.path(),
                "A tip stands in less than half the duct's shorter clear side, " + AxisPlacing.number(least / 2)
                        + " there.");
        return false;
    }

    /** Whether what stands in at a leg's start leaves anything. */
    private boolean free(Leg leg, Vanes vanes, Screws screws, int i) {
        var section = leg.start().section();
        double area = section.areaMm2();
        double taken = screws.coveredMm2(section.perimeterMm());
        if (taken >= area) {
            troubles.wrong(
                    run.screws().orElseThrow().apart().path(),
                    screws.count(section.perimeterMm()) + " screw tips cover all of the duct at " + leg.path(),
                    "Set them farther apart, or let shorter ones stand in.");
            return false;
        }
        if (vanes.count() == 0) {
            return true;
        }
        double inPlane = leg.start().size(way.legs().get(i - 1).way().axis()).valueMm();
        double shut = vanes.count() * vanes.thickMm();
        if (shut < inPlane * (1 - taken / area)) {
            return true;
        }
        troubles.wrong(
                run.vanes().thick().path(),
                vanes.count() + " vanes of " + AxisPlacing.number(vanes.thickMm()) + " fill the bend before "
                        + leg.path() + ", " + AxisPlacing.number(inPlane) + " across",
                "Make them thinner or set them farther apart (vanes: {apart: 38, thick: 0.6}).");
        return false;
    }
}
