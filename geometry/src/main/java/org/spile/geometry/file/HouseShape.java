package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import org.spile.geometry.house.told.ToldCavity;
import org.spile.geometry.house.told.ToldClimate;
import org.spile.geometry.house.told.ToldFixture;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldLimits;
import org.spile.geometry.house.told.ToldLine;
import org.spile.geometry.house.told.ToldMass;
import org.spile.geometry.house.told.ToldMaterial;
import org.spile.geometry.house.told.ToldMover;
import org.spile.geometry.house.told.ToldProject;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.house.told.ToldSituation;
import org.spile.geometry.house.told.ToldStance;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.house.told.ToldUnit;

/** The whole file. */
final class HouseShape {
    /** The key of the default unit of length. */
    static final Key<String> LENGTHS = Key.of("lengths", WordForm.of("mm", "in"), "F", "the unit of a bare length")
            .unsaid("mm");

    /** The key of a house's own materials. */
    static final Key<Map<String, ToldMaterial>> MATERIALS =
            Key.of("materials", NamedForm.free(MaterialShape.SHAPE), "A M T", "what layers are made of");

    private static final Key<String> TITLE = Key.of("title", new TextForm("words"), "D", "what to call the house")
            .unsaid("the file's name");
    private static final Key<ToldProject> PROJECT = Key.of("project", ProjectShape.SHAPE, "D", "for the title block");
    private static final Key<Map<String, ToldTrailer>> TRAILERS = Key.of(
                    "trailers", NamedForm.free(TrailerShape.SHAPE), "F M T", "movable bases")
            .unsaid("one round what is there");
    private static final Key<Map<String, ToldRoom>> ROOMS =
            Key.of("rooms", NamedForm.free(RoomShape.SHAPE), "F A M", "volumes people use");
    private static final Key<Map<String, ToldCavity>> CAVITIES =
            Key.of("cavities", NamedForm.free(CavityShape.SHAPE), "F A M", "spaces meant for services");
    private static final Key<Map<String, ToldFixture>> FIXTURES =
            Key.of("fixtures", NamedForm.free(FixtureShape.SHAPE), "F", "what stays");
    private static final Key<Map<String, ToldMover>> MOVERS =
            Key.of("movers", NamedForm.free(MoverShape.SHAPE), "F", "what moves");
    private static final Key<Map<String, ToldUnit>> UNITS =
            Key.of("units", NamedForm.free(UnitShape.SHAPE), "F A M T", "what is to be fitted");
    private static final Key<Map<String, ToldTerminal>> TERMINALS =
            Key.of("terminals", NamedForm.free(TerminalShape.SHAPE), "F A", "where air meets a room or the weather");
    private static final Key<Map<String, ToldRun>> RUNS =
            Key.of("runs", NamedForm.free(RunShape.SHAPE), "F A M", "ducts");
    private static final Key<Map<String, ToldLine>> LINES =
            Key.of("lines", NamedForm.free(LineShape.SHAPE), "F M", "services that aren't ducts");
    private static final Key<Map<String, ToldMass>> MASSES =
            Key.of("masses", NamedForm.free(MassShape.SHAPE), "T", "known loads");
    private static final Key<ToldClimate> CLIMATE = Key.of("climate", ClimateShape.SHAPE, "A M", "the weather");
    private static final Key<ToldLimits> LIMITS = Key.of("limits", LimitsShape.SHAPE, "F A M T", "what you demand");
    private static final Key<Map<String, ToldStance>> STANCES = Key.of(
                    "stances", NamedForm.free(StanceShape.SHAPE), "F M T", "states of what moves, home first")
            .unsaid("as-built");
    private static final Key<Map<String, ToldSituation>> SITUATIONS =
            Key.of("situations", NamedForm.free(SituationShape.SHAPE), "A M", "states of the air, home first");
    private static final Key<Map<String, List<String>>> OPTIONS = Key.of(
            "options", NamedForm.free(ListForm.orOne(new EditForm())), "F A M T", "sets of edits, to compare layouts");

    static final Shape<ToldHouse> SHAPE = Shape.of(
            "file",
            "a house file",
            "A house: what stands there, what goes in, what is demanded of it.",
            List.of(
                    TITLE,
                    LENGTHS,
                    PROJECT,
                    TRAILERS,
                    ROOMS,
                    CAVITIES,
                    FIXTURES,
                    MOVERS,
                    UNITS,
                    TERMINALS,
                    RUNS,
                    LINES,
                    MASSES,
                    MATERIALS,
                    CLIMATE,
                    LIMITS,
                    STANCES,
                    SITUATIONS,
                    OPTIONS),
            HouseShape::make);

    private HouseShape() {}

    private static ToldHouse make(Values values) {
        if (values.map(TRAILERS).isEmpty()
                && values.map(ROOMS).isEmpty()
                && values.map(CAVITIES).isEmpty()) {
            values.scribe()
                    .wrong(
                            values.spot(),
                            "the file tells of no trailer, room or cavity.",
                            "Five lines are enough: cavities: {loft: {long: 1650, wide: 900, high: 262}}.");
        }
        return new ToldHouse(
                values.text(TITLE),
                values.or(PROJECT, new ToldProject("", "", "")),
                values.map(TRAILERS),
                values.map(ROOMS),
                values.map(CAVITIES),
                values.map(FIXTURES),
                values.map(MOVERS),
                values.map(UNITS),
                values.map(TERMINALS),
                values.map(RUNS),
                values.map(LINES),
                values.map(MASSES),
                values.map(MATERIALS),
                values.maybe(CLIMATE),
                values.or(LIMITS, ToldLimits.none()),
                values.map(STANCES),
                values.map(SITUATIONS),
                values.map(OPTIONS));
    }
}
