package org.spile.exporters.dxf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.SheetWriter;

/** Writes all sheets as one drawing exchange file, R2000: model space at 1:1, one layout a sheet. */
public final class DxfWriter implements SheetWriter {
    /** A writer. */
    public DxfWriter() {}

    @Override
    public String ending() {
        return "dxf";
    }

    @Override
    public boolean oneSheetAFile() {
        return false;
    }

    @Override
    public void write(SheetSet sheets, OutputStream out) throws IOException {
        var space = ModelSpace.of(sheets.sheets());
        var blocks = Blocks.of(sheets.sheets(), space);
        // The header must say a handle above all others before any is given out: the rest is written first.
        var rest = new ByteArrayOutputStream();
        var tags = new TagWriter(rest, 0);
        var anchors = new Anchors(tags, blocks);
        var papers = new Papers(tags, blocks, space);
        new Tables(tags, anchors, blocks, space).write();
        new BlockSection(tags, blocks, papers).write();
        entities(tags, blocks, space, papers);
        new Objects(tags, anchors, blocks, space).write();
        tags.put(0, "EOF");

        new Header(new TagWriter(out, 0), space, tags.last()).write();
        rest.writeTo(out);
        out.flush();
    }

    private static void entities(TagWriter tags, Blocks blocks, ModelSpace space, Papers papers) throws IOException {
        tags.put(0, "SECTION").put(2, "ENTITIES");
        for (var placed : space.views()) {
            var view = placed.view();
            var model = new Space(blocks.record(Blocks.MODEL), view.unitsPerMm(), placed.shift(), false);
            var entities = new Entities(tags, model, blocks, HatchLines.keepOff(view.marks(), view.unitsPerMm()));
            for (var mark : view.marks()) {
                entities.write(mark);
            }
        }
        papers.write(blocks.papers().get(0), true);
        tags.put(0, "ENDSEC");
    }
}
