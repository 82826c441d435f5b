package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldEnd;
import org.spile.geometry.kernel.measure.Reading;

/**
 * An end of a run or a line: a name, or a place along a run.
 *
 * @param name what it may be
 * @param along a place along another run; its section is the same as this one's
 */
record EndForm(NameForm name, Shape<ToldEnd> along) implements Form<ToldEnd> {
    private static final Key<String> RUN =
            Key.of("run", NameForm.of("runs"), "F A", "the other run").needed();
    private static final Key<Reading> AFTER =
            Key.of("after", Quantity.distance(), "F A", "how far along it, from its start");
    private static final Key<String> SIDE =
            Key.of("side", WordForm.of("left", "right", "top", "bottom", "front", "rear"), "F A", "the side of it");

    /** An end of a run. */
    static final EndForm OF_RUN = new EndForm(
            NameForm.of("spigots", "terminals"),
            Shape.of(
                    "takeoff", "a takeoff", "A place along another run.", List.of(RUN, AFTER, SIDE), EndForm::takeoff));

    /** An end of a line. */
    static final EndForm OF_LINE = new EndForm(
            NameForm.of("ports", "fixtures", "units").or("outside"),
            Shape.of(
                    "branch",
                    "a branch",
                    "A place along another line.",
                    List.of(
                            Key.of("line", NameForm.of("lines"), "F", "the other line")
                                    .needed(),
                            AFTER),
                    EndForm::branch));

    private static ToldEnd takeoff(Values values) {
        return new ToldEnd(values.path(), values.need(RUN), true, values.maybe(AFTER), values.text(SIDE));
    }

    private static ToldEnd branch(Values values) {
        String line = values.spot().child("line").map(Spot::text).orElse("");
        return new ToldEnd(values.path(), line, true, values.maybe(AFTER), "");
    }

    @Override
    public Optional<ToldEnd> read(Spot spot, Scribe scribe) {
        if (spot.isMap()) {
            return along.read(spot, scribe);
        }
        return name.read(spot, scribe).map(named -> new ToldEnd(spot.path(), named, false, Optional.empty(), ""));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.anyOf(name.schema(book), along.schema(book));
    }

    @Override
    public String words() {
        return name.words() + ", or " + along.words();
    }

    @Override
    public String linked() {
        return name.words() + ", or " + along.linked();
    }

    @Override
    public List<Shape<?>> shapes() {
        return along.shapes();
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return along.under(step);
    }
}
