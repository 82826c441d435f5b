package org.spile.analysis.duct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Source;
import org.spile.analysis.finding.Verdict;
import org.spile.analysis.finding.Where;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.told.ToldRun;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Unit;
import org.spile.geometry.kernel.measure.Written;

/** Says what a run is worth, in sentences and as a finding. */
final class RunWords {
    private static final double MICRONS = 1000;

    private final RunDuct duct;

    RunWords(RunDuct duct) {
        this.duct = duct;
    }

    /** A flow is told but no pipe: what it is worth, and that nothing is asked of it. */
    String withoutPipe() {
        double flow = duct.run().flowM3s().orElseThrow();
        var worth = EqualFriction.roundMm(duct.narrow(), flow);
        String carries = worth.result()
                .map(round -> " At " + flow(flow) + " it carries like a round of " + mm(round) + ".")
                .orElseGet(() -> " " + worth.because().orElseThrow());
        return size() + carries + " " + duct.run().path() + ".replaces would say which pipe it is to be held against.";
    }

    /** A pipe is told but no flow: areas, and the width that carries like it at any usual flow. */
    String withoutFlow() {
        double pipe = duct.run().replacesMm().orElseThrow();
        var width = duct.pipe().then(round -> AnyFlow.widthMm(round, shape(), duct.depthMm()));
        String wide = width.result()
                .map(mm -> "At a depth of " + mm(duct.depthMm()) + " it takes a width of " + mm(mm.low()) + " to "
                        + mm(mm.high()) + " to carry like it, at " + Written.number(AnyFlow.QUIET_MS, 0) + " to "
                        + Written.number(AnyFlow.BRISK_MS, 0) + " m/s in the pipe.")
                .orElseGet(() -> width.because().orElseThrow());
        return size() + " Whether it carries like the round " + mm(pipe) + " it replaces depends on the flow: "
                + duct.run().path() + ".flow would settle it. " + wide;
    }

    /** Held against the pipe, without remedies. */
    Finding against(House house, PipeComparison compared, PipeComparison worst, Verdict verdict) {
        Spread pa = compared.ductLoss().paPerM();
        Spread pipe = compared.pipeLoss().paPerM();
        String replaces = duct.run().path() + ".replaces";
        return new Finding(
                Finding.idOf(Duct.REPLACES, duct.run().path(), Optional.empty()),
                Duct.REPLACES,
                duct.run().path(),
                Optional.empty(),
                house.stances(),
                List.of(),
                verdict,
                Optional.of(paPerM(pa.value())),
                Optional.of(paPerM(pipe.value())),
                Optional.of(paPerM(pipe.value() - pa.value())),
                Optional.of(paPerM(pipe.low() - worst.ductLoss().paPerM().high())),
                Optional.empty(),
                duct.layers(),
                site(house),
                Optional.empty(),
                Optional.of(where()),
                because(compared) + doubt(worst),
                restsOn(house),
                List.of(),
                Source.file(replaces) + "; friction: " + ColebrookFriction.SOURCE + "; flat ducts: "
                        + JonesFactor.SOURCE);
    }

    private String because(PipeComparison compared) {
        Spread pa = compared.ductLoss().paPerM();
        String regime = compared.ductLoss().regime() == Regime.TRANSITIONAL
                ? " The flow is " + Regime.TRANSITIONAL.words() + "."
                : "";
        var handbook = SectionWorth.of(duct.narrow().section()).handbookMm();
        String printed = handbook.result()
                .map(round -> ", by the handbooks' formula of " + mm(round))
                .orElse("");
        return size() + " At " + flow(compared.flowM3s()) + " it takes " + number(pa.value()) + " Pa/m ("
                + number(pa.low())
                + " to " + number(pa.high()) + "), " + number(compared.ratio()) + " times the "
                + number(compared.pipeLoss().paPerM().value()) + " Pa/m of the round "
                + mm(duct.run().replacesMm().orElseThrow()) + " it replaces: it carries like a round of "
                + mm(compared.roundMm()) + printed + "." + regime;
    }

    /** What is left of it with every tolerance against it; nothing where none is told. */
    private String doubt(PipeComparison worst) {
        Section least = duct.least().section();
        if (least.equals(duct.narrow().section())) {
            return "";
        }
        double share = least.areaMm2() / duct.narrow().section().areaMm2();
        return " With every tolerance against it it is " + sides(least) + ", "
                + Written.number(duct.leastAreaMm2() * share, 0) + " mm2 clear, takes up to "
                + number(worst.ductLoss().paPerM().high()) + " Pa/m and carries like a round of " + mm(worst.roundMm())
                + ".";
    }

    private static String sides(Section section) {
        return section instanceof Section.Round round
                ? "round " + mm(round.diameterMm())
                : Written.number(section.wideMm(), 1) + " x " + mm(section.highMm());
    }

    private String size() {
        double area = duct.leastAreaMm2();
        return "Where it carries the least it is " + sides(duct.narrow().section()) + "; its least clear area, "
                + Written.number(area, 0) + " mm2, is that of a round " + mm(EqualArea.roundMm(area)) + ".";
    }

    private Where where() {
        DuctLeg leg = duct.place().leg();
        String path = duct.run().path();
        String piece = leg.path().startsWith(path + ".") ? leg.path().substring(path.length() + 1) : leg.path();
        return new Where(path, piece, Quantity.mm(Math.rint(duct.place().atMm() * MICRONS) / MICRONS));
    }

    /** In the first stance, which is home. */
    private Optional<Vector3D> site(House house) {
        return house.scene(house.stances().get(0)).trailers().stream()
                .filter(place -> place.id().equals(duct.place().trailer()))
                .map(place -> place.toSite().apply(duct.place().at()))
                .findFirst();
    }

    private List<String> restsOn(House house) {
        List<String> paths = new ArrayList<>(duct.restsOn());
        ToldRun told = house.told().runs().get(duct.run().id());
        for (Optional<Reading> reading : List.of(told.flow(), told.replaces())) {
            reading.filter(known -> known.origin() == Origin.ASSUMED).ifPresent(known -> paths.add(known.path()));
        }
        return List.copyOf(paths);
    }

    private SectionShape shape() {
        return SectionShape.like(duct.narrow().section());
    }

    private static String mm(Spread mm) {
        return mm.low() == mm.high()
                ? mm(mm.value())
                : mm(mm.value()) + " (" + Written.number(mm.low(), 1) + " to " + Written.number(mm.high(), 1) + ")";
    }

    private static String mm(double mm) {
        return Written.number(mm, 1) + " mm";
    }

    private static String flow(double m3s) {
        return Written.in(Unit.LITRE_PER_SECOND, m3s, 2);
    }

    private static String number(double number) {
        return Written.number(number, 2);
    }

    private static Quantity paPerM(double number) {
        return new Quantity(number, "Pa/m");
    }
}
