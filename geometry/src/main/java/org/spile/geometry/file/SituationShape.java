package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.house.told.ToldSituation;
import org.spile.geometry.house.told.ToldState;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** A named state of the air. */
final class SituationShape {
    private static final Key<String> STANCE = Key.of(
                    "stance", new TopNameForm("stances", List.of()), "A M", "the stance that it holds in")
            .unsaid("the first");
    private static final Key<String> CLIMATE = Key.of(
            "climate", new TopNameForm("climate", List.of("latitude", "altitude")), "A M", "the state of the climate");
    private static final Key<Reading> WIND =
            Key.of("wind", Quantity.of(Kind.SPEED), "A", "how hard it blows").unsaid("0 m/s");
    private static final Key<String> WIND_FROM =
            Key.of("wind-from", new WordForm(Faces.SIDES), "A", "where it blows from, seen from the first trailer");
    private static final NamedForm<ToldState> STATES = new NamedForm<>(
            KeyNames.things("device", "units", "terminals", "openings"),
            new StateForm(
                    SituationShape::states,
                    "a speed of the fan, or a word (off, open, shut, stuck, clean, loaded), or how far"));

    static final Shape<ToldSituation> SHAPE = Shape.of(
                    "situation",
                    "a situation",
                    "A named state of the air; the first is home, the others say what differs. Every other key names a unit,"
                            + " a terminal or an opening.",
                    List.of(STANCE, CLIMATE, WIND, WIND_FROM),
                    values -> new ToldSituation(
                            values.path(),
                            values.id(),
                            values.others(STATES),
                            values.text(STANCE),
                            values.text(CLIMATE),
                            values.maybe(WIND),
                            values.text(WIND_FROM)))
            .besides(STATES);

    private SituationShape() {}

    private static StateForm.States states(Names.Named thing) {
        return switch (thing.section()) {
            case "units" -> new StateForm.States(speeds(thing.spot()), Optional.empty());
            case "terminals" ->
                device(thing.spot().child("kind").map(Spot::text).orElse(""));
            default -> StanceShape.moving(thing);
        };
    }

    private static List<String> speeds(Spot unit) {
        var speeds = new ArrayList<String>();
        unit.child("fan").ifPresent(fan -> fan.entries().forEach(entry -> speeds.add(entry.key())));
        speeds.add("off");
        return speeds;
    }

    private static StateForm.States device(String kind) {
        return switch (kind) {
            case "damper" -> new StateForm.States(List.of("open", "shut"), Optional.of(Kind.ANGLE));
            case "flap" -> new StateForm.States(List.of("works", "stuck"), Optional.empty());
            case "filter" -> new StateForm.States(List.of("clean", "loaded"), Optional.empty());
            default -> new StateForm.States(List.of("open", "shut"), Optional.empty());
        };
    }
}
