package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.duct.AreaProfile;
import org.spile.analysis.duct.AreaStation;
import org.spile.analysis.duct.PieceArea;
import org.spile.analysis.duct.Pinch;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.layout.Dimension;
import org.spile.exporters.drawing.layout.RunningDimension;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.kernel.measure.Written;

/**
 * A run developed straight, three bands under each other on one line of stations: seen from above, seen from the side, and
 * its clear area.
 *
 * <p>Lengths, widths and heights are to scale; areas have a scale of their own, told by their figures.
 */
final class DevelopedRun {
    private static final double CM2 = 100;

    /** Height of the band of areas, as a share of the run's length. */
    private static final double AREA_SHARE = 0.22;

    /** Nor is it lower than this share of the duct's width, in a short run. */
    private static final double LEAST_SHARE = 0.4;

    private static final double GAP_SHARE = 0.1;

    /** A curve between breakpoints is drawn through so many points. */
    private static final int POINTS = 12;

    /** A stretch shorter than this share of the run has no room for its sizes. */
    private static final double NAMED_SHARE = 0.02;

    private final AreaProfile profile;
    private final DuctRun run;
    private final ViewDraft draft;
    private final double gap;
    private final double areaHigh;

    DevelopedRun(AreaProfile profile, ViewDraft draft) {
        this.profile = profile;
        this.run = profile.run();
        this.draft = draft;
        double wide = most(AreaStation::wideMm);
        this.areaHigh = Math.max(profile.lengthMm() * AREA_SHARE, wide * LEAST_SHARE);
        this.gap = Math.max(profile.lengthMm(), wide) * GAP_SHARE;
    }

    void draw() {
        double wide = most(AreaStation::wideMm);
        double high = most(AreaStation::highMm);
        double above = -wide / 2;
        double side = above - wide / 2 - gap - high / 2;
        double areas = side - high / 2 - gap - areaHigh;
        band(above, AreaStation::wideMm, "from above");
        band(side, AreaStation::highMm, "from the side");
        sizes(above);
        area(areas);
        stations(areas);
    }

    private double most(ToDoubleFunction<AreaStation> size) {
        return profile.breakpoints().stream().mapToDouble(size).max().orElseThrow();
    }

    /** The duct's clear outline about its middle line, with a seam wherever a piece ends. */
    private void band(double middle, ToDoubleFunction<AreaStation> size, String says) {
        Pen pen = Layer.DUCTS.pen().of(run.path());
        for (int sign : new int[] {1, -1}) {
            List<Vector2D> edge = new ArrayList<>();
            for (AreaStation station : profile.breakpoints()) {
                add(edge, Vector2D.of(station.atMm(), middle + sign * size.applyAsDouble(station) / 2));
            }
            draft.path(pen, edge);
        }
        for (double end : ends()) {
            double half = size.applyAsDouble(profile.at(end)) / 2;
            draft.path(
                    Layer.DUCTS.pen().of(run.path()).wide(Pen.NARROW_MM),
                    List.of(Vector2D.of(end, middle - half), Vector2D.of(end, middle + half)));
        }
        double over = gap / 3;
        draft.path(
                Layer.AXES.pen().of(run.path()),
                List.of(Vector2D.of(-over, middle), Vector2D.of(profile.lengthMm() + over, middle)));
        draft.name(says, run.path(), Vector2D.of(-over, middle));
    }

    private static void add(List<Vector2D> line, Vector2D point) {
        if (line.isEmpty() || line.get(line.size() - 1).distance(point) > 1e-6) {
            line.add(point);
        }
    }

    /** Stations at which pieces start and end. */
    private List<Double> ends() {
        List<Double> ends = new ArrayList<>();
        ends.add(0.0);
        for (PieceArea piece : profile.pieces()) {
            if (piece.toMm() - ends.get(ends.size() - 1) > 1e-6) {
                ends.add(piece.toMm());
            }
        }
        return ends;
    }

    /** The sizes of every section that the run keeps for a while, each where it begins to. */
    private void sizes(double middle) {
        String before = "";
        double station = 0;
        for (var leg : run.legs()) {
            String says = says(leg.end());
            boolean kept = !leg.transition() && leg.lengthMm() > profile.lengthMm() * NAMED_SHARE;
            if (kept && !says.equals(before)) {
                draft.name(says, leg.path(), Vector2D.of(station + leg.lengthMm() / 2, middle));
                before = says;
            }
            station += leg.lengthMm();
        }
    }

    private static String says(Section section) {
        return section instanceof Section.Round round
                ? "round " + Written.number(round.diameterMm(), 1)
                : Written.number(section.wideMm(), 1) + " x " + Written.number(section.highMm(), 1);
    }

    private void area(double base) {
        double most = Math.max(most(AreaStation::areaMm2), pipeMm2());
        double scale = areaHigh / most;
        Pen axis = Layer.NOTES.pen();
        draft.path(axis, List.of(Vector2D.of(0, base), Vector2D.of(profile.lengthMm(), base)));
        draft.path(axis, List.of(Vector2D.of(0, base), Vector2D.of(0, base + most * scale)));
        List<Vector2D> curve = new ArrayList<>();
        for (PieceArea piece : profile.pieces()) {
            for (int i = 0; i <= POINTS; i++) {
                double at = piece.fromMm() + (piece.toMm() - piece.fromMm()) * i / POINTS;
                // Of two sections that meet in a seam the first is told: a hair past it lies the second.
                double inside = i == 0 ? at + 1e-6 : at;
                add(curve, Vector2D.of(at, base + profile.at(inside).areaMm2() * scale));
            }
        }
        draft.path(Layer.DUCTS.pen().of(run.path()), curve);
        run.replacesMm().ifPresent(mm -> {
            double level = base + pipeMm2() * scale;
            draft.path(
                    Layer.BEYOND.pen().as(LineType.DASHED),
                    List.of(Vector2D.of(0, level), Vector2D.of(profile.lengthMm(), level)));
            draft.name(
                    "round " + Written.number(mm, 1) + ": " + cm2(pipeMm2()),
                    run.path() + ".replaces",
                    Vector2D.of(profile.lengthMm() * 0.9, level));
        });
        for (Pinch pinch : profile.pinches()) {
            double level = base + pinch.areaMm2() * scale;
            draft.path(
                    Layer.FINDINGS.pen().of(pinch.path()),
                    List.of(Vector2D.of(pinch.fromMm(), level), Vector2D.of(pinch.toMm(), level)));
            draft.name(
                    (pinch.least() ? "least: " : "") + cm2(pinch.areaMm2()) + ", by " + pinch.by(),
                    pinch.path(),
                    Vector2D.of(pinch.middleMm(), level));
        }
        draft.name("clear area, 0 to " + cm2(most), run.path(), Vector2D.of(0, base + most * scale));
    }

    private double pipeMm2() {
        return run.replacesMm().map(mm -> new Section.Round(mm).areaMm2()).orElse(0.0);
    }

    private static String cm2(double mm2) {
        return Written.number(mm2 / CM2, 1) + " cm2";
    }

    private void stations(double base) {
        List<Vector2D> features =
                ends().stream().skip(1).map(end -> Vector2D.of(end, base)).toList();
        draft.running(new RunningDimension(Vector2D.of(0, base), features, Side.BELOW, run.path()));
        double wide = most(AreaStation::wideMm);
        draft.dimension(
                Dimension.level(Vector2D.of(0, -wide / 2), Vector2D.of(profile.lengthMm(), -wide / 2), Side.ABOVE)
                        .of(run.path()));
    }
}
