package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The lines of a hatch, clipped to its loops and stopped round texts by geometry, so that every program that reads them
 * sees the same.
 *
 * <pre>
 *        across ^      line k lies at start + k · spacing across,
 *               |      its dashes start at k · shift along
 *     ----  ----|----  ----   k = 1
 *   ----  ----  |  ----       k = 0
 *   ------------+-----------&gt; along
 * </pre>
 */
public final class HatchLines {
    /** Room between hatching and a text (mm on paper). */
    private static final double CLEAR_MM = 0.8;

    private final Hatch hatch;
    private final double unitsPerMm;
    private final List<Patch> keepOff;
    private final List<List<Vector2D>> loops;
    private final List<Line> lines = new ArrayList<>();

    private HatchLines(Hatch hatch, double unitsPerMm, List<Patch> keepOff) {
        this.hatch = hatch;
        this.unitsPerMm = unitsPerMm;
        this.loops = hatch.loops().stream()
                .map(loop -> loop.flattened(Bend.PAPER_SAGITTA_MM * unitsPerMm))
                .toList();
        var extent = Extent.around(loops.stream().flatMap(List::stream).toList());
        this.keepOff = keepOff.stream()
                .filter(patch -> patch.extent().overlaps(extent))
                .toList();
    }

    /**
     * The lines of a hatch that is not filled.
     *
     * @param hatch the area
     * @param unitsPerMm drawing units for one millimetre on paper: 1 on a sheet, N in a view at 1:N
     * @param keepOff patches that no line may enter, such as texts
     */
    public static List<Line> of(Hatch hatch, double unitsPerMm, List<Patch> keepOff) {
        var drawn = new HatchLines(hatch, unitsPerMm, keepOff);
        hatch.material().families().forEach(drawn::draw);
        return List.copyOf(drawn.lines);
    }

    /**
     * The patches that hatching keeps off: the boxes of all texts, with a clear edge.
     *
     * @param marks all that is drawn together
     * @param unitsPerMm drawing units for one millimetre on paper
     */
    public static List<Patch> keepOff(Collection<Mark> marks, double unitsPerMm) {
        return marks.stream()
                .flatMap(mark -> mark.strokes().stream())
                .filter(Text.class::isInstance)
                .map(text -> ((Text) text).patch(unitsPerMm).boxGrown(CLEAR_MM * unitsPerMm))
                .toList();
    }

    /**
     * Holes that keep a pattern off texts, for formats that clip hatching themselves. Only texts wholly inside the area
     * get one: a hole across its border would be hatched outside. Texts close together share one.
     *
     * @param hatch the area
     * @param unitsPerMm drawing units for one millimetre on paper
     * @param keepOff patches that no line may enter
     * @return loops inside the area that don't touch each other
     */
    public static List<List<Vector2D>> holes(Hatch hatch, double unitsPerMm, List<Patch> keepOff) {
        var drawn = new HatchLines(hatch, unitsPerMm, keepOff);
        var holes = new ArrayList<Patch>();
        for (var patch : drawn.keepOff) {
            var hole = patch;
            for (var i = 0; i < holes.size(); ) {
                if (hole.nearer(holes.get(i), 0)) {
                    hole = new Patch(hole.extent().and(holes.remove(i).extent()).corners());
                    i = 0;
                } else {
                    i++;
                }
            }
            holes.add(hole);
        }
        holes.removeIf(hole -> !drawn.holds(hole));
        return holes.stream().map(Patch::corners).toList();
    }

    /** Whether a patch lies inside the area and keeps off all its loops. */
    private boolean holds(Patch patch) {
        for (var loop : loops) {
            if (Places.pieces(loop).stream().anyMatch(piece -> piece.nearer(patch, 0))) {
                return false;
            }
        }
        var at = patch.middle();
        return crossings(Vector2D.of(1, 0), Vector2D.of(0, 1), at.getY()).stream()
                                .filter(x -> x < at.getX())
                                .count()
                        % 2
                == 1;
    }

    private void draw(HatchFamily family) {
        var angle = Math.toRadians(family.angleDeg() + hatch.turnDeg());
        var along = Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle));
        var across = Vector2D.of(-along.getY(), along.getX());
        var spacing = family.spacingMm() * unitsPerMm;
        var start = family.startMm() * unitsPerMm;
        var reach =
                loops.stream().flatMap(List::stream).mapToDouble(across::dot).summaryStatistics();
        var first = (long) Math.ceil((reach.getMin() - start) / spacing);
        var last = (long) Math.floor((reach.getMax() - start) / spacing);
        for (var k = first; k <= last; k++) {
            var level = start + k * spacing;
            var crossings = crossings(along, across, level);
            for (var i = 0; i + 1 < crossings.size(); i += 2) {
                var foot = across.multiply(level);
                dash(family, k, along, foot, crossings.get(i), crossings.get(i + 1));
            }
        }
    }

    /** Where a line crosses the loops, in order along it. */
    private List<Double> crossings(Vector2D along, Vector2D across, double level) {
        var crossings = new ArrayList<Double>();
        for (var loop : loops) {
            for (var i = 1; i < loop.size(); i++) {
                var a = loop.get(i - 1);
                var b = loop.get(i);
                var sideA = across.dot(a) - level;
                var sideB = across.dot(b) - level;
                // A corner on the line counts as above it: each crossing is then counted once.
                if (sideA >= 0 != sideB >= 0) {
                    var share = sideA / (sideA - sideB);
                    crossings.add(along.dot(a) + share * (along.dot(b) - along.dot(a)));
                }
            }
        }
        crossings.sort(Double::compare);
        return crossings;
    }

    private void dash(HatchFamily family, long k, Vector2D along, Vector2D foot, double from, double to) {
        if (family.dashesMm().isEmpty()) {
            add(along, foot, from, to);
            return;
        }
        var dashes = family.dashesMm().stream().map(mm -> mm * unitsPerMm).toList();
        var period = dashes.stream().mapToDouble(Double::doubleValue).sum();
        var phase = k * family.shiftMm() * unitsPerMm;
        var at = phase + Math.floor((from - phase) / period) * period;
        while (at < to) {
            for (var i = 0; i < dashes.size(); i += 2) {
                add(along, foot, Math.max(at, from), Math.min(at + dashes.get(i), to));
                at += dashes.get(i) + dashes.get(i + 1);
            }
        }
    }

    private void add(Vector2D along, Vector2D foot, double from, double to) {
        if (to <= from) {
            return;
        }
        var pieces = List.of(new double[] {from, to});
        for (var patch : keepOff) {
            var left = new ArrayList<double[]>();
            for (var piece : pieces) {
                cut(patch, foot.add(along.multiply(piece[0])), foot.add(along.multiply(piece[1])), piece, left);
            }
            pieces = left;
        }
        for (var piece : pieces) {
            lines.add(new Line(hatch.pen(), foot.add(along.multiply(piece[0])), foot.add(along.multiply(piece[1]))));
        }
    }

    private static void cut(Patch patch, Vector2D from, Vector2D to, double[] piece, List<double[]> left) {
        var inside = patch.inside(from, to);
        if (inside.isEmpty()) {
            left.add(piece);
            return;
        }
        var length = piece[1] - piece[0];
        if (inside.get().first() > 0) {
            left.add(new double[] {piece[0], piece[0] + inside.get().first() * length});
        }
        if (inside.get().last() < 1) {
            left.add(new double[] {piece[0] + inside.get().last() * length, piece[1]});
        }
    }
}
