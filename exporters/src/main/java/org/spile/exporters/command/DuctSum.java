package org.spile.exporters.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.spile.analysis.duct.AnyFlow;
import org.spile.analysis.duct.Aspect;
import org.spile.analysis.duct.CarryingWidth;
import org.spile.analysis.duct.DuctFace;
import org.spile.analysis.duct.EqualFriction;
import org.spile.analysis.duct.FrictionLoss;
import org.spile.analysis.duct.PipeComparison;
import org.spile.analysis.duct.Regime;
import org.spile.analysis.duct.SectionWorth;
import org.spile.analysis.duct.SmallRounds;
import org.spile.analysis.duct.Spread;
import org.spile.analysis.duct.StraightDuct;
import org.spile.analysis.finding.Reckoning;
import org.spile.exporters.table.Sum;
import org.spile.exporters.table.Sum.Found;
import org.spile.exporters.table.Sum.Group;
import org.spile.exporters.table.Sum.Line;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.kernel.measure.Unit;
import org.spile.geometry.kernel.measure.Written;

/** Puts the answers of {@code reckon duct} together. */
final class DuctSum {
    private static final double VERY_FLAT = 8;
    private static final double MM_PER_M = 1000;

    private final DuctAsked asked;
    private final DuctFound found;

    private DuctSum(DuctAsked asked) {
        this.asked = asked;
        this.found = new DuctFound(asked.inInches());
    }

    static Sum of(DuctAsked asked) {
        return new DuctSum(asked).sum();
    }

    private Sum sum() {
        var groups = new ArrayList<Group>();
        asked.section().ifPresent(section -> groups.add(section(section)));
        asked.section().ifPresent(section -> groups.add(flow(section)));
        asked.insteadMm().ifPresent(pipe -> groups.add(instead(pipe)));
        return new Sum(BuildVersion.number(), "duct", title(), groups, cautions());
    }

    private String title() {
        var duct = asked.section()
                .map(found::words)
                .orElseGet(() -> "a duct " + found.text(asked.depthMm().orElseThrow()) + " high");
        var flow = asked.flowM3s().map(m3s -> " at " + found.flow(m3s));
        var pipe = asked.insteadMm().map(mm -> " in place of a round " + found.text(mm));
        return duct + flow.orElse("") + pipe.orElse("");
    }

    private Group section(Section section) {
        var worth = SectionWorth.of(section);
        var handbook = section instanceof Section.FlatOval ? "Heyt and Diaz, flat oval" : "Huebscher, at any flow";
        return new Group(
                "section",
                "The section, whatever flows",
                List.of(
                        new Line("area", "clear area", found.area(worth.areaMm2()), ""),
                        new Line("hydraulic diameter", "hydraulic diameter", found.length(worth.hydraulicMm()), ""),
                        new Line("aspect", "long side over short", DuctFound.number(worth.aspect(), 2), ""),
                        new Line(
                                "round of equal area",
                                "round of equal area",
                                found.length(worth.equalAreaMm()),
                                section instanceof Section.Round ? "" : "the same hole, not the same duct"),
                        new Line(
                                "handbook round",
                                "handbooks' equal round",
                                DuctFound.found(worth.handbookMm(), found::length),
                                section instanceof Section.Round
                                                || worth.handbookMm().result().isEmpty()
                                        ? ""
                                        : handbook)));
    }

    private Group flow(Section section) {
        var lines = new ArrayList<>(circumstances());
        if (asked.flowM3s().isEmpty()) {
            lines.add(open("no flow was said; write --flow."));
            return new Group("flow", "With air in it", lines);
        }
        double flowM3s = asked.flowM3s().get();
        var duct = StraightDuct.of(section, asked.roughMm(), asked.air());
        var loss = duct.then(straight -> straight.at(flowM3s));
        loss.because().ifPresent(because -> lines.add(open(because)));
        loss.result().ifPresent(known -> lines.addAll(lines(duct.result().orElseThrow(), known, flowM3s)));
        return new Group("flow", "With air in it", lines);
    }

    private List<Line> lines(StraightDuct duct, FrictionLoss loss, double flowM3s) {
        var lines = new ArrayList<Line>();
        lines.add(new Line("speed", "speed", DuctFound.one(loss.speedMs(), "m/s", 2), ""));
        lines.add(new Line("regime", "the flow is", new Found.Said(loss.regime().words()), ""));
        lines.add(new Line(
                "reynolds", "Reynolds number", DuctFound.number(loss.reynolds(), 0), "on the hydraulic diameter"));
        lines.add(new Line(
                "friction reynolds",
                "friction is taken at Re*",
                DuctFound.number(loss.equivalentReynolds(), 0),
                duct.section() instanceof Section.Round ? "" : "method J"));
        lines.add(new Line("friction", "friction per metre", DuctFound.spread(loss.paPerM(), "Pa/m", 3), ""));
        asked.lengthMm().ifPresent(mm -> lines.add(over(mm, loss)));
        lines.add(new Line(
                "equal round",
                "carries like a round of",
                DuctFound.found(EqualFriction.roundMm(duct, flowM3s), found::lengths),
                ""));
        smalls(duct, flowM3s).forEach(lines::add);
        return lines;
    }

    private Line over(double lengthMm, FrictionLoss loss) {
        var pa = loss.paPerM();
        double metres = lengthMm / MM_PER_M;
        var over = new Spread(pa.low() * metres, pa.value() * metres, pa.high() * metres);
        return new Line("friction over length", "over " + found.text(lengthMm), DuctFound.spread(over, "Pa", 2), "");
    }

