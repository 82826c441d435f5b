package org.spile.samples.layers;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.stream.Stream;

/** Which package owns which library: no other one may name the library's types. */
final class OwnerRules {

    private static final String JTS = "org.locationtech.jts..";

    private OwnerRules() {}

    static List<Rule> below(String root) {
        return List.of(
                Rule.of(owned(root, List.of(JTS), "geometry.kernel.planar", "geometry.file"), "JtsAbroad"),
                Rule.of(noJtsInPublic(root), "JtsInSignature", "JtsInField"),
                Rule.of(owned(root, List.of("org.snakeyaml.."), "geometry.file"), "YamlAbroad"),
                Rule.of(
                        owned(
                                root,
                                List.of("com.fasterxml.jackson..", "org.json.simple.."),
                                "geometry.file",
                                "exporters.table",
                                "exporters.command"),
                        "JsonAbroad"),
                Rule.of(
                        owned(root, List.of("javax.xml..", "org.w3c.dom..", "org.xml.sax.."), "exporters.svg"),
                        "XmlAbroad"),
                Rule.of(owned(root, List.of("org.apache.commons.cli.."), "exporters.command"), "OptionAbroad"));
    }

    private static ArchRule owned(String root, List<String> libraries, String... owners) {
        var homes = Stream.of(owners).map(owner -> root + "." + owner).toArray(String[]::new);
        return noClasses()
                .that()
                .resideOutsideOfPackages(homes)
                .should()
                .dependOnClassesThat(resideInAnyPackage(libraries.toArray(String[]::new)))
                .as("only " + String.join(" and ", owners) + " use " + String.join(", ", libraries));
    }

    private static ArchRule noJtsInPublic(String root) {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should(new ShowInPublic(resideInAnyPackage(JTS)))
                .as("no public signature or field shows a JTS type");
    }

    private static final class ShowInPublic extends ArchCondition<JavaClass> {

        private final DescribedPredicate<JavaClass> hidden;

        ShowInPublic(DescribedPredicate<JavaClass> hidden) {
            super("show in public a type that should " + hidden.getDescription());
            this.hidden = hidden;
        }

        @Override
        public void check(JavaClass owner, ConditionEvents events) {
            if (!owner.getModifiers().contains(JavaModifier.PUBLIC)) {
                return;
            }
            for (var member : owner.getMembers()) {
                var open = member.getModifiers().contains(JavaModifier.PUBLIC)
                        || member.getModifiers().contains(JavaModifier.PROTECTED);
                var shown = member instanceof JavaCodeUnit unit
                        ? Stream.concat(
                                unit.getReturnType().getAllInvolvedRawTypes().stream(),
                                unit.getParameterTypes().stream()
                                        .flatMap(type -> type.getAllInvolvedRawTypes().stream()))
                        : member.getAllInvolvedRawTypes().stream();
                if (open && shown.anyMatch(hidden)) {
                    events.add(SimpleConditionEvent.satisfied(member, member.getFullName()));
                }
            }
        }
    }
}
