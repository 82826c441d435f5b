package org.spile.samples.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule can fail: on the wrong classes it names every culprit meant for it. */
class RulesTwinTest {

    private static final String ROOT = "org.spile.samples.layers.wrong";

    private static JavaClasses wrong;

    @BeforeAll
    static void read() {
        wrong = new ClassFileImporter().importPackages(ROOT);
    }

    static Stream<Rule> rules() {
        return Rules.withCulprits(ROOT).stream();
    }

    static Stream<Ban> patterns() {
        return Bans.all().stream().flatMap(Ban::onePatternEach);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void catchesItsCulprits(Rule rule) {
        var report =
                String.join("\n", rule.rule().evaluate(wrong).getFailureReport().getDetails());
        var missed = rule.culprits().stream()
                .filter(culprit -> !report.matches("(?s).*\\b" + culprit + "\\b.*"))
                .toList();
        assertEquals(List.of(), missed, () -> "not caught; the rule says:\n" + report);
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void catchesByEachPattern(Ban ban) {
        assertTrue(ban.below(ROOT).evaluate(wrong).hasViolation(), () -> "nothing wrong was caught by " + ban);
    }

    @Test
    void everyWrongClassIsACulprit() {
        var culprits = new TreeSet<String>();
        rules().forEach(rule -> culprits.addAll(rule.culprits()));
        var caughtByBan = String.join(
                "\n",
                Bans.all().stream()
                        .flatMap(ban -> ban.below(ROOT).evaluate(wrong).getFailureReport().getDetails().stream())
                        .toList());
        var idle = wrong.stream()
                .filter(JavaClass::isTopLevelClass)
                .filter(type -> !caughtByBan.contains(type.getName() + "."))
                .map(JavaClass::getSimpleName)
                .filter(name -> !name.startsWith("Sound") && !name.equals("package-info") && !culprits.contains(name))
                .toList();
        assertEquals(List.of(), idle);
    }

    /** Nor do the rules cry wolf: the one sound class of the fixture is in no report. */
    @Test
    void soundClassIsNeverNamed() {
        assertTrue(wrong.stream().anyMatch(type -> type.getSimpleName().equals("SoundGap")));
        var named = Rules.below(ROOT).stream()
                .filter(rule -> rule.evaluate(wrong).getFailureReport().getDetails().stream()
                        .anyMatch(line -> line.contains("SoundGap")))
                .toList();
        assertEquals(List.of(), named);
    }
}
