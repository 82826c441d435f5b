package org.spile.analysis.duct;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.duct.DuctRun;

/** The area along a run of 20 fittings: 12 transitions, 4 radius and 4 mitred bends. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class AreaProfileBenchmark {
    private static final int FITTINGS = 20;

    /** Narrower and wider again, then out to the left and back. */
    private static final String STRETCH =
            "{forward: 200, wide: 200}, {forward: 300, round: 150}, {forward: 300, wide: 260, high: 90}, "
                    + "{left: 400%1$s}, {forward: 500%1$s}, {right: 400%1$s}, {forward: 500%1$s}, "
                    + "{forward: 200, wide: 180}, {forward: 300, wide: 300, high: 60}, {forward: 300, wide: 240, high: 100}, ";

    private static final String HOUSE = """
            cavities: {loft: {long: 9000, wide: 3000, high: 600}}
            terminals:
              a: {kind: grille, in: loft, face: rear, wide: 240, high: 100, at: {left: 1500, floor: 100}}
              b: {kind: grille, in: loft, face: front, wide: 240, high: 100, at: {left: 1500, floor: 100}}
            runs: {main: {from: a, to: b, layers: [{galv: 0.6}], bends: mitred, path: [%s{forward: rest}]}}
            """;

    private DuctRun run;

    /** Makes the run and holds its least area against the section worked by hand: a round 150 has pi 75^2. */
    @Setup
    public void make() {
        String path = STRETCH.formatted(", bend: radius 200") + STRETCH.formatted("");
        HouseResult result = HouseFile.houseText("house.yaml", HOUSE.formatted(path), List.of(), List.of());
        run = ((HouseResult.Sound) result).house().runs().get(0);
        AreaProfile profile = AreaProfile.of(run);
        long fittings = profile.pieces().stream()
                .filter(piece -> !piece.word().equals("straight"))
                .count();
        double leastMm2 = Math.min(Math.PI * 75 * 75, 180 * 90);
        if (fittings != FITTINGS || Math.abs(profile.least().areaMm2() - leastMm2) > 1e-6) {
            throw new IllegalStateException(fittings + " fittings, least " + profile.least());
        }
    }

    /** The profile with its pinches. */
    @Benchmark
    public AreaProfile profile() {
        return AreaProfile.of(run);
    }
}
