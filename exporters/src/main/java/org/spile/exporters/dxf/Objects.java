package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.PaperSize;
import org.spile.geometry.kernel.measure.Written;

/** The section of objects: the dictionaries, and a layout for model space and each sheet. */
final class Objects {
    private static final int MODEL_FLAGS = 1_712;
    private static final int SHEET_FLAGS = 688;

    private final TagWriter tags;
    private final Anchors anchors;
    private final Blocks blocks;
    private final ModelSpace space;

    Objects(TagWriter tags, Anchors anchors, Blocks blocks, ModelSpace space) {
        this.tags = tags;
        this.anchors = anchors;
        this.blocks = blocks;
        this.space = space;
    }

    /** A dictionary's entry: a name and the handle it stands for. */
    private record Entry(String name, String handle) {}

    void write() throws IOException {
        var groups = tags.handle();
        var plotStyles = tags.handle();
        tags.put(0, "SECTION").put(2, "OBJECTS");
        // The root must be the first object of all.
        dictionary(
                anchors.root(),
                "0",
                List.of(
                        new Entry("ACAD_GROUP", groups),
                        new Entry("ACAD_LAYOUT", anchors.layouts()),
                        new Entry("ACAD_PLOTSTYLENAME", plotStyles)));
        dictionary(groups, anchors.root(), List.of());
        dictionary(anchors.layouts(), anchors.root(), layoutEntries());
        tags.put(0, "ACDBDICTIONARYWDFLT")
                .put(5, plotStyles)
                .put(330, anchors.root())
                .put(100, "AcDbDictionary")
                .put(281, 1)
                .put(3, "Normal")
                .put(350, anchors.plotStyle())
                .put(100, "AcDbDictionaryWithDefault")
                .put(340, anchors.plotStyle());
        tags.put(0, "ACDBPLACEHOLDER").put(5, anchors.plotStyle()).put(330, plotStyles);
        layout("Model", Blocks.MODEL, 0, PaperSize.A3, space.extent(), MODEL_FLAGS);
        for (var i = 0; i < blocks.papers().size(); i++) {
            var paper = blocks.papers().get(i);
            var size = paper.sheet().paper();
            layout(layoutName(paper), paper.name(), i + 1, size, size.sheet(), SHEET_FLAGS);
        }
        tags.put(0, "ENDSEC");
    }

    private void dictionary(String handle, String owner, List<Entry> entries) throws IOException {
        tags.put(0, "DICTIONARY")
                .put(5, handle)
                .put(330, owner)
                .put(100, "AcDbDictionary")
                .put(281, 1);
        for (var entry : entries) {
            tags.put(3, entry.name()).put(350, entry.handle());
        }
    }

    private List<Entry> layoutEntries() {
        var entries = new ArrayList<Entry>();
        entries.add(new Entry("Model", anchors.layout(Blocks.MODEL)));
        blocks.papers().forEach(paper -> entries.add(new Entry(layoutName(paper), anchors.layout(paper.name()))));
        return entries;
    }

    /** The sheet's name; one name is the format's own. */
    private static String layoutName(Blocks.Paper paper) {
        return paper.sheet().name().equals("model")
                ? "model-sheet"
                : paper.sheet().name();
    }

    private void layout(String name, String block, int order, PaperSize size, Extent extent, int flags)
            throws IOException {
        tags.put(0, "LAYOUT")
                .put(5, anchors.layout(block))
                .put(330, anchors.layouts())
                .put(100, "AcDbPlotSettings")
                .put(1, "")
                .put(2, "none_device")
                .put(4, medium(size))
                .put(6, "");
        for (var margin = 40; margin <= 43; margin++) {
            tags.put(margin, 0);
        }
        tags.put(44, size.wideMm()).put(45, size.highMm());
        for (var code : new int[] {46, 47, 48, 49, 140, 141}) {
            tags.put(code, 0);
        }
        tags.put(142, 1).put(143, 1).put(70, flags).put(72, 1).put(73, 0).put(74, 5);
        tags.put(7, "").put(75, 16).put(147, 1).put(148, 0).put(149, 0);
        tags.put(100, "AcDbLayout")
                .put(1, name)
                .put(70, 1)
                .put(71, order)
                .flat(10, Vector2D.ZERO)
                .flat(11, Vector2D.of(size.wideMm(), size.highMm()))
                .point(12, Vector2D.ZERO)
                .point(14, extent.corner())
                .point(15, Vector2D.of(extent.maxX(), extent.maxY()))
                .put(146, 0)
                .point(13, Vector2D.ZERO)
                .point(16, Vector2D.of(1, 0))
                .point(17, Vector2D.of(0, 1))
                .put(76, 0)
                .put(330, blocks.record(block));
    }

    private static String medium(PaperSize size) {
        return "ISO_" + size.name() + "_(" + hundredths(size.wideMm()) + "_x_" + hundredths(size.highMm()) + "_MM)";
    }

    private static String hundredths(int mm) {
        return Written.number(mm, 0) + ".00";
    }
}
