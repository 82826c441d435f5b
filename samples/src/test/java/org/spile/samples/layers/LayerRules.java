package org.spile.samples.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;

/** The arrows between our own packages. */
final class LayerRules {

    private LayerRules() {}

    static List<Rule> below(String root) {
        return List.of(
                Rule.of(rows(root), "UpwardArrow", "SidewaysArrow", "BackwardArrow", "Rowless"),
                Rule.of(noCycles(root), "RoundAbout", "RoundBack"));
    }

    private static ArchRule rows(String root) {
        return classes().that().resideInAPackage(root + "..").should(new KeepToItsRow(root));
    }

    private static ArchRule noCycles(String root) {
        return slices().matching(root + ".(**)").should().beFreeOfCycles();
    }

    private static final class KeepToItsRow extends ArchCondition<JavaClass> {

        private final String prefix;

        KeepToItsRow(String root) {
            super("use only the packages that its own package's row allows");
            prefix = root + ".";
        }

        @Override
        public void check(JavaClass user, ConditionEvents events) {
            var from = relative(user);
            if (!Rows.has(from)) {
                events.add(SimpleConditionEvent.violated(
                        user, user.getName() + " lives in a package that has no row in Rows: " + from));
                return;
            }
            for (var dependency : user.getDirectDependenciesFromSelf()) {
                var used = dependency.getTargetClass().getBaseComponentType();
                if (used.getPackageName().startsWith(prefix) && !Rows.allows(from, relative(used))) {
                    events.add(SimpleConditionEvent.violated(dependency, dependency.getDescription()));
                }
            }
        }

        private String relative(JavaClass type) {
            var name = type.getPackageName();
            return name.startsWith(prefix) ? name.substring(prefix.length()) : name;
        }
    }
}
