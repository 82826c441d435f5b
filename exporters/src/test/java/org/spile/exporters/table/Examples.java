package org.spile.exporters.table;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.finding.Where;

/** Findings of each verdict, their numbers worked by hand: 2244 - 48 - 200 - 1962 - 19 - 6 = 9, and 15 are asked. */
final class Examples {
    private Examples() {}

    static Report report() {
        return new Report(
                "1.2.3",
                "station/house.yaml",
                "Saltmarsh field station",
                List.of("thin-foam"),
                List.of("parked", "shaded"),
                Findings.of(List.of(fails(), tight(), passes(), open())));
    }

    static Finding fails() {
        return new Finding(
                "fit.clearance/units.cooler/cavities.lobby-top.ceiling",
                "fit.clearance",
                "units.cooler",
                Optional.of("cavities.lobby-top.ceiling"),
                List.of("parked", "shaded"),
                List.of(),
                Verdict.FAILS,
                mm(9),
                mm(15),
                mm(-6),
                mm(-16.5),
                mm(-11.9),
                List.of(
                        layer("trailers.bunk.roof.profile[2].up", 1, 2244, 3, ""),
                        layer("units.cooler.at.top", -1, 48, 2, ""),
                        layer("units.cooler.high", -1, 200, 1, "maker"),
                        layer("cavities.lobby-top.ceiling.at", -1, 1962, 3, "measured"),
                        layer("cavities.lobby-top.ceiling.linings[1].batten", -1, 19, 1, ""),
                        layer("cavities.lobby-top.ceiling.linings[2].ply", -1, 6, 0.5, "")),
                Optional.of(Vector3D.of(610, -460.25, 1996)),
                Optional.of(Vector3D.of(610, -460.25, 1987)),
                Optional.empty(),
                "Between the cooler's underside and the ceiling's battens are 9 mm; its maker asks for 15 mm.",
                List.of("trailers.bunk.roof.profile[2].up"),
                List.of(
                        new Remedy(
                                "Lower the ceiling of lobby-top by 16.5 mm.",
                                List.of("cavities.lobby-top.ceiling.drop=16.5")),
                        new Remedy(
                                "Take thinner linings.",
                                List.of(
                                        "cavities.lobby-top.ceiling.linings[1].batten=8.5",
                                        "cavities.lobby-top.ceiling.linings[2].ply=0"))),
                "maker's, house file: units.cooler.clearance.bottom");
    }

    static Finding tight() {
        return new Finding(
                "fit.clearance/runs.lab-supply.path[3]/fixtures.rail",
                "fit.clearance",
                "runs.lab-supply.path[3]",
                Optional.of("fixtures.rail"),
                List.of("parked"),
                List.of("day"),
                Verdict.TIGHT,
                mm(7.4),
                mm(5),
                mm(2.4),
                mm(-0.6),
                Optional.empty(),
                List.of(layer("fixtures.rail.high", -1, 144, 2, "assumed")),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Where("runs.lab-supply", "path[3]", Quantity.mm(845))),
                "The duct passes the rail at 7.4 mm.",
                List.of(),
                List.of(),
                "house file: limits.clearance");
    }

    static Finding passes() {
        return new Finding(
                "fit.depth/units.cooler/cavities.lobby-top",
                "fit.depth",
                "units.cooler",
                Optional.of("cavities.lobby-top"),
                List.of("parked"),
                List.of(),
                Verdict.PASSES,
                mm(232),
                mm(230),
                mm(2),
                mm(2),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "The cavity is deep enough.",
                List.of(),
                List.of(),
                "maker's, house file: units.cooler.void");
    }

    /** Passes without a number: there is nothing to be too near to. */
    static Finding free() {
        return new Finding(
                "fit.maker/units.cooler.clearance.front",
                "fit.maker",
                "units.cooler",
                Optional.empty(),
                List.of("parked"),
                List.of(),
                Verdict.PASSES,
                Optional.empty(),
                mm(500),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "nothing lies in front of cooler.",
                List.of(),
                List.of(),
                "maker's, house file: units.cooler.clearance.front");
    }

    static Finding open() {
        return Finding.open("tow", "trailers", Optional.of("masses"), "What the coupling carries needs masses.");
    }

    private static Layer layer(String path, double factor, double size, double tolerance, String origin) {
        return new Layer(path, factor, Quantity.mm(size), tolerance, tolerance, Math.abs(factor) * tolerance, origin);
    }

    private static Optional<Quantity> mm(double number) {
        return Optional.of(Quantity.mm(number));
    }
}
