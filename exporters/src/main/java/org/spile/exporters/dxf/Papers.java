package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.Mark;
import org.spile.geometry.kernel.measure.Written;

/** What stands on a sheet's paper: the viewports through which model space is seen, then frame, title block and notes. */
final class Papers {
    /** Status bits of a viewport that is always shown ... */
    private static final int SHEET_STATUS = 32_800;
    /** ... and of one whose scale is locked (16384) as well. */
    private static final int VIEW_STATUS = 49_152;

    private final TagWriter tags;
    private final Blocks blocks;
    private final ModelSpace model;

    Papers(TagWriter tags, Blocks blocks, ModelSpace model) {
        this.tags = tags;
        this.blocks = blocks;
        this.model = model;
    }

    /**
     * A sheet's entities.
     *
     * @param paper the sheet
     * @param active whether its entities stand in the section of entities
     */
    void write(Blocks.Paper paper, boolean active) throws IOException {
        var sheet = paper.sheet();
        var space = new Space(blocks.record(paper.name()), 1, Vector2D.ZERO, active);
        var whole = sheet.paper().sheet();
        viewport(space, whole, 1, new Extent(0, 0, whole.wide(), whole.high()), SHEET_STATUS);
        var id = 2;
        for (var placed : model.of(sheet)) {
            viewport(space, placed.view().onPaper(), id, placed.window(), VIEW_STATUS);
            var data = new LinkedHashMap<String, String>();
            data.put("view", placed.view().name());
            data.put("scale", placed.view().scale().says());
            data.put("shift-x", Written.number(placed.shift().getX(), 6));
            data.put("shift-y", Written.number(placed.shift().getY(), 6));
            ExtendedTags.of(tags, data);
            id++;
        }
        var marks = new ArrayList<Mark>(sheet.furniture());
        marks.addAll(sheet.marks());
        var entities = new Entities(tags, space, blocks, HatchLines.keepOff(sheet.marks(), 1));
        for (var mark : marks) {
            entities.write(mark);
        }
    }

    /** The scale is the height of the window over the height on paper. A status of 0 would show an empty sheet. */
    private void viewport(Space space, Extent onPaper, int id, Extent window, int status) throws IOException {
        tags.put(0, "VIEWPORT").put(5, tags.handle()).put(330, space.owner()).put(100, "AcDbEntity");
        if (space.paper()) {
            tags.put(67, 1);
        }
        tags.put(8, Names.POINTS_LAYER)
                .put(100, "AcDbViewport")
                .point(10, onPaper.middle())
                .put(40, onPaper.wide())
                .put(41, onPaper.high())
                .put(68, id)
                .put(69, id)
                .flat(12, window.middle())
                .flat(13, Vector2D.ZERO)
                .flat(14, Vector2D.of(10, 10))
                .flat(15, Vector2D.of(10, 10))
                .point(16, Vector2D.ZERO, 1)
                .point(17, Vector2D.ZERO)
                .put(42, 50)
                .put(43, 0)
                .put(44, 0)
                .put(45, window.high())
                .put(50, 0)
                .put(51, 0)
                .put(72, 100)
                .put(90, status)
                .put(1, "")
                .put(281, 0)
                .put(71, 1)
                .put(74, 0)
                .point(110, Vector2D.ZERO)
                .point(111, Vector2D.of(1, 0))
                .point(112, Vector2D.of(0, 1))
                .put(79, 0)
                .put(146, 0);
    }
}
