package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Circle;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Flag;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Leader;
import org.spile.exporters.drawing.Lettering;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;

/** Puts names, notes and flags into a view, each where it finds room. */
final class LabelLayout {
    /** Line pitch as a share of the capitals' height (ISO 3098, type B without accented capitals). */
    private static final double PITCH = 1.5;

    /** Height of a line's ink, accents left out, about the middle of its capitals, as a share of their height. */
    private static final double INK = 1.7;

    private static final double DOT_MM = 0.5;
    private static final double FLAG_RADIUS_MM = 3.5;
    private static final double TICK_MM = 1;
    /** A gap shorter than this on paper is ringed, else nobody would see it. */
    private static final double VISIBLE_MM = 2;

    private final Ground ground;
    private final double unit;
    private final Pointing pointing;

    LabelLayout(Ground ground, double unit) {
        this.ground = ground;
        this.unit = unit;
        this.pointing = new Pointing(ground, unit);
    }

    /**
     * All labels: first those that have room on the place they name, then those with room close by on the same area,
     * then the others beside theirs, on leaders.
     *
     * @return in the order of asking
     */
    List<Leader> placeAll(List<Label> labels) {
        var placed = new Leader[labels.size()];
        for (var i = 0; i < placed.length; i++) {
            var label = labels.get(i);
            if (pointing.standsOn(label.at(), wideMm(label), highMm(label))) {
                var pen = Pointing.notes(label.part());
                placed[i] = leader(label, words(label, pen, label.at(), Anchor.CENTRE, 0));
            }
        }
        for (var i = 0; i < placed.length; i++) {
            if (placed[i] == null) {
                var label = labels.get(i);
                var pen = Pointing.notes(label.part());
                var near = pointing.standsNear(label.at(), wideMm(label), highMm(label));
                placed[i] = near.map(place -> leader(label, words(label, pen, place, Anchor.CENTRE, 0)))
                        .orElse(null);
            }
        }
        for (var i = 0; i < placed.length; i++) {
            if (placed[i] == null) {
                placed[i] = leader(labels.get(i), beside(labels.get(i)));
            }
        }
        return List.of(placed);
    }

    private static double wideMm(Label label) {
        var lettering = Lettering.shipped();
        return label.says().stream()
                .mapToDouble(line -> lettering.widthMm(line, label.capMm()))
                .max()
                .orElseThrow();
    }

    private static double highMm(Label label) {
        return label.capMm() * (INK + PITCH * (label.says().size() - 1));
    }

    private static Leader leader(Label label, List<? extends Stroke> strokes) {
        var says = String.join(" ", label.says());
        return new Leader(Pointing.notes(label.part()), says, label.at(), List.copyOf(strokes));
    }

    private List<Stroke> beside(Label label) {
        var pen = Pointing.notes(label.part());
        var wide = wideMm(label);
        var spot = pointing.beside(label.at(), wide, highMm(label));
        var strokes = new ArrayList<Stroke>(pointing.leader(pen, label.at(), spot));
        var dot = dot(pen, label.at());
        // A value that had to stand on the place itself goes before the dot; the leader still ends there.
        if (ground.clear(Ground.Kind.TEXT, new Patch(dot.corners()), 0.2 * unit)) {
            strokes.add(dot);
        }
        var toRight = spot.middle().getX() >= spot.joint().getX();
        var sideways = (toRight ? -1 : 1) * wide / 2 * unit;
        strokes.addAll(words(label, pen, spot.middle(), toRight ? Anchor.LEFT : Anchor.RIGHT, sideways));
        return strokes;
    }

    private List<Text> words(Label label, Pen pen, Vector2D middle, Anchor anchor, double sideways) {
        var texts = new ArrayList<Text>();
        var cap = label.capMm();
        var lines = label.says().size();
        for (var i = 0; i < lines; i++) {
            var rise = ((lines - 1) / 2.0 - i) * PITCH * cap - cap / 2;
            var at = middle.add(Vector2D.of(sideways, rise * unit));
            var text = new Text(pen.wide(0.35), at, label.says().get(i), cap, 0, anchor);
            ground.add(Ground.Kind.TEXT, text.patch(unit));
            texts.add(text);
        }
        return texts;
    }

    private Fill dot(Pen pen, Vector2D at) {
        var dot = DOT_MM * unit;
        return new Fill(
                pen,
                List.of(
                        at.add(Vector2D.of(dot, 0)),
                        at.add(Vector2D.of(0, dot)),
                        at.add(Vector2D.of(-dot, 0)),
                        at.add(Vector2D.of(0, -dot))));
    }

