package org.spile.analysis.duct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

/**
 * A run looked at where it carries the least: of the sections its legs begin and end with the one that loses the most per
 * metre.
 *
 * @param run the run
 * @param narrow straight duct of that section, with the run's face and the site's air
 * @param leg the leg that has it
 * @param atMm its station (mm)
 * @param restsOn paths of assumed values: the roughness of its face if nobody told it
 */
record RunDuct(DuctRun run, StraightDuct narrow, DuctLeg leg, double atMm, List<String> restsOn) {
    /** The speed at which sections are compared where no flow is told (m/s); common practice, no source. */
    private static final double USUAL_MS = 2;

    private static final double MM2 = 1e-6;

    RunDuct {
        restsOn = List.copyOf(restsOn);
    }

    /** A section with its place. */
    private record Place(Section section, DuctLeg leg, double atMm) {}

    /** Not known of a flexible duct, whose folds no formula here knows, and where air or face are out of range. */
    static Reckoning<RunDuct> of(House house, DuctRun run) {
        if (house.told().runs().get(run.id()).flexible().isPresent()) {
            return Reckoning.none("It is flexible, and what its folds take isn't worked out yet.");
        }
        Optional<Reading> rough = rough(house, run);
        double roughMm = rough.map(Reading::value).orElse(DuctFace.usual().roughMm());
        boolean guessed = rough.map(known -> known.origin() == Origin.DEFAULT || known.origin() == Origin.ASSUMED)
                .orElse(true);
        List<String> restsOn =
                guessed ? List.of(rough.map(Reading::path).orElse(run.path() + ".layers")) : List.<String>of();
        return air(house).then(air -> narrowest(run, roughMm, air, restsOn));
    }

    private static Reckoning<RunDuct> narrowest(DuctRun run, double roughMm, Air air, List<String> restsOn) {
        Reckoning<RunDuct> worst = Reckoning.none("The run has no leg.");
        double most = 0;
        for (Place place : places(run)) {
            Reckoning<StraightDuct> duct = StraightDuct.of(place.section(), roughMm, air);
            if (duct.result().isEmpty()) {
                return duct.map(never -> new RunDuct(run, never, place.leg(), place.atMm(), restsOn));
            }
            double paPerM = duct.result().get().sizingPaPerM(flow(run));
            if (paPerM > most) {
                most = paPerM;
                worst = duct.map(narrow -> new RunDuct(run, narrow, place.leg(), place.atMm(), restsOn));
            }
        }
        return worst;
    }

    private static List<Place> places(DuctRun run) {
        List<Place> places = new ArrayList<>();
        double atMm = 0;
        for (DuctLeg leg : run.legs()) {
            places.add(new Place(leg.start(), leg, atMm));
            atMm += leg.lengthMm();
            places.add(new Place(leg.end(), leg, atMm));
        }
        return places;
    }

    /** The flow at which sections are compared: the run's, or a usual one, which gives the same order. */
    private static double flow(DuctRun run) {
        return run.flowM3s()
                .filter(flow -> flow > 0)
                .orElseGet(() -> USUAL_MS
                        * MM2
                        * run.legs().stream()
                                .mapToDouble(leg -> leg.end().areaMm2())
                                .min()
                                .orElse(1));
    }

    private static Reckoning<Air> air(House house) {
        double altitudeM = house.told()
                .climate()
                .flatMap(climate -> climate.altitude())
                .map(told -> house.now(told).value())
                .orElse(0.0);
        return Air.usual(altitudeM);
    }

    /** What its innermost layer says of its face. */
    private static Optional<Reading> rough(House house, DuctRun run) {
        ToldRun told = house.told().runs().get(run.id());
        return told.layers().isEmpty()
                ? Optional.empty()
                : house.materials().named(told.layers().get(0).material()).flatMap(Material::rough);
    }

    /** Clear depth where it is narrowest: its short side (mm). */
    double depthMm() {
        return Math.min(narrow.section().wideMm(), narrow.section().highMm());
    }

    /** Least clear area along it (mm2), with what stands into it taken off. */
    double leastAreaMm2() {
        return AreaProfile.of(run).least().areaMm2();
    }

    /** The pipe it stands in for, with the same face and air. */
    Reckoning<StraightDuct> pipe() {
        return StraightDuct.of(new Section.Round(run.replacesMm().orElseThrow()), narrow.roughMm(), narrow.air());
    }

    /** It held against that pipe, at its flow. */
    Reckoning<PipeComparison> compared() {
        return PipeComparison.of(
                narrow, run.replacesMm().orElseThrow(), run.flowM3s().orElseThrow());
    }

    /** The run of the same id in another house. */
    static Optional<RunDuct> in(House house, String id) {
        return house.runs().stream()
                .filter(run -> run.id().equals(id))
                .findFirst()
                .flatMap(run -> of(house, run).result());
    }
}
