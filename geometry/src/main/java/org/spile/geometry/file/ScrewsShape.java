package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldScrews;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** Screws of joints. */
final class ScrewsShape {
    /** Sheet-metal screw ST4.2 (No. 8), ISO 1478. */
    private static final double USUAL_THICK_MM = 4.2;
    /** Common practice, no source. */
    private static final double USUAL_APART_MM = 150;

    private static final Key<Reading> TIP = Key.of(
                    "tip", Quantity.size().usual(1, 60), "A", "how far each stands into the duct")
            .needed();
    private static final Key<Reading> THICK = Key.of("thick", Quantity.size().usual(1, 12), "A", "the diameter of each")
            .unsaid("4.2");
    private static final Key<Reading> APART = Key.of(
                    "apart", Quantity.size().usual(20, 600), "A", "from screw to screw round a joint, three at least")
            .unsaid("150");

    static final Shape<ToldScrews> SHAPE = Shape.of(
            "screws",
            "screws",
            "The screws round every joint of a run.",
            List.of(TIP, THICK, APART),
            values -> new ToldScrews(
                    values.need(TIP),
                    values.or(THICK, Kind.LENGTH, USUAL_THICK_MM),
                    values.or(APART, Kind.LENGTH, USUAL_APART_MM)));

    private ScrewsShape() {}
}
