package org.spile.exporters.drawing;

import java.util.List;

/**
 * An area shown as cut material.
 *
 * @param pen how its lines are drawn, and whose they are
 * @param material what it is made of
 * @param loops closed outlines; what lies inside an odd number of them is hatched
 * @param turnDeg turns the pattern (degrees), so that touching parts differ
 */
public record Hatch(Pen pen, Material material, List<Polyline> loops, double turnDeg) implements Mark {
    /** Parts thinner than this on paper (mm) are filled: hatching could not be read. */
    private static final double THIN_MM = 1.0;

    /** Copies the loops and refuses open ones. */
    public Hatch {
        loops = List.copyOf(loops);
        if (loops.isEmpty() || !loops.stream().allMatch(Polyline::closed)) {
            throw new IllegalArgumentException("a hatch needs closed loops");
        }
        if (!Double.isFinite(turnDeg)) {
            throw new IllegalArgumentException("hatch turned by " + turnDeg + " degrees");
        }
    }

    /** One cut area of a thing. */
    public static Hatch of(Material material, String part, Polyline outline) {
        return new Hatch(Layer.HATCHING.pen().of(part), material, List.of(outline), 0);
    }

    /**
     * Whether it is filled at a scale: by its material, or because it is too thin to hatch.
     *
     * @param unitsPerMm drawing units for one millimetre on paper
     */
    public boolean solid(double unitsPerMm) {
        return material.families().isEmpty() || meanThickness(unitsPerMm) < THIN_MM * unitsPerMm;
    }

    /** Twice the area over the boundary: the thickness of a long strip. */
    private double meanThickness(double unitsPerMm) {
        var area = 0.0;
        var length = 0.0;
        for (var k = 0; k < loops.size(); k++) {
            var points = loops.get(k).flattened(Bend.PAPER_SAGITTA_MM * unitsPerMm);
            var sum = 0.0;
            for (var i = 1; i < points.size(); i++) {
                sum += points.get(i - 1).signedArea(points.get(i));
                length += points.get(i - 1).distance(points.get(i));
            }
            area += (k == 0 ? 1 : -1) * Math.abs(sum) / 2;
        }
        return length == 0 ? 0 : 2 * Math.abs(area) / length;
    }

    @Override
    public List<Stroke> strokes() {
        return List.of();
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.hatch(this);
    }
}
