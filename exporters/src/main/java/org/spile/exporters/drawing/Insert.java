package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A symbol put in place, with what a parts list should know of it.
 *
 * @param pen whose it is; the layer it belongs to
 * @param symbol the picture
 * @param at where its origin goes (mm)
 * @param turnDeg degrees, counter-clockwise
 * @param attributes in the order a parts list shows them
 */
public record Insert(Pen pen, Symbol symbol, Vector2D at, double turnDeg, List<Attribute> attributes) implements Mark {
    /** Copies the attributes. */
    public Insert {
        Places.check(at);
        attributes = List.copyOf(attributes);
    }

    /**
     * One property of an inserted thing.
     *
     * @param tag its name, capitals, digits and underscores
     * @param value what it is
     */
    public record Attribute(String tag, String value) {
        /** Refuses tags with blanks; cleans the value. */
        public Attribute {
            if (!tag.matches("[A-Z0-9_]{1,40}")) {
                throw new IllegalArgumentException("attribute tag '" + tag + "' is not capitals, digits and _");
            }
            value = Lettering.printable(value);
        }
    }

    @Override
    public List<Stroke> strokes() {
        return symbol.picture().stream()
                .map(stroke -> stroke.put(turnDeg, at, pen.part()))
                .toList();
    }

    @Override
    public <R> R by(Cases<R> cases) {
        return cases.insert(this);
    }
}
