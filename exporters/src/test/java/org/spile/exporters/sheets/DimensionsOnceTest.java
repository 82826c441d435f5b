package org.spile.exporters.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;

class DimensionsOnceTest {
    @Test
    void twoThingsWithTheSameEnds_shareOneDimension() {
        assertEquals(
                List.of("1800", "870", "920"), values(new Extent(0, 0, 1800, 870), new Extent(0, 900, 1800, 1820)));
    }

    @Test
    void aThingOfNoLength_asksForNothing() {
        assertEquals(List.of("40"), values(new Extent(0, 0, 0, 40)));
    }

    private static List<String> values(Extent... things) {
        ViewDraft draft = ViewDraft.named("view", "View");
        var dimensions = new DimensionsOnce(draft);
        for (Extent thing : things) {
            draft.outline(Layer.ROOMS.pen(), new Extent(0, 0, 2000, 2000).corners());
            dimensions.level(thing, Side.BELOW, "a");
            dimensions.upright(thing, Side.LEFT, "a");
        }
        return draft.at(Scale.oneTo(20)).marks().stream()
                .filter(Dimensioned.class::isInstance)
                .map(mark -> ((Dimensioned) mark).says())
                .sorted()
                .toList();
    }
}
