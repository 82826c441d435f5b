package org.spile.samples.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The project keeps its own rules. */
class RulesTest {

    private static final String ROOT = "org.spile";

    private static JavaClasses classes;

    @BeforeAll
    static void read() {
        classes = Tree.classes();
    }

    static Stream<Named<ArchRule>> rules() {
        return Rules.below(ROOT).stream().map(rule -> Named.of(rule.getDescription(), rule));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void holds(ArchRule rule) {
        rule.check(classes);
    }

    /** An exception that nothing needs any more would let the next fault pass. */
    @Test
    void everyExceptionIsNeeded() {
        ShapeRules.strict(ROOT).forEach((exceptions, rule) -> {
            var report = rule.evaluate(classes).getFailureReport().toString();
            for (var name : exceptions.names()) {
                assertTrue(report.contains(ROOT + "." + name.replace("*", "")), () -> name + " needs no exception");
            }
        });
    }

    @Test
    void everyModuleWasRead() {
        for (var module : Tree.MODULES) {
            assertTrue(
                    classes.stream().anyMatch(type -> type.getPackageName().startsWith(ROOT + "." + module + ".")),
                    () -> module + " has no compiled classes: build it first");
        }
    }

    /** A row that matches no package would stay green for ever. */
    @Test
    void everyRowMatchesAPackage() {
        var found = new TreeSet<String>();
        classes.forEach(type -> found.add(type.getPackageName().substring(ROOT.length() + 1)));
        assertEquals(
                List.of(),
                Rows.names().stream().filter(name -> !found.contains(name)).toList());
    }
}
