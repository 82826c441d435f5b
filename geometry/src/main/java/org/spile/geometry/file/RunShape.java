package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.house.told.ToldScrews;
import org.spile.geometry.house.told.ToldStation;
import org.spile.geometry.house.told.ToldVanes;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A duct from opening to opening. */
final class RunShape {
    private static final Key<ToldEnd> FROM =
            Key.of("from", EndForm.OF_RUN, "F A", "where its air comes from").needed();
    private static final Key<ToldEnd> TO =
            Key.of("to", EndForm.OF_RUN, "F A", "where its air goes").needed();
    private static final Key<List<ToldLayer>> LAYERS =
            Key.of("layers", Layers.list(), "F A M T", "its wall and insulation, from the inside out");
    private static final Key<String> SIZES = Key.of(
                    "sizes", WordForm.of("inside", "outside"), "F A", "what its sections are taken over")
            .unsaid("inside");
    static final Key<List<ToldStation>> PATH = Key.of(
                    "path", ListForm.of(StationShape.SHAPE), "F A", "its legs, in flow order")
            .unsaid("to be routed");
    private static final Key<Reading> FLOW = Key.of("flow", Quantity.positive(Kind.FLOW), "A", "the flow wanted");
    private static final Key<Reading> REPLACES =
            Key.of("replaces", new ReplacesForm(), "A", "the round pipe that it stands in for");
    private static final Key<String> BENDS = Key.of(
                    "bends", WordForm.of("radius", "mitred", "vanes"), "F A", "how its corners are made")
            .unsaid("round ducts radius = size, others mitred");
    private static final Key<ToldVanes> VANES =
            Key.of("vanes", VanesShape.SHAPE, "A", "the vanes of its corners with vanes");
    private static final Key<ToldScrews> SCREWS = Key.of(
                    "screws", ScrewsShape.SHAPE, "A", "the screws whose tips stand into it")
            .unsaid("none");
    private static final Key<Reading> FLEXIBLE = Key.of(
                    "flexible", new FlexibleForm(), "F A", "that it is flexible, and its slack")
            .unsaid("rigid");

    static final Shape<ToldRun> SHAPE = Shape.of(
                    "run",
                    "a run",
                    "A duct from opening to opening.",
                    List.of(
                            PlacedKeys.TITLE,
                            PlacedKeys.LIKE,
                            FROM,
                            TO,
                            LAYERS,
                            SIZES,
                            PATH,
                            FLOW,
                            REPLACES,
                            BENDS,
                            VANES,
                            SCREWS,
                            FLEXIBLE),
                    RunShape::make)
            .hint("wide", "Sections stand in the path: path: [{wide: 300, high: 70}, ...].")
            .hint("high", "Sections stand in the path: path: [{wide: 300, high: 70}, ...].")
            .hint("round", "Sections stand in the path: path: [{round: 100}, ...].")
            .hint("insulation", "Wall and insulation are \"layers\", from the inside out.");

    private RunShape() {}

    private static ToldRun make(Values values) {
        List<ToldLayer> layers = values.list(LAYERS);
        List<ToldStation> stations = values.list(PATH);
        if (values.has(PATH)) {
            Slants.check(values.at(PATH), stations, values.scribe());
            if (!layers.isEmpty() && !values.has(SIZES)) {
                PrintedChannel.check(values.at(PATH), stations, layers, values.scribe());
            }
        }
        return new ToldRun(
                values.path(),
                values.id(),
                values.or(PlacedKeys.TITLE, values.id()),
                values.need(FROM),
                values.need(TO),
                layers,
                stations,
                values.maybe(FLOW),
                values.maybe(REPLACES),
                values.text(SIZES).equals("outside") ? Within.wall(layers, values.scribe()) : 0,
                values.text(BENDS),
                values.maybe(VANES).orElseGet(() -> VanesShape.usual(values.path() + ".vanes")),
                values.maybe(SCREWS),
                values.maybe(FLEXIBLE));
    }

    /** {@code {round: 100}}. */
    private record ReplacesForm() implements Form<Reading> {
        private static final Key<Reading> ROUND = Key.of(
                        "round", Quantity.size().usual(20, 1000), "A", "its diameter")
                .needed();
        private static final Shape<Reading> PIPE =
                Shape.of("replaced", "a round pipe", "A round pipe.", List.of(ROUND), values -> values.need(ROUND));

        @Override
        public Optional<Reading> read(Spot spot, Scribe scribe) {
            return PIPE.read(spot, scribe);
        }

        @Override
        public ObjectNode schema(SchemaBook book) {
            return PIPE.schema(book);
        }

        @Override
        public String words() {
            return "{round: length}";
        }

        @Override
        public Optional<Form<?>> under(String step) {
            return PIPE.under(step);
        }
    }
}
