package org.spile.exporters.svg;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.spile.exporters.drawing.Anchor;
import org.spile.exporters.drawing.Arc;
import org.spile.exporters.drawing.Circle;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Flag;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.Insert;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Leader;
import org.spile.exporters.drawing.Lettering;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;
import org.spile.geometry.kernel.measure.Written;

/** One mark as SVG elements inside its layer's group, stating only what differs from the layer. */
final class SvgMarks {
    private final SvgTags tags;
    private final SvgPlace place;
    private final List<Patch> texts;

    SvgMarks(SvgTags tags, SvgPlace place, List<Patch> texts) {
        this.tags = tags;
        this.place = place;
        this.texts = texts;
    }

    /** How one kind of mark is written. */
    private interface Writing {
        void write() throws XMLStreamException;
    }

    void write(Mark mark) throws XMLStreamException {
        mark.by(new Kinds()).write();
    }

    static String colour(Layer layer) {
        return String.format(Locale.ROOT, "#%06x", layer.ink().rgb());
    }

    private final class Kinds implements Mark.Cases<Writing> {
        @Override
        public Writing line(Line line) {
            return () -> path(line.pen(), "M" + place.point(line.from()) + "L" + place.point(line.to()));
        }

        @Override
        public Writing polyline(Polyline polyline) {
            return () -> path(polyline.pen(), SvgPaths.of(polyline, place));
        }

        @Override
        public Writing circle(Circle circle) {
            return () -> {
                tags.empty("circle");
                tags.attribute("cx", place.x(circle.centre()));
                tags.attribute("cy", place.y(circle.centre()));
                tags.attribute("r", place.length(circle.radiusMm()));
                stroke(circle.pen());
            };
        }

        @Override
        public Writing arc(Arc arc) {
            return () -> path(arc.pen(), SvgPaths.of(arc, place));
        }

        @Override
        public Writing fill(Fill fill) {
            return () -> filled(
                    fill.pen(), fill.corners().stream().map(place::point).collect(Collectors.joining("L", "M", "Z")));
        }

        @Override
        public Writing text(Text text) {
            return () -> words(text);
        }

        @Override
        public Writing hatch(Hatch hatch) {
            return () -> hatched(hatch);
        }

        @Override
        public Writing insert(Insert insert) {
            return () -> {
                tags.open("g");
                tags.attribute("data-symbol", insert.symbol().name());
                for (var attribute : insert.attributes()) {
                    var name = attribute.tag().toLowerCase(Locale.ROOT).replace('_', '-');
                    tags.attribute("data-is-" + name, attribute.value());
                }
                strokes(insert.strokes());
                tags.close();
            };
        }

        @Override
        public Writing dimension(Dimensioned dimension) {
            return () -> {
                tags.open("g");
                tags.attribute("data-mm", Written.number(dimension.span().measuredMm(), 4));
                strokes(dimension.drawn());
                tags.close();
            };
        }

        @Override
        public Writing leader(Leader leader) {
            return () -> {
                tags.open("g");
                strokes(leader.drawn());
                tags.close();
            };
        }

        @Override
        public Writing flag(Flag flag) {
            return () -> {
                tags.open("g");
                tags.attribute("id", tags.id("flag-" + flag.number()));
                tags.attribute("data-finding", flag.finding());
                tags.element("title", "", "finding " + flag.number());
                strokes(flag.drawn());
                tags.close();
            };
        }
    }

    private void strokes(List<? extends Stroke> strokes) throws XMLStreamException {
        for (var stroke : strokes) {
            write(stroke);
        }
    }

    private void path(Pen pen, String d) throws XMLStreamException {
        tags.empty("path");
        tags.attribute("d", d);
        stroke(pen);
    }

    private void filled(Pen pen, String d) throws XMLStreamException {
        tags.empty("path");
        tags.attribute("d", d);
        tags.attribute("fill", colour(pen.layer()));
        tags.attribute("fill-rule", "evenodd");
        tags.attribute("stroke", "none");
    }

    private void hatched(Hatch hatch) throws XMLStreamException {
        if (hatch.solid(place.unitsPerMm())) {
            filled(
                    hatch.pen(),
                    hatch.loops().stream().map(loop -> SvgPaths.of(loop, place)).collect(Collectors.joining()));
            return;
        }
        var lines = HatchLines.of(hatch, place.unitsPerMm(), texts);
        if (lines.isEmpty()) {
            return;
        }
        tags.empty("path");
        tags.attribute("data-material", hatch.material().words());
        tags.attribute(
                "d",
                lines.stream()
                        .map(line -> "M" + place.point(line.from()) + "L" + place.point(line.to()))
                        .collect(Collectors.joining()));
        stroke(hatch.pen());
    }

    /** Width and dashes where they differ from the layer's. */
    private void stroke(Pen pen) throws XMLStreamException {
        var layer = pen.layer();
        if (pen.widthMm() != layer.widthMm()) {
            tags.attribute("stroke-width", SvgPlace.number(pen.widthMm()));
        }
        if (pen.type() != layer.type() || (pen.widthMm() != layer.widthMm() && pen.type() != LineType.CONTINUOUS)) {
            var dashes = pen.type() == LineType.CONTINUOUS ? "none" : SvgLayers.dashes(pen.type(), pen.widthMm());
            tags.attribute("stroke-dasharray", dashes);
        }
    }

    private void words(Text text) throws XMLStreamException {
        if (text.says().isBlank()) {
            return;
        }
        var at = text.baseline(place.unitsPerMm());
        tags.open("text");
        tags.attribute("x", place.x(at));
        tags.attribute("y", place.y(at));
        if (text.angleDeg() != 0) {
            var turn = Written.number(-text.angleDeg(), 4);
            tags.attribute("transform", "rotate(" + turn + " " + place.point(at) + ")");
        }
        tags.attribute("font-family", "'" + Lettering.FAMILY + "', 'DejaVu Sans', sans-serif");
        tags.attribute("font-stretch", "condensed");
        tags.attribute("font-size", SvgPlace.number(Lettering.shipped().emMm(text.capMm())));
        tags.attribute("text-anchor", anchor(text.anchor()));
        // Another font may stand in for ours: its words are then squeezed or stretched to the room measured for them.
        tags.attribute("textLength", SvgPlace.number(text.widthMm()));
        tags.attribute("lengthAdjust", "spacingAndGlyphs");
        tags.attribute("fill", colour(text.pen().layer()));
        tags.attribute("stroke", "none");
        tags.words(text.says());
        tags.close();
    }

    private static String anchor(Anchor anchor) {
        return switch (anchor) {
            case LEFT, MIDDLE_LEFT, TOP_LEFT -> "start";
            case CENTRE, MIDDLE, TOP_CENTRE -> "middle";
            case RIGHT, MIDDLE_RIGHT -> "end";
        };
    }
}
