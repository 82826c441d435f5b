package org.spile.analysis.duct;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.duct.ClearPassage.Least;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctPiece;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Intrusion;
import org.spile.geometry.kernel.measure.Written;

/**
 * Finds where a run is pinched: along its pieces' ends, leasts and intrusions, every stretch lower than what lies before and
 * after it by a share worth naming; and the least of all, also where the run begins or ends with it.
 */
final class Pinches {
    /** Areas nearer than this share are the same. */
    private static final double SAME = 1e-9;
    /** A rise by less than this share doesn't part two pinches: common practice, no source. */
    private static final double WORTH_NAMING = 0.01;

    private final DuctRun run;
    private final List<Level> levels = new ArrayList<>();

    /** A place where the area may turn. */
    private record Level(int piece, double alongMm, double areaMm2, String by) {}

    Pinches(DuctRun run) {
        this.run = run;
        for (int i = 0; i < run.pieces().size(); i++) {
            levels(i, run.pieces().get(i));
        }
    }

    private void levels(int i, DuctPiece piece) {
        double length = piece.lengthMm();
        levels.add(new Level(i, 0, piece.clearAreaMm2(0), ""));
        Least least = piece.clear().least();
        boolean between = least.atMm() > 0 && least.atMm() < length;
        double turn = between ? least.atMm() : length / 2;
        levels.add(new Level(i, turn, piece.clearAreaMm2(turn), ""));
        for (Intrusion in : piece.intrusions()) {
            double clear = piece.clearAreaMm2(in.atMm());
            levels.add(new Level(i, in.atMm(), clear, ""));
            levels.add(new Level(i, in.atMm(), Math.max(0, clear - in.areaMm2()), in.words()));
            levels.add(new Level(i, in.atMm(), clear, ""));
        }
        levels.add(new Level(i, length, piece.clearAreaMm2(length), ""));
    }

    List<Pinch> found() {
        double least = levels.stream().mapToDouble(Level::areaMm2).min().orElseThrow();
        List<Pinch> found = new ArrayList<>();
        boolean named = false;
        int first = 0;
        while (first < levels.size()) {
            double area = levels.get(first).areaMm2();
            int last = first;
            while (last + 1 < levels.size() && same(levels.get(last + 1).areaMm2(), area)) {
                last++;
            }
            boolean lowest = !named && same(area, least);
            boolean valley = rises(first, -1) && rises(last, 1);
            if (lowest || valley) {
                found.add(pinch(first, last, lowest));
                named |= lowest;
            }
            first = last + 1;
        }
        return found;
    }

    /** Whether the area rises enough to speak of before it falls as low again, or the run ends. */
    private boolean rises(int from, int step) {
        double area = levels.get(from).areaMm2();
        for (int i = from + step; i >= 0 && i < levels.size(); i += step) {
            double there = levels.get(i).areaMm2();
            if (there < area || same(there, area)) {
                return false;
            }
            if (there >= area * (1 + WORTH_NAMING)) {
                return true;
            }
        }
        return false;
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= SAME * Math.max(a, b);
    }

    private Pinch pinch(int first, int last, boolean least) {
        double from = station(levels.get(first));
        double to = station(levels.get(last));
        double middle = (from + to) / 2;
        DuctPiece piece = holding(first, last, middle);
        double along = piece.alongMm(middle);
        DuctLeg leg = leg(middle);
        return new Pinch(
                sectionPath(levels.get(first).piece()),
                leg.path(),
                piece.trailer(),
                from,
                to,
                middle - before(leg),
                piece.clear().middle(along),
                levels.get(first).areaMm2(),
                piece.wettedPerimeterMm(along),
                piece.clear().wideMm(along),
                piece.clear().highMm(along),
                by(first, piece, along),
                least);
    }

    private double station(Level level) {
        return run.pieces().get(level.piece()).stationMm(level.alongMm());
    }

    /** The piece of the stretch that holds a station. */
    private DuctPiece holding(int first, int last, double stationMm) {
        DuctPiece piece = run.pieces().get(levels.get(first).piece());
        for (int i = levels.get(first).piece(); i <= levels.get(last).piece(); i++) {
            if (run.pieces().get(i).startMm() < stationMm - 1e-9) {
                piece = run.pieces().get(i);
            }
        }
        return piece;
    }

    private DuctLeg leg(double stationMm) {
        double end = 0;
        for (DuctLeg leg : run.legs()) {
            end += leg.lengthMm();
            if (stationMm <= end + 1e-6) {
                return leg;
            }
        }
        return run.legs().get(run.legs().size() - 1);
    }

    private double before(DuctLeg until) {
        double before = 0;
        for (DuctLeg leg : run.legs()) {
            if (leg.path().equals(until.path())) {
                break;
            }
            before += leg.lengthMm();
        }
        return before;
    }

    /** The last leg up to a piece that changes the section; the first leg if none does. */
    private String sectionPath(int piece) {
        String path = run.legs().get(0).path();
        String at = run.pieces().get(piece).path();
        for (DuctLeg leg : run.legs()) {
            if (leg.transition()) {
                path = leg.path();
            }
            if (leg.path().equals(at)) {
                break;
            }
        }
        return path;
    }

    /** What stands in there; else the side that has lost the larger share on the way in; else the shorter. */
    private String by(int first, DuctPiece piece, double alongMm) {
        if (!levels.get(first).by().isEmpty()) {
            return levels.get(first).by();
        }
        double wide = piece.clear().wideMm(alongMm);
        double high = piece.clear().highMm(alongMm);
        double mostWide = 0;
        double mostHigh = 0;
        for (int i : new int[] {first - 1, first}) {
            if (i >= 0) {
                DuctPiece near = run.pieces().get(levels.get(i).piece());
                mostWide = Math.max(mostWide, near.clear().wideMm(levels.get(i).alongMm()));
                mostHigh = Math.max(mostHigh, near.clear().highMm(levels.get(i).alongMm()));
            }
        }
        double lostWide = wide / Math.max(mostWide, wide);
        double lostHigh = high / Math.max(mostHigh, high);
        if (Math.abs(wide - high) <= SAME * wide) {
            return side(wide, "clear size");
        }
        boolean width = Math.abs(lostWide - lostHigh) > SAME ? lostWide < lostHigh : wide < high;
        return width ? side(wide, "width") : side(high, "height");
    }

    private static String side(double mm, String which) {
        return "its " + Written.number(mm, 2) + " mm " + which;
    }
}
