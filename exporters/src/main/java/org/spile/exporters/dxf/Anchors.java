package org.spile.exporters.dxf;

import java.util.LinkedHashMap;
import java.util.Map;

/** Handles of records that others point at before they are written. */
final class Anchors {
    private final String plotStyle;
    private final String textStyle;
    private final String root;
    private final String layouts;
    private final Map<String, String> layoutOf = new LinkedHashMap<>();

    Anchors(TagWriter tags, Blocks blocks) {
        this.plotStyle = tags.handle();
        this.textStyle = tags.handle();
        this.root = tags.handle();
        this.layouts = tags.handle();
        layoutOf.put(Blocks.MODEL, tags.handle());
        blocks.papers().forEach(paper -> layoutOf.put(paper.name(), tags.handle()));
    }

    String plotStyle() {
        return plotStyle;
    }

    String textStyle() {
        return textStyle;
    }

    /** The root dictionary. */
    String root() {
        return root;
    }

    /** The dictionary of layouts. */
    String layouts() {
        return layouts;
    }

    /** The layout of a block; 0 for blocks that are none. */
    String layout(String block) {
        return layoutOf.getOrDefault(block, "0");
    }
}
