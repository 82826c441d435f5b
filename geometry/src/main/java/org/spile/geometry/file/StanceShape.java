package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.told.ToldStance;
import org.spile.geometry.house.told.ToldState;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A named state of everything that moves. */
final class StanceShape {
    private static final Key<Boolean> ROAD =
            Key.of("road", new YesForm(), "F T", "whether it is on the road").unsaid("no");
    private static final Key<Map<String, Reading>> TILT = Key.of(
            "tilt",
            new NamedForm<>(KeyNames.fixed("side", List.of("nose", "left")), Quantity.of(Kind.ANGLE)),
            "M T",
            "how it stands out of level, up positive");
    private static final NamedForm<ToldState> STATES = new NamedForm<>(
            KeyNames.things("thing that moves", "movers", "openings", "trailers", "masses"),
            new StateForm(StanceShape::states, "a word (shut, open, docked, away, full, half, empty), or how far"));

    static final Shape<ToldStance> SHAPE = Shape.of(
                    "stance",
                    "a stance",
                    "A named state of everything that moves; the first is home, the others say what differs. Every other key"
                            + " names a mover, an opening, a trailer or a store.",
                    List.of(ROAD, TILT),
                    values -> new ToldStance(
                            values.path(), values.id(), values.others(STATES), values.maybe(ROAD), values.map(TILT)))
            .besides(STATES);

    private StanceShape() {}

    private static StateForm.States states(Names.Named thing) {
        return switch (thing.section()) {
            case "trailers" ->
                new StateForm.States(
                        thing.spot().child("dock").isPresent() ? List.of("docked", "away") : List.of("away"),
                        Optional.empty());
            case "masses" ->
                new StateForm.States(
                        thing.spot().child("holds").isPresent() ? List.of("full", "half", "empty") : List.of(),
                        Optional.empty());
            default -> moving(thing);
        };
    }

    /** What swings turns by an angle, what slides goes a length, a bare hole does neither. */
    static StateForm.States moving(Names.Named thing) {
        if (thing.spot().child("hinge").isPresent()) {
            return new StateForm.States(List.of("shut", "open"), Optional.of(Kind.ANGLE));
        }
        if (thing.spot().child("slides").isPresent()) {
            return new StateForm.States(List.of("shut", "open"), Optional.of(Kind.LENGTH));
        }
        return new StateForm.States(List.of("shut", "open"), Optional.empty());
    }
}
