package org.spile.exporters.drawing;

import java.util.Collection;
import java.util.List;

/** What marks have in common when taken together. */
final class Marks {
    private Marks() {}

    /** The boxes of all texts among marks. */
    static List<Patch> texts(Collection<Mark> marks, double unitsPerMm) {
        return marks.stream()
                .flatMap(mark -> mark.strokes().stream())
                .filter(Text.class::isInstance)
                .map(stroke -> ((Text) stroke).patch(unitsPerMm))
                .toList();
    }
}
