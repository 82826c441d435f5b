package org.spile.analysis.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.spile.analysis.duct.Reckoned.known;
import static org.spile.analysis.duct.Reckoned.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.spile.geometry.house.duct.Section;

/**
 * Friction per metre against the Debian package python3-fluids, on a bulk of random ducts.
 *
 * <p>Skipped with a message where it is missing, unless {@code SPILE_READERS_REQUIRED=true} says that it must be there. That
 * library goes from laminar to turbulent at Re 2040; cases between there and 4000 are left to the tables.
 */
class FluidsReaderTest {
    private static final boolean REQUIRED = "true".equals(System.getenv("SPILE_READERS_REQUIRED"));
    private static final String PYTHON =
            Files.isExecutable(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";
    private static final int CASES = 600;
    private static final long SEED = 19390101;

    private record Case(String line, double paPerM) {}

    @Test
    void friction_randomDucts() throws IOException, InterruptedException {
        need();
        List<Case> cases = cases();
        List<String> answers = asked(cases);
        assertEquals(CASES, answers.size());
        for (int i = 0; i < CASES; i++) {
            within(Double.parseDouble(answers.get(i)), cases.get(i).paPerM(), 1e-9);
        }
    }

    private static List<Case> cases() {
        var random = new Random(SEED);
        List<Case> cases = new ArrayList<>();
        int laminar = 0;
        while (cases.size() < CASES) {
            double wideMm = between(random, 15, 800);
            double highMm = cases.size() % 2 == 0 ? wideMm : between(random, 15, 300);
            Section section =
                    cases.size() % 2 == 0 ? new Section.Round(wideMm) : new Section.Rectangular(wideMm, highMm);
            double roughMm = random.nextInt(5) == 0 ? 0 : between(random, 0.01, 0.045 * HydraulicDiameter.mm(section));
            var air = new Air(between(random, 0.8, 1.4), between(random, 1.5e-5, 2e-5));
            StraightDuct duct = known(StraightDuct.of(section, roughMm, air));
            double flowM3s = between(random, duct.mostFlowM3s() / 300, duct.mostFlowM3s());
            double reynolds = known(duct.at(flowM3s)).equivalentReynolds();
            if (reynolds < 2000 || reynolds >= 4000) {
                laminar += reynolds < 2000 ? 1 : 0;
                cases.add(new Case(line(section, roughMm, flowM3s, air), duct.paPerM(flowM3s)));
            }
        }
        assertTrue(laminar > CASES / 20 && laminar < CASES / 2, laminar + " laminar cases");
        return cases;
    }

    /** Each decade as likely as the other. */
    private static double between(Random random, double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private static String line(Section section, double roughMm, double flowM3s, Air air) {
        String size = section instanceof Section.Round
                ? "round " + section.wideMm() / 1e3
                : "rectangle " + section.wideMm() / 1e3 + " " + section.highMm() / 1e3;
        return size + " " + roughMm / 1e3 + " " + flowM3s + " " + air.densityKgM3() + " " + air.viscosityPaS() + "\n";
    }

    private static List<String> asked(List<Case> cases) throws IOException, InterruptedException {
        Path script = Files.createTempFile("friction", ".py");
        Path input = Files.createTempFile("friction", ".txt");
        try (var in = FluidsReaderTest.class.getResourceAsStream("/readers/friction.py")) {
            Files.write(script, in.readAllBytes());
            Files.writeString(
                    input, String.join("", cases.stream().map(Case::line).toList()));
            var process = new ProcessBuilder(PYTHON, script.toString())
                    .redirectInput(input.toFile())
                    .redirectErrorStream(true)
                    .start();
            var out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(process.waitFor(120, TimeUnit.SECONDS), "did not end: " + out);
            assertEquals(0, process.exitValue(), out);
            return out.lines().toList();
        } finally {
            Files.delete(script);
            Files.delete(input);
        }
    }

    private static void need() throws InterruptedException {
        boolean there;
        try {
            var process = new ProcessBuilder(PYTHON, "-c", "import fluids")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            there = process.waitFor() == 0;
        } catch (IOException e) {
            there = false;
        }
        if (REQUIRED) {
            assertTrue(there, "python3-fluids is required (SPILE_READERS_REQUIRED) but missing");
        }
        assumeTrue(there, "skipped: python3-fluids is not installed");
    }
}
