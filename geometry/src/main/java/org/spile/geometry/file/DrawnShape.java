package org.spile.geometry.file;

import java.util.List;

/** A shape of a drawing. */
final class DrawnShape {
    private static final Key<String> FROM = Key.of(
                    "from",
                    new TextForm("a file's name"),
                    "F",
                    "the drawing: a .dxf, .geojson or .wkt file beside the house file or in a folder below it")
            .needed();
    private static final Key<String> LAYER =
            Key.of("layer", new TextForm("a layer's name"), "F", "of a DXF: the layer of the one closed shape meant");
    private static final Key<String> ID = Key.of("id", new TextForm("an id"), "F", "of a GeoJSON: the feature meant");
    private static final Key<String> UNIT = Key.of(
            "unit", WordForm.of("mm", "cm", "m", "in", "ft"), "F", "of its numbers, where the drawing doesn't say");

    static final Shape<Drawn> SHAPE = Shape.of(
            "drawn",
            "a drawn shape",
            "A closed shape of a drawing.",
            List.of(FROM, LAYER, ID, UNIT),
            values -> new Drawn(values.need(FROM), values.text(LAYER), values.text(ID), values.text(UNIT)));

    private DrawnShape() {}

    /**
     * Where a shape is drawn; what was left out is empty.
     *
     * @param from the file
     * @param layer the DXF layer
     * @param id the GeoJSON feature
     * @param unit the unit of its numbers
     */
    record Drawn(String from, String layer, String id, String unit) {}
}
