package org.spile.exporters.drawing.layout;

import java.util.List;
import java.util.Optional;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.TitleBlockTable;

/**
 * Where views and words go on a sheet; the title block is always at the lower right. Tried in this order.
 *
 * <pre>
 *   +-------------+   +----------+--+   +------+------+   +-------------+
 *   |    views    |   |  views   |  |   |views |words |   |    views    |
 *   +------+------+   |          |w |   |      |      |   +-------------+
 *   |words |block |   +------+---+--+   |      +------+   |    words    |
 *   +------+------+   |      |block |   |      |block |   +----+--block-+
 *   BESIDE_BLOCK      IN_A_COLUMN       VIEWS_LEFT        ABOVE_BLOCK
 * </pre>
 */
enum SheetGround {
    /** Words left of the title block, views above both. */
    BESIDE_BLOCK {
        @Override
        Optional<Room> room(PaperSize paper, int revisions, List<Panel> panels, List<Material> materials) {
            var space = inner(paper);
            var block = TitleBlockTable.extent(paper, revisions);
            var wide = block.minX() - PAD_MM - space.minX();
            if (wide < COLUMN_MM) {
                return Optional.empty();
            }
            var columns = Math.max(1, (int) ((wide + GAP_MM) / (COLUMN_MM + GAP_MM)));
            var column = (wide - (columns - 1) * GAP_MM) / columns;
            var rows = PanelRows.of(panels, materials, column);
            for (var high = block.maxY() - space.minY(); high <= space.high() * 0.4; high += 5) {
                var words = Extent.ofSize(space.minX(), space.minY(), wide, high);
                var filled = Columns.fill(rows, words, column, GAP_MM);
                if (filled.isPresent()) {
                    var floor = Math.max(block.maxY(), words.maxY()) + PAD_MM;
                    return Optional.of(
                            new Room(new Extent(space.minX(), floor, space.maxX(), space.maxY()), filled.get()));
                }
            }
            return Optional.empty();
        }
    },
    /** Words in a column at the right, above the title block; views left of it. */
    IN_A_COLUMN {
        @Override
        Optional<Room> room(PaperSize paper, int revisions, List<Panel> panels, List<Material> materials) {
            var space = inner(paper);
            var floor = TitleBlockTable.extent(paper, revisions).maxY() + PAD_MM;
            if (space.wide() < 3 * COLUMN_MM) {
                return Optional.empty();
            }
            var rows = PanelRows.of(panels, materials, COLUMN_MM);
            var words = new Extent(space.maxX() - COLUMN_MM, floor, space.maxX(), space.maxY());
            return Columns.fill(rows, words, COLUMN_MM, GAP_MM)
                    .map(marks ->
                            new Room(new Extent(space.minX(), floor, words.minX() - GAP_MM, space.maxY()), marks));
        }
    },
    /** Views left of the title block, the sheet's full height; words above the block. */
    VIEWS_LEFT {
        @Override
        Optional<Room> room(PaperSize paper, int revisions, List<Panel> panels, List<Material> materials) {
            var space = inner(paper);
            var block = TitleBlockTable.extent(paper, revisions);
            var views =
                    new Extent(space.minX(), space.minY(), Math.max(space.minX(), block.minX() - PAD_MM), space.maxY());
            var words = new Extent(block.minX(), block.maxY() + PAD_MM, space.maxX(), space.maxY());
            var column = (words.wide() - GAP_MM) / 2;
            var rows = PanelRows.of(panels, materials, column);
            // The lowest height that holds all: columns of about the same length.
            for (var high = Math.min(10, words.high()); high < words.high() + 5; high += 5) {
                var top = new Extent(
                        words.minX(), Math.max(words.minY(), words.maxY() - high), words.maxX(), words.maxY());
                var filled = Columns.fill(rows, top, column, GAP_MM);
                if (filled.isPresent()) {
                    return Optional.of(new Room(views, filled.get()));
                }
            }
            return Optional.empty();
        }
    },
    /** Words above the title block, right across; views above them: for upright paper. */
    ABOVE_BLOCK {
        @Override
        Optional<Room> room(PaperSize paper, int revisions, List<Panel> panels, List<Material> materials) {
            var space = inner(paper);
            var floor = TitleBlockTable.extent(paper, revisions).maxY() + PAD_MM;
            var columns = Math.max(1, (int) ((space.wide() + GAP_MM) / (COLUMN_MM + GAP_MM)));
            var column = (space.wide() - (columns - 1) * GAP_MM) / columns;
            var rows = PanelRows.of(panels, materials, column);
            for (var high = rows.isEmpty() ? 0.0 : 10; high <= space.high() * 0.6; high += 5) {
                var words = new Extent(space.minX(), floor, space.maxX(), floor + high);
                var filled = Columns.fill(rows, words, column, GAP_MM);
                if (filled.isPresent()) {
                    return Optional.of(new Room(
                            new Extent(space.minX(), words.maxY() + PAD_MM, space.maxX(), space.maxY()), filled.get()));
                }
            }
            return Optional.empty();
        }
    };

    private static final double PAD_MM = 6;
    private static final double GAP_MM = 8;
    private static final double COLUMN_MM = 86;

    /**
     * Room on a sheet.
     *
     * @param views where the views may stand (mm)
     * @param words the words, in their places
     */
    record Room(Extent views, List<Mark> words) {}

    /**
     * The room left when words and title block have theirs.
     *
     * @return empty if the words don't fit this way
     */
    abstract Optional<Room> room(PaperSize paper, int revisions, List<Panel> panels, List<Material> materials);

    private static Extent inner(PaperSize paper) {
        return paper.space().grown(-PAD_MM);
    }
}
