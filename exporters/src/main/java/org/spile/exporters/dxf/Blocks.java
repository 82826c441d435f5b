package org.spile.exporters.dxf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Insert;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.Symbol;

/** The blocks of a file: model space, a paper space a sheet, one for each symbol, one for each dimension. */
final class Blocks {
    static final String MODEL = "*Model_Space";

    private final List<Paper> papers = new ArrayList<>();
    private final Map<SymbolAt, SymbolBlock> symbols = new LinkedHashMap<>();
    private final List<DimensionBlock> dimensions = new ArrayList<>();
    private final Map<DimensionAt, String> names = new LinkedHashMap<>();
    private final Map<String, String> records = new LinkedHashMap<>();
    private final Set<String> taken = new LinkedHashSet<>();

    /** A sheet and the block that holds what stands on its paper. */
    record Paper(Sheet sheet, String name) {}

    /** A symbol's block at a scale; texts in it have their size from there. */
    record SymbolBlock(Symbol symbol, String name, double unit, Set<String> tags) {}

    /** A dimension's block: what the layout drew. */
    record DimensionBlock(Dimensioned dimension, String name, double unit, Vector2D shift) {}

    private record SymbolAt(Symbol symbol, double unit) {}

    private record DimensionAt(Dimensioned dimension, double unit, Vector2D shift) {}

    private Blocks() {}

    static Blocks of(List<Sheet> sheets, ModelSpace space) {
        var blocks = new Blocks();
        for (var i = 0; i < sheets.size(); i++) {
            blocks.papers.add(new Paper(sheets.get(i), i == 0 ? "*Paper_Space" : "*Paper_Space" + (i - 1)));
        }
        for (var placed : space.views()) {
            for (var mark : placed.view().marks()) {
                blocks.take(mark, placed.view().unitsPerMm(), placed.shift());
            }
        }
        for (var sheet : sheets) {
            sheet.marks().forEach(mark -> blocks.take(mark, 1, Vector2D.ZERO));
        }
        return blocks;
    }

    private void take(Mark mark, double unit, Vector2D shift) {
        if (mark instanceof Dimensioned dimension) {
            var name = "*D" + (dimensions.size() + 1);
            names.put(new DimensionAt(dimension, unit, shift), name);
            dimensions.add(new DimensionBlock(dimension, name, unit, shift));
        } else if (mark instanceof Insert insert) {
            var block = symbols.computeIfAbsent(
                    new SymbolAt(insert.symbol(), unit),
                    none -> new SymbolBlock(
                            insert.symbol(), free(insert.symbol().name()), unit, new LinkedHashSet<>()));
            insert.attributes().forEach(attribute -> block.tags().add(attribute.tag()));
        }
    }

    /** A name that no other block has, whatever the case of its letters. */
    private String free(String wanted) {
        var name = wanted;
        for (var n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
            name = wanted + "-" + n;
        }
        return name;
    }

    List<Paper> papers() {
        return papers;
    }

    List<SymbolBlock> symbols() {
        return List.copyOf(symbols.values());
    }

    List<DimensionBlock> dimensions() {
        return dimensions;
    }

    String name(Symbol symbol, double unit) {
        return symbols.get(new SymbolAt(symbol, unit)).name();
    }

    String name(Dimensioned dimension, Space space) {
        return names.get(new DimensionAt(dimension, space.unit(), space.shift()));
    }

    /** All names, in the order they are written. */
    List<String> all() {
        var all = new ArrayList<String>();
        all.add(MODEL);
        papers.forEach(paper -> all.add(paper.name()));
        symbols.values().forEach(symbol -> all.add(symbol.name()));
        dimensions.forEach(dimension -> all.add(dimension.name()));
        return all;
    }

    /** Notes the handle of a block's record. */
    void record(String name, String handle) {
        records.put(name, handle);
    }

    /** The handle of a block's record, which owns all that is in the block. */
    String record(String name) {
        return records.get(name);
    }
}
