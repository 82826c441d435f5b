package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Check;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Source;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Does it go on the road: is each trailer, with everything on it where a stance on the road has it, within the sizes the user
 * allows, and does whatever goes from one trailer to another part.
 */
public final class Road implements Check {
    private static final String NAME = "road";
    private static final String PARTS = NAME + ".parts";
    private static final String LAW = "; road law and the vehicle's papers decide";

    /** The question, for every stance on the road. */
    public Road() {
        // Nothing to set up; stated because the package is exported.
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public List<String> names() {
        List<String> names = new ArrayList<>();
        for (RoadSize size : RoadSize.values()) {
            names.add(NAME + "." + size.word());
        }
        names.add(PARTS);
        return List.copyOf(names);
    }

    @Override
    public List<Finding> findings(House house) {
        List<Finding> findings = new ArrayList<>();
        for (String stance : house.stances()) {
            if (house.scene(stance).road()) {
                house.told().trailers().values().forEach(trailer -> findings.addAll(sizes(house, stance, trailer)));
            }
        }
        house.travels().crossings().forEach(crossing -> findings.add(parts(house, crossing)));
        return findings;
    }

    private static List<Finding> sizes(House house, String stance, ToldTrailer trailer) {
        List<Finding> findings = new ArrayList<>();
        String id = trailer.deck().id();
        Scene alone = house.travels().alone(stance, id);
        for (RoadSize size : RoadSize.values()) {
            Reading told = house.told().limits().road().get(size.word());
            if (told != null) {
                findings.add(size.of(alone, house.travels().deck(id))
                        .map(extent -> size(stance, trailer, size, extent, house.now(told)))
                        .orElseGet(() -> open(stance, trailer, size)));
            }
        }
        return findings;
    }

    private static Finding size(
            String stance, ToldTrailer trailer, RoadSize size, RoadSize.Extent extent, Reading limit) {
        Demand demand = new Demand(0, 0, Source.file(limit.path()) + LAW, Optional.empty());
        Stack left = Stack.of(limit).minus(extent.size());
        Outcome outcome = Outcome.of(left, demand);
        String path = trailer.deck().path();
        String check = NAME + "." + size.word();
        return new Finding(
                Finding.idOf(check, path, Optional.empty()),
                check,
                path,
                Optional.empty(),
                List.of(stance),
                List.of(),
                outcome.verdict(),
                Optional.of(outcome.value()),
                Optional.of(outcome.required()),
                Optional.of(outcome.margin()),
                Optional.of(outcome.worst()),
                outcome.likely(),
                Layer.of(left),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                trailer.deck().title() + " is " + Mm.besides(extent.size().valueMm(), limit.value()) + " " + size.word()
                        + " on the road, from " + extent.from() + " to " + extent.to() + ", and "
                        + Mm.text(limit.value()) + " are allowed: " + outcome.comesTo(),
                outcome.restsOn(),
                List.of(),
                demand.source());
    }

    private static Finding open(String stance, ToldTrailer trailer, RoadSize size) {
        String path = trailer.deck().path();
        return Finding.open(
                        NAME + "." + size.word(),
                        path,
                        Optional.of(path + ".ground"),
                        "How high " + trailer.deck().title() + " stands on the road isn't known: " + path
                                + ".ground would settle it.")
                .heldIn(List.of(stance), List.of());
    }

    /** Asked wherever the two are apart; if no stance has them apart, of the house as it is. */
    private static Finding parts(House house, Travels.Crossing crossing) {
        List<String> apart = house.stances().stream()
                .filter(stance -> apart(house.scene(stance), crossing))
                .toList();
        Optional<Quantity> bridged = crossing.parts().isPresent()
                ? Optional.empty()
                : Optional.of(Quantity.mm(Math.rint(-crossing.bridgedMm() * 1000) / 1000));
        String both = crossing.title() + " goes from " + crossing.from() + " to " + crossing.to();
        String because = crossing.parts()
                .map(leg -> both + " and parts at " + leg + ".")
                .orElseGet(() -> both + ", " + Mm.text(crossing.bridgedMm())
                        + " of it between the two, and parts nowhere: it tears, or it holds them together.");
        List<Remedy> remedies = crossing.parts().isPresent()
                ? List.of()
                : List.of(new Remedy(
                        "not a matter of a number: let the leg between them come out, with parts: and what it is, as "
                                + "parts: cuff",
                        List.of()));
        return new Finding(
                Finding.idOf(PARTS, crossing.path(), Optional.empty()),
                PARTS,
                crossing.path(),
                Optional.of("trailers." + crossing.to()),
                apart.isEmpty() ? house.stances() : apart,
                List.of(),
                crossing.parts().isPresent() ? Verdict.PASSES : Verdict.FAILS,
                bridged,
                bridged.map(mm -> Quantity.mm(0)),
                bridged,
                bridged,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                because,
                List.of(),
                remedies,
                Source.reason("two trailers that part can't share a pipe"));
    }

    private static boolean apart(Scene scene, Travels.Crossing crossing) {
        long there = scene.trailers().stream()
                .filter(place ->
                        place.id().equals(crossing.from()) || place.id().equals(crossing.to()))
                .count();
        return there < 2 || scene.road();
    }
}
