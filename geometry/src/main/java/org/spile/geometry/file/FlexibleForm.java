package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** The slack of a flexible duct: a share, or {@code yes} for 15 %. */
record FlexibleForm() implements Form<Reading> {
    private static final Quantity SHARE = Quantity.of(Kind.RATIO);
    /** Slack of a flexible duct as usually fitted; common practice, no source. */
    private static final double USUAL_SLACK = 0.15;

    @Override
    public Optional<Reading> read(Spot spot, Scribe scribe) {
        if (spot.isText() && (spot.text().equals("yes") || spot.text().equals("true"))) {
            return Optional.of(Reading.byDefault(spot.path(), Kind.RATIO, USUAL_SLACK));
        }
        return SHARE.read(spot, scribe);
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.anyOf(book.words(List.of("yes", "true")), SHARE.schema(book));
    }

    @Override
    public String words() {
        return "share, or yes (15 %)";
    }
}
