package org.spile.samples.layers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which package may use which other package of ours: one row each, lowest first.
 *
 * <p>A name is relative to the root package; {@code ..} at its end takes in the packages below it. Every package needs a
 * row, and a new arrow between two packages needs a decision record in {@code docs/decisions}.
 */
final class Rows {

    private static final String KERNEL = "geometry.kernel..";
    private static final String HOUSE = "geometry.house..";

    private static final Map<String, List<String>> USES = new LinkedHashMap<>();

    static {
        row("geometry.kernel.measure");
        row("geometry.kernel.planar", "geometry.kernel.measure");
        row("geometry.kernel.solid", "geometry.kernel.measure", "geometry.kernel.planar");
        row("geometry.kernel.clearance", "geometry.kernel.measure", "geometry.kernel.planar", "geometry.kernel.solid");
        row("geometry.house.told", KERNEL);
        row("geometry.house.material", KERNEL, "geometry.house.told");
        row("geometry.house.spot", KERNEL);
        row("geometry.house.duct", KERNEL, "geometry.house.told", "geometry.house.spot");
        row(
                "geometry.house",
                KERNEL,
                "geometry.house.told",
                "geometry.house.spot",
                "geometry.house.duct",
                "geometry.house.material");
        row("geometry.file", KERNEL, HOUSE);

        row("analysis.finding", KERNEL, HOUSE);
        row("analysis.fit", KERNEL, HOUSE, "analysis.finding");
        row("analysis.place", KERNEL, HOUSE, "analysis.finding", "analysis.fit");
        row("analysis.duct", KERNEL, HOUSE, "analysis.finding");
        row("analysis.whole", KERNEL, HOUSE, "analysis.finding", "analysis.fit", "analysis.duct");

        row("exporters.drawing", "geometry.kernel.measure");
        row("exporters.drawing.layout", "geometry.kernel.measure", "exporters.drawing");
        row(
                "exporters.sheets",
                KERNEL,
                HOUSE,
                "analysis.finding",
                "analysis.fit",
                "analysis.duct",
                "analysis.place",
                "analysis.whole",
                "exporters.drawing",
                "exporters.drawing.layout");
        row("exporters.svg", "geometry.kernel.measure", "exporters.drawing");
        row("exporters.dxf", "geometry.kernel.measure", "exporters.drawing");
        row(
                "exporters.table",
                KERNEL,
                "analysis.finding",
                "analysis.fit",
                "analysis.duct",
                "analysis.place",
                "analysis.whole");
        row("exporters", "exporters.drawing", "exporters.svg", "exporters.dxf");
        row("exporters.command", "geometry..", "analysis..", "exporters..");
    }

    private Rows() {}

    private static void row(String name, String... uses) {
        USES.put(name, List.of(uses));
    }

    /** The packages that have a row, lowest first. */
    static List<String> names() {
        return List.copyOf(USES.keySet());
    }

    static boolean has(String name) {
        return USES.containsKey(name);
    }

    /** Whether {@code from} may use {@code to}; every package may use itself. */
    static boolean allows(String from, String to) {
        return from.equals(to) || USES.getOrDefault(from, List.of()).stream().anyMatch(use -> covers(use, to));
    }

    private static boolean covers(String use, String name) {
        if (!use.endsWith("..")) {
            return use.equals(name);
        }
        var stem = use.substring(0, use.length() - 2);
        return name.equals(stem) || name.startsWith(stem + ".");
    }
}
