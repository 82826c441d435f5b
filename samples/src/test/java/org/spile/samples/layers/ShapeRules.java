package org.spile.samples.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** How a class looks: its name, its fields, its numbers. */
final class ShapeRules {

    private ShapeRules() {}

    static List<Rule> below(String root) {
        var all = root + "..";
        return List.of(
                Rule.of(
                        noVagueNames(all),
                        "GapUtil",
                        "GapUtils",
                        "SheetHelper",
                        "SheetManager",
                        "CommonSheet",
                        "GapProcessor"),
                Rule.of(noVagueSuffixes(all), "GapData", "GapInfo"),
                Rule.of(
                        noVaguePackages(all),
                        "InToolPackage",
                        "InMiscPackage",
                        "InSharedPackage",
                        "InImplPackage",
                        "InAidPackage"),
                Rule.of(instanceFieldsPrivate(root, Exceptions.OPEN), "OpenField"),
                Rule.of(instanceFieldsFinal(root, Exceptions.MOVING), "MovingField", "MovingReader"),
                Rule.of(staticFieldsFinal(all), "MovingStatic"),
                Rule.of(noSetters(all), "Setter"),
                Rule.of(noArraysInRecords(all), "ArrayRecord"),
                Rule.of(noFloatFields(all), "FloatField"),
                Rule.of(noFloatMethods(all), "FloatParameter", "FloatReturn"),
                Rule.of(formulasFinal(all), "OpenFormula"));
    }

    /** The rules that let exceptions pass, without letting any pass. */
    static Map<Exceptions, ArchRule> strict(String root) {
        var rules = new LinkedHashMap<Exceptions, ArchRule>();
        rules.put(Exceptions.OPEN, instanceFieldsPrivate(root, Exceptions.NONE));
        rules.put(Exceptions.MOVING, instanceFieldsFinal(root, Exceptions.NONE));
        return rules;
    }

    private static ArchRule noVagueNames(String all) {
        return noClasses()
                .that()
                .resideInAPackage(all)
                .should()
                .haveNameMatching(".*\\.[^.]*(Util|Helper|Manager|Common|Processor)[^.]*")
                .as("no class is called Util, Helper, Manager, Common or Processor");
    }

    private static ArchRule noVagueSuffixes(String all) {
        return noClasses()
                .that()
                .resideInAPackage(all)
                .should()
                .haveNameMatching(".*(Data|Info)")
                .as("no class is called Data or Info");
    }

    private static ArchRule noVaguePackages(String all) {
        return noClasses()
                .that()
                .resideInAPackage(all)
                .should()
                .resideInAnyPackage("..util..", "..misc..", "..common..", "..impl..", "..helper..")
                .as("no package is called util, misc, common, impl or helper");
    }

    private static ArchRule instanceFieldsPrivate(String root, Exceptions passed) {
        return fields().that(areWrittenOutInstanceFields(root + ".."))
                .and(DescribedPredicate.not(passed.below(root)))
                .should()
                .bePrivate()
                .as("instance fields are private");
    }

    private static ArchRule instanceFieldsFinal(String root, Exceptions passed) {
        return fields().that(areWrittenOutInstanceFields(root + ".."))
                .and(DescribedPredicate.not(moveAsTheyWork()))
                .and(DescribedPredicate.not(passed.below(root)))
                .should()
                .beFinal()
                .as("instance fields are final, except in builders and in a package's own readers and writers");
    }

    private static ArchRule staticFieldsFinal(String all) {
        return fields().that()
                .areDeclaredInClassesThat()
                .resideInAPackage(all)
                .and()
                .areStatic()
                .should()
                .beFinal()
                .as("static fields don't change");
    }

    private static ArchRule noSetters(String all) {
        return noMethods()
                .that()
                .areDeclaredInClassesThat()
                .resideInAPackage(all)
                .and()
                .arePublic()
                .should()
                .haveNameMatching("set[A-Z].*")
                .as("no public method is a setter");
    }

    private static ArchRule noArraysInRecords(String all) {
        return noFields()
                .that()
                .areDeclaredInClassesThat(areRecordsIn(all))
                .and()
                .areNotStatic()
                .should()
                .haveRawType(DescribedPredicate.describe("is an array", JavaClass::isArray))
                .as("no record has an array as a component");
    }

    private static ArchRule noFloatFields(String all) {
        return noFields()
                .that()
                .areDeclaredInClassesThat()
                .resideInAPackage(all)
                .should()
                .haveRawType(single())
                .as("no field is a float");
    }

    private static ArchRule noFloatMethods(String all) {
        return noMethods()
                .that()
                .areDeclaredInClassesThat()
                .resideInAPackage(all)
                .should()
                .haveRawReturnType(single())
                .orShould()
                .haveRawParameterTypes(DescribedPredicate.describe(
                        "hold a float", types -> types.stream().anyMatch(single())))
                .as("no method takes or returns a float");
    }

    /** A class that names its published source is a formula: nothing may override it. */
    private static ArchRule formulasFinal(String all) {
        return classes()
                .that()
                .resideInAPackage(all)
                .and(DescribedPredicate.describe(
                        "name a SOURCE", type -> type.tryGetField("SOURCE").isPresent()))
                .should()
                .haveModifier(JavaModifier.FINAL)
                .allowEmptyShould(true)
                .as("a class with a SOURCE is final");
    }

    private static DescribedPredicate<JavaClass> single() {
        var names = Set.of("float", "java.lang.Float");
        return DescribedPredicate.describe(
                "is a float", type -> names.contains(type.getBaseComponentType().getName()));
    }

    private static DescribedPredicate<JavaClass> areRecordsIn(String all) {
        return JavaClass.Predicates.resideInAPackage(all)
                .and(DescribedPredicate.describe("are records", JavaClass::isRecord));
    }

    private static DescribedPredicate<JavaField> areWrittenOutInstanceFields(String all) {
        return DescribedPredicate.describe(
                "are instance fields written in the source",
                field -> JavaClass.Predicates.resideInAPackage(all).test(field.getOwner())
                        && !field.getModifiers().contains(JavaModifier.STATIC)
                        && !field.getModifiers().contains(JavaModifier.SYNTHETIC));
    }

    /** Builders, and the package's own readers and writers, which step through a text or grow one and are then dropped. */
    private static DescribedPredicate<JavaField> moveAsTheyWork() {
        var cursor = Pattern.compile(".*(Reader|Writer|Cursor)");
        return DescribedPredicate.describe("move as they work", field -> {
            var name = field.getOwner().getSimpleName();
            var open = field.getOwner().getModifiers().contains(JavaModifier.PUBLIC);
            return name.endsWith("Builder") || (!open && cursor.matcher(name).matches());
        });
    }
}