    private List<Line> smalls(StraightDuct duct, double flowM3s) {
        double worthMm = EqualFriction.sizingRoundMm(duct, flowM3s).result().orElse(0.0);
        var sizes = asked.smallMm()
                .map(List::of)
                .orElseGet(() ->
                        found.pipesMm().stream().filter(mm -> mm < worthMm).toList());
        return sizes.stream()
                .map(mm -> {
                    var count = SmallRounds.count(duct, mm, flowM3s);
                    var share = count.result()
                            .map(n -> found.flow(flowM3s / n) + " each")
                            .orElse("");
                    return new Line(
                            "rounds of " + found.text(mm),
                            "rounds of " + found.text(mm),
                            DuctFound.found(count, n -> DuctFound.number(n, 0)),
                            share);
                })
                .toList();
    }

    private Group instead(double pipeMm) {
        var lines = new ArrayList<Line>();
        var pipe = StraightDuct.of(new Section.Round(pipeMm), asked.roughMm(), asked.air());
        asked.flowM3s()
                .ifPresent(flow -> lines.add(new Line(
                        "pipe friction",
                        "the pipe's friction",
                        DuctFound.found(
                                pipe.then(round -> round.at(flow)), loss -> DuctFound.spread(loss.paPerM(), "Pa/m", 3)),
                        "")));
        asked.section().ifPresent(section -> asked.flowM3s().ifPresent(flow -> compared(section, pipeMm, flow, lines)));
        asked.depthMm().ifPresent(depth -> lines.addAll(widths(pipe, depth)));
        return new Group("instead", "In place of a round " + found.text(pipeMm) + " of the same face", lines);
    }

    private void compared(Section section, double pipeMm, double flowM3s, List<Line> lines) {
        var comparison = StraightDuct.of(section, asked.roughMm(), asked.air())
                .then(duct -> PipeComparison.of(duct, pipeMm, flowM3s));
        lines.add(new Line(
                "times the pipe's",
                "times the pipe's loss",
                DuctFound.found(comparison.map(PipeComparison::ratio), ratio -> DuctFound.number(ratio, 2)),
                ""));
        lines.add(new Line(
                "carries like it",
                "carries like it",
                DuctFound.found(comparison, made -> new Found.Said(DuctFound.verdict(made))),
                ""));
    }

    private List<Line> widths(Reckoning<StraightDuct> pipe, double depthMm) {
        var label = "wide enough, " + found.text(depthMm) + " high";
        if (asked.flowM3s().isEmpty()) {
            var any = pipe.then(round -> AnyFlow.widthMm(round, asked.shape(), depthMm));
            return List.of(new Line(
                    "width",
                    label,
                    DuctFound.found(any, found::lengths),
                    "at " + Written.number(AnyFlow.QUIET_MS, 0) + " to " + Written.number(AnyFlow.BRISK_MS, 0)
                            + " m/s in the pipe; --flow says it closer"));
        }
        double flowM3s = asked.flowM3s().get();
        Function<Double, Found> up = mm -> found.length(mm);
        return List.of(
                new Line(
                        "width",
                        label,
                        DuctFound.found(pipe.then(r -> CarryingWidth.mm(r, asked.shape(), depthMm, flowM3s)), up),
                        "method J, turbulent"),
                new Line(
                        "sure width",
                        "wide enough by any method",
                        DuctFound.found(pipe.then(r -> CarryingWidth.surelyMm(r, asked.shape(), depthMm, flowM3s)), up),
                        ""));
    }

    private List<Line> circumstances() {
        var weather = asked.weather();
        var air = Written.in(Unit.CELSIUS, weather.tempK(), 1) + ", " + Written.in(Unit.PERCENT, weather.humidity(), 0)
                + ", " + Written.number(weather.altitudeM(), 0) + " m above the sea";
        return List.of(
                new Line(
                        "roughness",
                        "roughness of its face",
                        DuctFound.one(asked.roughMm(), "mm", 3),
                        asked.face().map(DuctFace::title).orElse("")),
                new Line(
                        "density",
                        "density of the air",
                        DuctFound.one(asked.air().densityKgM3(), "kg/m3", 3),
                        air));
    }

    private static Line open(String because) {
        return new Line("friction", "friction per metre", new Found.Open(because), "");
    }

    private List<String> cautions() {
        var cautions = new ArrayList<String>();
        cautions.add(
                "Straight duct only: what bends, entries, grilles, screens and filters take comes on top, and a short"
                        + " piece between two of them isn't known better than give or take 15 %.");
        if (asked.section().filter(section -> Aspect.of(section) > VERY_FLAT).isPresent()) {
            cautions.add(
                    "Flatter than 8:1 no table is tested: the bounds are those between which three methods differ. A"
                            + " wide thin face bulges, and a millimetre of depth counts: give the depth that is really clear.");
        }
        regime().filter(regime -> regime == Regime.TRANSITIONAL)
                .ifPresent(regime -> cautions.add(
                        "Between laminar and turbulent nobody can say what a duct takes; size it by the upper bound."));
        cautions.add(
                "Air for people, flames or a flue isn't settled by a sum: local codes and licensed trades decide.");
        return cautions;
    }

    private Optional<Regime> regime() {
        return asked.section()
                .flatMap(section -> asked.flowM3s()
                        .flatMap(flow -> StraightDuct.of(section, asked.roughMm(), asked.air())
                                .then(duct -> duct.at(flow))
                                .map(FrictionLoss::regime)
                                .result()));
    }
}