    /**
     * A flag beside its gap.
     *
     * @param flag what was asked
     * @param gap the strokes of its gap, on the ground already
     */
    Flag place(FlagRequest flag, List<Stroke> gap) {
        var pen = Layer.FINDINGS.pen().of(flag.part());
        var strokes = numbered(pen, flag.number(), flag.at(), flag.to(), gap);
        return new Flag(pen, flag.number(), flag.finding(), flag.at(), flag.to(), strokes);
    }

    /**
     * A balloon beside its tape.
     *
     * @param balloon what was asked
     * @param tape the strokes of its tape, on the ground already
     */
    Leader place(Balloon balloon, List<Stroke> tape) {
        var pen = pen(balloon);
        var strokes = numbered(pen, balloon.number(), balloon.from(), balloon.to(), tape);
        return new Leader(pen, Integer.toString(balloon.number()), balloon.to(), strokes);
    }

    private static Pen pen(Balloon balloon) {
        return Layer.DIMENSIONS.pen().wide(Pen.WIDE_MM).of(balloon.part());
    }

    private List<Stroke> numbered(Pen pen, int count, Vector2D from, Vector2D to, List<Stroke> between) {
        var thin = pen.wide(Pen.NARROW_MM);
        var strokes = new ArrayList<>(between);
        var number = Integer.toString(count);
        var radius = Math.max(FLAG_RADIUS_MM, Lettering.shipped().widthMm(number, Text.USUAL_MM) / 2 + 1.2);
        var middle = from.lerp(to, 0.5);
        var spot = pointing.beside(middle, 2 * radius, 2 * radius);
        strokes.addAll(pointing.leader(thin, middle, new Pointing.Spot(spot.middle(), onRim(middle, spot, radius))));
        strokes.add(new Circle(pen, spot.middle(), radius * unit));
        strokes.add(new Text(pen.wide(0.35), spot.middle(), number, Text.USUAL_MM, 0, Anchor.MIDDLE));
        ground.add(Ground.Kind.TEXT, pointing.box(spot.middle(), 2 * radius, 2 * radius));
        return strokes;
    }

    private Vector2D onRim(Vector2D from, Pointing.Spot spot, double radius) {
        var way = spot.middle().subtract(from);
        return spot.middle().subtract(way.multiply(radius * unit / way.norm()));
    }

    /** The gap between the witness points, with ticks across its ends; ringed if it is too short to see. */
    List<Stroke> gap(FlagRequest flag) {
        return between(Layer.FINDINGS.pen().of(flag.part()), flag.at(), flag.to(), true);
    }

    /** A tape, with ticks across its ends, but none where it runs on beyond what is drawn. */
    List<Stroke> tape(Balloon balloon) {
        return between(pen(balloon), balloon.from(), balloon.to(), !balloon.cut());
    }

    private List<Stroke> between(Pen pen, Vector2D from, Vector2D to, boolean whole) {
        var way = to.subtract(from);
        var strokes = new ArrayList<Stroke>();
        if (way.norm() > 1e-6) {
            var across = Vector2D.of(-way.getY(), way.getX()).multiply(TICK_MM * unit / way.norm());
            strokes.add(new Line(pen, from, to));
            if (whole) {
                strokes.add(new Line(pen, from.add(across), from.subtract(across)));
            }
            strokes.add(new Line(pen, to.add(across), to.subtract(across)));
        }
        if (way.norm() < VISIBLE_MM * unit) {
            strokes.add(new Circle(pen, from.lerp(to, 0.5), VISIBLE_MM * unit));
        }
        strokes.forEach(stroke -> stroke.patches(unit).forEach(patch -> ground.add(Ground.Kind.HEAVY, patch)));
        return strokes;
    }

    /** Patches of lines drawn before the layout began. */
    static Ground ground(List<Stroke> drawn, double unit) {
        var ground = new Ground(unit);
        for (var stroke : drawn) {
            var kind = kind(stroke);
            for (Patch patch : stroke.patches(unit)) {
                ground.add(kind, patch);
            }
        }
        return ground;
    }

    private static Ground.Kind kind(Stroke stroke) {
        if (stroke instanceof Text) {
            return Ground.Kind.TEXT;
        }
        if (stroke instanceof Fill) {
            return Ground.Kind.ARROW;
        }
        return stroke.pen().heavy() ? Ground.Kind.HEAVY : Ground.Kind.NARROW;
    }
}
