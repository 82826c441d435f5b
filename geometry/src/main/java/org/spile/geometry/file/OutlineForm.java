package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.told.ToldOutline;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Parse;
import org.spile.geometry.kernel.measure.Reading;

/** A plan: corners, or a shape of a drawing beside the house file. */
record OutlineForm() implements Form<ToldOutline> {
    private static final int LEAST_CORNERS = 3;

    @Override
    public Optional<ToldOutline> read(Spot spot, Scribe scribe) {
        if (spot.isMap()) {
            return DrawnShape.SHAPE
                    .read(spot, scribe)
                    .flatMap(drawn -> scribe.drawings().outline(drawn, spot, scribe));
        }
        if (!spot.isList() || spot.items().size() < LEAST_CORNERS) {
            scribe.wrong(
                    spot,
                    (spot.isList() ? spot.items().size() + " corners are" : spot.found() + " is") + " no outline.",
                    "Write at least three corners, [[0, 0], [700, 0], [700, 420]]; or {from: plan.dxf, layer: NAME}.");
            return Optional.empty();
        }
        var corners = new ArrayList<Vector2D>();
        for (Spot corner : spot.items()) {
            corner(corner, scribe).ifPresent(corners::add);
        }
        if (corners.size() < spot.items().size()) {
            return Optional.empty();
        }
        return OutlineRules.sound(spot, corners, scribe)
                ? Optional.of(new ToldOutline(spot.path(), corners, ""))
                : Optional.empty();
    }

    private static Optional<Vector2D> corner(Spot spot, Scribe scribe) {
        List<Spot> pair = spot.items();
        if (pair.size() != 2 || !pair.get(0).isText() || !pair.get(1).isText()) {
            scribe.wrong(spot, "a corner is two lengths.", "Write [forward, left], as [700, 420].");
            return Optional.empty();
        }
        Optional<Double> forward = length(pair.get(0), scribe);
        Optional<Double> left = length(pair.get(1), scribe);
        return forward.flatMap(x -> left.map(y -> Vector2D.of(x, y)));
    }

    private static Optional<Double> length(Spot spot, Scribe scribe) {
        Parse<Reading> parse = scribe.quantities().reading(spot.text(), Ask.coordinate());
        parse.refusal().ifPresent(why -> Quantity.refused(spot, why, scribe));
        return parse.value().map(Reading::value);
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        ObjectNode length = Quantity.signed().schema(book);
        return book.defined(
                "outline",
                () -> book.anyOf(book.list(book.pair(length), false, LEAST_CORNERS), DrawnShape.SHAPE.schema(book)));
    }

    @Override
    public String words() {
        return "[[forward, left], ...], or a drawn shape";
    }

    @Override
    public String linked() {
        return "[[forward, left], ...], or " + DrawnShape.SHAPE.linked();
    }

    @Override
    public List<Shape<?>> shapes() {
        return DrawnShape.SHAPE.shapes();
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return DrawnShape.SHAPE.under(step);
    }
}
