package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.spile.exporters.drawing.Arc;
import org.spile.exporters.drawing.Circle;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Flag;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.Insert;
import org.spile.exporters.drawing.Leader;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Text;

/** Marks as entities of one space. */
final class Entities {
    private final TagWriter tags;
    private final Space space;
    private final Blocks blocks;
    private final List<Patch> texts;

    /**
     * Entities of a space.
     *
     * @param tags where to
     * @param space which space
     * @param blocks names of the blocks that dimensions and inserts refer to
     * @param texts what hatching keeps off, in the marks' coordinates
     */
    Entities(TagWriter tags, Space space, Blocks blocks, List<Patch> texts) {
        this.tags = tags;
        this.space = space;
        this.blocks = blocks;
        this.texts = texts;
    }

    /** How one kind of mark is written. */
    private interface Writing {
        void write() throws IOException;
    }

    void write(Mark mark) throws IOException {
        mark.by(new Kinds()).write();
    }

    private void writeAll(List<? extends Mark> marks) throws IOException {
        for (var mark : marks) {
            write(mark);
        }
    }

    /** Type, handle, owner, layer, and what differs from the layer. */
    static void head(TagWriter tags, Space space, String type, Pen pen) throws IOException {
        tags.put(0, type).put(5, tags.handle()).put(330, space.owner()).put(100, "AcDbEntity");
        if (space.paper()) {
            tags.put(67, 1);
        }
        tags.put(8, pen.layer().words());
        if (pen.type() != pen.layer().type()) {
            tags.put(6, Names.of(pen.type()));
        }
        if (pen.widthMm() != pen.layer().widthMm()) {
            tags.put(370, Tables.hundredths(pen.widthMm()));
        }
        if (pen.type() != LineType.CONTINUOUS) {
            tags.put(48, space.unit() * pen.widthMm() / Pen.NARROW_MM);
        }
    }

    private TagWriter head(String type, Pen pen) throws IOException {
        head(tags, space, type, pen);
        return tags;
    }

    private void part(Pen pen) throws IOException {
        ExtendedTags.of(tags, pen.part().isEmpty() ? Map.of() : Map.of("part", pen.part()));
    }

    private final class Kinds implements Mark.Cases<Writing> {
        @Override
        public Writing line(Line line) {
            return () -> {
                head("LINE", line.pen())
                        .put(100, "AcDbLine")
                        .point(10, space.at(line.from()))
                        .point(11, space.at(line.to()));
                part(line.pen());
            };
        }

        @Override
        public Writing polyline(Polyline polyline) {
            return () -> {
                head("LWPOLYLINE", polyline.pen())
                        .put(100, "AcDbPolyline")
                        .put(90, polyline.vertices().size())
                        .put(70, polyline.closed() ? 1 : 0)
                        .put(43, 0);
                for (var vertex : polyline.vertices()) {
                    tags.flat(10, space.at(vertex.at()));
                    if (vertex.bulge() != 0) {
                        tags.put(42, vertex.bulge());
                    }
                }
                part(polyline.pen());
            };
        }

        @Override
        public Writing circle(Circle circle) {
            return () -> {
                head("CIRCLE", circle.pen())
                        .put(100, "AcDbCircle")
                        .point(10, space.at(circle.centre()))
                        .put(40, circle.radiusMm());
                part(circle.pen());
            };
        }

        @Override
        public Writing arc(Arc arc) {
            return () -> {
                head("ARC", arc.pen())
                        .put(100, "AcDbCircle")
                        .point(10, space.at(arc.centre()))
                        .put(40, arc.radiusMm())
                        .put(100, "AcDbArc")
                        .put(50, turn(arc.startDeg()))
                        .put(51, turn(arc.startDeg() + arc.sweepDeg()));
                part(arc.pen());
            };
        }

        @Override
        public Writing fill(Fill fill) {
            return () -> {
                // The third and fourth corner of a SOLID are crossed; a triangle says its last one twice.
                var corners = fill.corners();
                var last = corners.size() - 1;
                head("SOLID", fill.pen())
                        .put(100, "AcDbTrace")
                        .point(10, space.at(corners.get(0)))
                        .point(11, space.at(corners.get(1)))
                        .point(12, space.at(corners.get(last)))
                        .point(13, space.at(corners.get(2)));
                part(fill.pen());
            };
        }

        @Override
        public Writing text(Text text) {
            return () -> {
                if (text.says().isBlank()) {
                    return;
                }
                head("TEXT", text.pen());
                TextTags.write(tags, space, text);
                part(text.pen());
            };
        }

        @Override
        public Writing hatch(Hatch hatch) {
            return () -> {
                head("HATCH", hatch.pen());
                new HatchTags(tags, space, hatch, texts).write();
                part(hatch.pen());
            };
        }

        @Override
        public Writing insert(Insert insert) {
            return () -> InsertTags.write(tags, space, insert, blocks.name(insert.symbol(), space.unit()));
        }

        @Override
        public Writing dimension(Dimensioned dimension) {
            return () -> {
                head("DIMENSION", dimension.pen());
                DimensionTags.write(tags, space, dimension, blocks.name(dimension, space));
                part(dimension.pen());
            };
        }

        @Override
        public Writing leader(Leader leader) {
            return () -> writeAll(leader.drawn());
        }

        @Override
        public Writing flag(Flag flag) {
            return () -> writeAll(flag.drawn());
        }
    }

    /** An angle from 0 up to but not including 360 degrees. */
    private static double turn(double degrees) {
        var turned = degrees % 360;
        return turned < 0 ? turned + 360 : turned;
    }
}
