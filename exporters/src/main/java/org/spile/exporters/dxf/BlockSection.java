package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.Span;
import org.spile.exporters.drawing.Text;

/** The section of blocks. Model space and the first sheet's paper are empty here: theirs stands among the entities. */
final class BlockSection {
    private static final int ANONYMOUS = 1;
    private static final int HAS_ATTRIBUTES = 2;

    private final TagWriter tags;
    private final Blocks blocks;
    private final Papers papers;

    BlockSection(TagWriter tags, Blocks blocks, Papers papers) {
        this.tags = tags;
        this.blocks = blocks;
        this.papers = papers;
    }

    /** What is in a block. */
    private interface Content {
        void write() throws IOException;
    }

    void write() throws IOException {
        tags.put(0, "SECTION").put(2, "BLOCKS");
        block(Blocks.MODEL, 0, () -> {});
        for (var paper : blocks.papers()) {
            var active = paper.equals(blocks.papers().get(0));
            block(paper.name(), 0, active ? () -> {} : () -> papers.write(paper, false));
        }
        for (var symbol : blocks.symbols()) {
            block(symbol.name(), symbol.tags().isEmpty() ? 0 : HAS_ATTRIBUTES, () -> symbol(symbol));
        }
        for (var dimension : blocks.dimensions()) {
            block(dimension.name(), ANONYMOUS, () -> dimension(dimension));
        }
        tags.put(0, "ENDSEC");
    }

    private void block(String name, int flags, Content content) throws IOException {
        var owner = blocks.record(name);
        tags.put(0, "BLOCK")
                .put(5, tags.handle())
                .put(330, owner)
                .put(100, "AcDbEntity")
                .put(8, "0")
                .put(100, "AcDbBlockBegin")
                .put(2, name)
                .put(70, flags)
                .point(10, Vector2D.ZERO)
                .put(3, name)
                .put(1, "");
        content.write();
        tags.put(0, "ENDBLK")
                .put(5, tags.handle())
                .put(330, owner)
                .put(100, "AcDbEntity")
                .put(8, "0")
                .put(100, "AcDbBlockEnd");
    }

    private void symbol(Blocks.SymbolBlock block) throws IOException {
        var space = new Space(blocks.record(block.name()), block.unit(), Vector2D.ZERO, false);
        var picture = block.symbol().picture();
        var entities = new Entities(tags, space, blocks, HatchLines.keepOff(List.copyOf(picture), block.unit()));
        for (var stroke : picture) {
            entities.write(stroke);
        }
        for (var tag : block.tags()) {
            InsertTags.define(tags, space, picture.get(0).pen(), tag);
        }
    }

    private void dimension(Blocks.DimensionBlock block) throws IOException {
        var space = new Space(blocks.record(block.name()), block.unit(), block.shift(), false);
        var entities = new Entities(tags, space, blocks, List.of());
        for (var stroke : block.dimension().drawn()) {
            if (stroke instanceof Text text) {
                text(space, text);
            } else {
                entities.write(stroke);
            }
        }
        for (var point : points(block.dimension())) {
            point(space, point);
        }
    }

    private static List<Vector2D> points(Dimensioned dimension) {
        var span = dimension.span();
        return span instanceof Span.Running
                ? List.of(span.from(), span.to())
                : List.of(span.from(), span.to(), dimension.lineAt());
    }

    /** The value, as a text whose middle is its place: readers look for one in the block. */
    private void text(Space space, Text text) throws IOException {
        Entities.head(tags, space, "MTEXT", text.pen());
        var angle = Math.toRadians(text.angleDeg());
        tags.put(100, "AcDbMText")
                .point(10, space.at(middle(text, space.unit())))
                .put(40, text.capMm() * space.unit())
                .put(41, 0)
                .put(71, 5)
                .put(72, 1)
                .put(1, DxfWords.multi(text.says()))
                .put(7, Names.TEXT_STYLE)
                .point(11, Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle)));
    }

    /** Middle of the width, at half the capitals' height. */
    private static Vector2D middle(Text text, double unit) {
        var angle = Math.toRadians(text.angleDeg());
        var along = Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle));
        var up = Vector2D.of(-along.getY(), along.getX());
        return text.at()
                .add(along.multiply((0.5 - text.anchor().across()) * text.widthMm() * unit))
                .add(up.multiply((0.5 - text.anchor().up()) * text.capMm() * unit));
    }

    private void point(Space space, Vector2D at) throws IOException {
        tags.put(0, "POINT")
                .put(5, tags.handle())
                .put(330, space.owner())
                .put(100, "AcDbEntity")
                .put(8, Names.POINTS_LAYER)
                .put(100, "AcDbPoint")
                .point(10, space.at(at));
    }
}
