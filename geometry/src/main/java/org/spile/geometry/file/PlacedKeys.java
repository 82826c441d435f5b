package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.FaceDistance;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldBox;
import org.spile.geometry.house.told.ToldOutline;
import org.spile.geometry.house.told.ToldSizes;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** The keys that everything with a place shares, with the sizes usual for it. */
final class PlacedKeys {
    static final Key<String> TITLE =
            Key.of("title", new TextForm("words"), "D", "what people call it").unsaid("its id");
    static final Key<String> LIKE =
            Key.of("like", new TextForm("the id of another of its section"), "F", "what it copies before its own keys");
    static final Key<List<FaceDistance>> AT = Key.of("at", new PlaceForm(Faces.ALL), "F", "where it is");
    static final Key<ToldOutline> OUTLINE =
            Key.of("outline", new OutlineForm(), "F", "its plan, in place of long and wide");
    static final Key<Reading> TURNED = Key.of(
                    "turned", Quantity.of(Kind.ANGLE), "F", "about the upright axis, nose to the left")
            .unsaid("0 deg");
    static final Key<List<ToldBox>> BODIES =
            Key.of("bodies", ListForm.of(BoxShape.SHAPE), "F", "further boxes, placed from the faces of the first");
    static final Key<Reading> MASS = Key.of("mass", Quantity.positive(Kind.MASS), "T", "what it weighs");
    static final Key<Reading> ROUND =
            Key.of("round", Quantity.size().usual(5, 1500), "F", "its diameter, in place of two sizes");

    private final Key<String> in;
    private final Key<Reading> longMm;
    private final Key<Reading> wide;
    private final Key<Reading> high;

    private PlacedKeys(Key<String> in, Key<Reading> longMm, Key<Reading> wide, Key<Reading> high) {
        this.in = in;
        this.longMm = longMm;
        this.wide = wide;
        this.high = high;
    }

    /**
     * The keys of a thing.
     *
     * @param in what it may be in
     * @param across usual sizes fore and aft and across
     * @param up usual sizes upwards
     */
    static PlacedKeys of(NameForm in, UsualSize across, UsualSize up) {
        return of(in, across, up, "its size fore and aft");
    }

    /** As {@link #of(NameForm, UsualSize, UsualSize)}, with words for {@code long}. */
    static PlacedKeys of(NameForm in, UsualSize across, UsualSize up, String longSays) {
        return new PlacedKeys(
                Key.of("in", in, "F", "what it is in").unsaid("the only one that fits"),
                Key.of("long", sized(across), "F", longSays),
                Key.of("wide", sized(across), "F", "its size across"),
                Key.of("high", sized(up), "F", "its size upwards"));
    }

    private static Quantity sized(UsualSize usual) {
        return Quantity.size().usual(usual.leastMm(), usual.mostMm());
    }

    Key<String> in() {
        return in;
    }

    Key<Reading> longMm() {
        return longMm;
    }

    Key<Reading> wide() {
        return wide;
    }

    Key<Reading> high() {
        return high;
    }

    /** Name, place and plan: for rooms. */
    List<Key<?>> plan() {
        return List.of(TITLE, LIKE, in, AT, longMm, wide, OUTLINE);
    }

    /** Name, place and sizes: for cavities and terminals. */
    List<Key<?>> space() {
        return List.of(TITLE, LIKE, in, AT, longMm, wide, high, OUTLINE);
    }

    /** All of them: for what has bodies. */
    List<Key<?>> thing() {
        return List.of(TITLE, LIKE, in, AT, longMm, wide, high, ROUND, OUTLINE, TURNED, BODIES, MASS);
    }

    /** These, then others. */
    static List<Key<?>> and(List<Key<?>> first, Key<?>... then) {
        var all = new ArrayList<>(first);
        all.addAll(List.of(then));
        return List.copyOf(all);
    }

    /** What was read of them. */
    Placed placed(Values values) {
        Optional<String> container = values.maybe(in);
        if (container.isPresent() && values.has(AT)) {
            Faces.check(values.at(AT), container.get(), values.scribe());
        }
        var sizes = new ToldSizes(
                values.maybe(longMm),
                values.maybe(wide),
                values.maybe(high),
                values.maybe(ROUND),
                values.maybe(OUTLINE));
        SizeRules.check(values, sizes);
        return new Placed(
                values.path(),
                values.id(),
                values.or(TITLE, values.id()),
                container,
                values.list(AT),
                sizes,
                values.maybe(TURNED),
                values.list(BODIES),
                values.maybe(MASS));
    }
}
