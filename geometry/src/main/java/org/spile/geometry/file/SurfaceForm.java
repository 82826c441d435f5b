package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ProfilePoint;
import org.spile.geometry.house.told.ToldLayer;
import org.spile.geometry.house.told.ToldSurface;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A surface: one number, or a map.
 *
 * @param shape the map
 * @param level the number
 * @param drops whether it is a ceiling or floor, which can be lowered
 */
record SurfaceForm(Shape<ToldSurface> shape, Quantity level, boolean drops) implements Form<ToldSurface> {
    private static final Key<List<ProfilePoint>> PROFILE = Key.of(
            "profile",
            ListForm.of(new ProfilePointForm()).atLeast(2),
            "F",
            "the points that it runs through, if it slopes");
    private static final Key<List<ToldLayer>> LININGS =
            Key.of("linings", Layers.list(), "F M", "what comes in front of it, from the air to the surface");
    private static final Key<List<ToldLayer>> LAYERS =
            Key.of("layers", Layers.list(), "F M T", "what lies behind it, from the inside out");
    private static final Key<Reading> SAG = Key.of(
                    "sag", Quantity.distance(), "F", "how far it may hang through in use")
            .unsaid("0");
    private static final Key<Reading> DROP =
            Key.of("drop", Quantity.signed(), "F", "how far it is lowered").unsaid("0");

    /** A ceiling or a floor, by its height. */
    static SurfaceForm dropping(double usualLeastMm, double usualMostMm) {
        Quantity level = Quantity.distance().usual(usualLeastMm, usualMostMm);
        Key<Reading> at = Key.of("at", level, "F", "its height above the finished floor");
        Shape<ToldSurface> shape = Shape.of(
                "level-surface",
                "a surface",
                "A ceiling or a floor.",
                List.of(at, PROFILE, LININGS, LAYERS, DROP, SAG),
                values -> make(values, at, true));
        return new SurfaceForm(shape, level, true);
    }

    /** A roof, a top or a side, which nobody lowers. */
    static SurfaceForm fixed() {
        Quantity level = Quantity.distance();
        Key<Reading> at = Key.of(
                "at", level, "F", "its height above the finished floor; of a side, its distance from the opposite one");
        Shape<ToldSurface> shape = Shape.of(
                "surface",
                "a surface",
                "A roof, a top or a side.",
                List.of(at, PROFILE, LININGS, LAYERS, SAG),
                values -> make(values, at, false));
        return new SurfaceForm(shape.hint("drop", "Only a ceiling or a floor can be lowered."), level, false);
    }

    private static ToldSurface make(Values values, Key<Reading> at, boolean drops) {
        if (values.has(at) && values.has(PROFILE)) {
            values.scribe()
                    .wrongThing(
                            values.spot(),
                            " has \"at\" and \"profile\".",
                            "A level surface has at, a sloping one profile.");
            return null;
        }
        return new ToldSurface(
                values.path(),
                values.maybe(at),
                values.list(PROFILE),
                values.list(LININGS),
                values.list(LAYERS),
                drops ? Optional.of(values.or(DROP, Kind.LENGTH, 0)) : Optional.empty(),
                values.maybe(SAG));
    }

    @Override
    public Optional<ToldSurface> read(Spot spot, Scribe scribe) {
        if (!spot.isText()) {
            return shape.read(spot, scribe);
        }
        Optional<Reading> drop =
                drops ? Optional.of(Reading.byDefault(spot.path() + ".drop", Kind.LENGTH, 0)) : Optional.empty();
        return level.read(spot, scribe)
                .map(at -> new ToldSurface(
                        spot.path(), Optional.of(at), List.of(), List.of(), List.of(), drop, Optional.empty()));
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.anyOf(level.schema(book), shape.schema(book));
    }

    @Override
    public String words() {
        return "length, or " + shape.words();
    }

    @Override
    public String linked() {
        return "length, or " + shape.linked();
    }

    @Override
    public List<Shape<?>> shapes() {
        return shape.shapes();
    }

    @Override
    public Optional<Form<?>> under(String step) {
        return shape.under(step);
    }

    @Override
    public List<String> keys() {
        return shape.keys();
    }
}
