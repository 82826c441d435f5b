package org.spile.analysis.duct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Reckoning;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A run looked at where it carries the least: of the sections along its path the one that loses the most per metre.
 *
 * @param run the run
 * @param narrow straight duct of that section, with the run's face and the site's air
 * @param least the same with every tolerance of its sides against it
 * @param place where that is
 * @param restsOn paths of assumed values: the roughness of its face if nobody told it
 */
record RunDuct(DuctRun run, StraightDuct narrow, StraightDuct least, CarryingPlace place, List<String> restsOn) {
    /** The speed at which sections are compared where no flow is told (m/s); common practice, no source. */
    private static final double USUAL_MS = 2;

    private static final double MM2 = 1e-6;
    private static final double SAME = 1e-9;
    private static final double STEP_MM = 1e-3;

    RunDuct {
        restsOn = List.copyOf(restsOn);
    }

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
        for (CarryingPlace place : CarryingPlace.along(run)) {
            Reckoning<StraightDuct> duct = StraightDuct.of(place.section(), roughMm, air);
            if (duct.result().isEmpty()) {
                return duct.map(never -> new RunDuct(run, never, never, place, restsOn));
            }
            double paPerM = duct.result().get().sizingPaPerM(flow(run));
            if (paPerM > most * (1 + SAME)) {
                most = paPerM;
                worst = duct.then(narrow -> StraightDuct.of(place.worst(), roughMm, air)
                        .map(least -> new RunDuct(run, narrow, least, place, restsOn)));
            }
        }
        return worst;
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

    /** It with its tolerances against it, held against that pipe. */
    Reckoning<PipeComparison> worst() {
        return PipeComparison.of(
                least, run.replacesMm().orElseThrow(), run.flowM3s().orElseThrow());
    }

    /**
     * Whether it carries like that pipe: as {@link PipeComparison} says, but <i>tight</i> where it passes only as long as its
     * tolerances aren't against it.
     */
    Reckoning<Verdict> verdict() {
        return compared()
                .then(made -> worst().map(worst -> made.verdict() == Verdict.PASSES && worst.verdict() != Verdict.PASSES
                        ? Verdict.TIGHT
                        : made.verdict()));
    }

    /** The readings its section rests on: how each moves the loss per metre, and how much its tolerance adds to that. */
    List<Layer> layers() {
        double flow = run.flowM3s().orElseThrow();
        double here = narrow.paPerM(flow);
        Map<String, Layer> layers = new LinkedHashMap<>();
        Section section = narrow.section();
        SectionShape shape = SectionShape.like(section);
        boolean round = section instanceof Section.Round;
        Section wider = round
                ? new Section.Round(section.wideMm() + STEP_MM)
                : shape.of(section.wideMm() + STEP_MM, section.highMm());
        add(place.sides().wide(), slope(wider, flow, here), layers);
        if (!round) {
            add(
                    place.sides().high(),
                    slope(shape.of(section.wideMm(), section.highMm() + STEP_MM), flow, here),
                    layers);
        }
        return List.copyOf(layers.values());
    }

    private double slope(Section other, double flow, double here) {
        return StraightDuct.of(other, narrow.roughMm(), narrow.air())
                .result()
                .map(duct -> (duct.paPerM(flow) - here) / STEP_MM)
                .orElse(0.0);
    }

    private static void add(Stack side, double paPerMForMm, Map<String, Layer> layers) {
        for (Layer layer : Layer.of(side)) {
            double before = layers.containsKey(layer.label())
                    ? layers.get(layer.label()).factor()
                    : 0;
            double factor = before + layer.factor() * paPerMForMm;
            double takes = factor > 0 ? factor * layer.plus() : -factor * layer.minus();
            layers.put(
                    layer.label(),
                    new Layer(
                            layer.label(),
                            factor,
                            layer.size(),
                            layer.plus(),
                            layer.minus(),
                            takes + 0.0,
                            layer.origin()));
        }
    }

    /** The run of the same id in another house. */
    static Optional<RunDuct> in(House house, String id) {
        return house.runs().stream()
                .filter(run -> run.id().equals(id))
                .findFirst()
                .flatMap(run -> of(house, run).result());
    }
}
