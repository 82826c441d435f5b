package org.spile.samples.houses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.whole.Checks;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.house.House;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;

/** What is found doesn't depend on the order of the file's keys, nor on the unit its lengths are typed in. */
class SameFindingsTest {
    /** What is shown of a length (mm). */
    private static final double SHOWN_MM = 0.01;

    private static final List<String> ORDERED = List.of("stances", "situations", "options");

    @Property(tries = 2, shrinking = ShrinkingMode.OFF)
    void anyOrderOfKeys_findsTheSame(@ForAll long seed) throws IOException {
        for (Sample sample : Sample.all().toList()) {
            assertSame(sample.findings(), Checks.answer(shuffled(sample, new Random(seed))));
        }
    }

    @Property(tries = 2, shrinking = ShrinkingMode.OFF)
    void lengthsTypedInInches_findTheSame(@ForAll long seed) {
        for (Sample sample : Sample.all().toList()) {
            String[] edits = inInches(sample.house(), new Random(seed));
            assertFalse(edits.length == 0, sample.toString());
            assertSame(sample.findings(), sample.findings(edits));
        }
    }

    private static void assertSame(Findings expected, Findings found) {
        Map<String, Finding> one = byId(expected);
        Map<String, Finding> other = byId(found);
        assertEquals(List.of(), without(one, other), "no longer found");
        assertEquals(List.of(), without(other, one), "newly found");
        one.forEach((id, finding) -> {
            Finding again = other.get(id);
            assertEquals(finding.verdict(), again.verdict(), id);
            assertEquals(mm(finding.value()), mm(again.value()), SHOWN_MM, id);
            assertEquals(mm(finding.margin()), mm(again.margin()), SHOWN_MM, id);
            assertEquals(mm(finding.worst()), mm(again.worst()), SHOWN_MM, id);
        });
    }

    private static List<String> without(Map<String, Finding> all, Map<String, Finding> known) {
        return all.keySet().stream().filter(id -> !known.containsKey(id)).toList();
    }

    private static double mm(Optional<Quantity> quantity) {
        return quantity.map(Quantity::number).orElse(0.0);
    }

    private static Map<String, Finding> byId(Findings findings) {
        Map<String, Finding> byId = new TreeMap<>();
        findings.all().forEach(finding -> byId.put(finding.id(), finding));
        return byId;
    }

    /**
     * Half of the typed lengths that the house rests on, retyped: 25.4 mm are an inch, exactly. The two ends of a band share one
     * unit, so they stay as they are.
     */
    private static String[] inInches(House house, Random random) {
        List<String> edits = new ArrayList<>();
        for (Map.Entry<String, Reading> entry : new TreeMap<>(house.readings()).entrySet()) {
            Reading reading = entry.getValue();
            boolean typed =
                    reading.origin() != Origin.DEFAULT && !entry.getKey().endsWith("]");
            if (reading.kind() == Kind.LENGTH && typed && random.nextBoolean()) {
                BigDecimal inches =
                        new BigDecimal(reading.value()).divide(new BigDecimal("25.4"), MathContext.DECIMAL64);
                edits.add(entry.getKey() + "=" + inches.toPlainString() + " in");
            }
        }
        return edits.toArray(String[]::new);
    }

    private static House shuffled(Sample sample, Random random) throws IOException {
        var yaml =
                new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build());
        Object root = yaml.loadFromString(Files.readString(sample.file()));
        Path file = Files.createTempFile(sample.folder(), "shuffled-", ".yaml");
        try {
            Files.writeString(file, words(root, random, ""));
            HouseResult result = HouseFile.house(file, List.of(), List.of());
            if (result instanceof HouseResult.Sound sound) {
                return sound.house();
            }
            throw new AssertionError(((HouseResult.Wrong) result).problems().toString());
        } finally {
            Files.delete(file);
        }
    }

    /** Stances, situations and options keep their order: it says which is the usual one, and which comes over which. */
    private static String words(Object node, Random random, String key) {
        if (node instanceof Map<?, ?> map) {
            Map<Object, Object> entries = new LinkedHashMap<>(map);
            List<Object> keys = new ArrayList<>(entries.keySet());
            if (!ORDERED.contains(key)) {
                Collections.shuffle(keys, random);
            }
            return "{"
                    + String.join(
                            ", ",
                            keys.stream()
                                    .map(each -> each + ": " + words(entries.get(each), random, each.toString()))
                                    .toList())
                    + "}";
        }
        if (node instanceof List<?> list) {
            return "["
                    + String.join(
                            ", ",
                            list.stream().map(item -> words(item, random, "")).toList()) + "]";
        }
        return "'" + node.toString().replace("'", "''") + "'";
    }
}
