package org.spile.samples.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Library calls that nobody may make, or only the command.
 *
 * @param says what the ban holds
 * @param commandMay whether the command may make them
 * @param targets patterns of the full name, with parameter types, of a method, constructor or field
 */
record Ban(String says, boolean commandMay, List<String> targets) {

    static Ban everywhere(String says, String... targets) {
        return new Ban(says, false, List.of(targets));
    }

    static Ban outsideCommand(String says, String... targets) {
        return new Ban(says, true, List.of(targets));
    }

    ArchRule below(String root) {
        var fenced = noClasses().that().resideInAPackage(root + "..");
        if (commandMay) {
            fenced = fenced.and().resideOutsideOfPackage(root + ".exporters.command..");
        }
        return fenced.should().accessTargetWhere(isForbidden()).as(says);
    }

    /** This ban cut into one for each pattern, so that each can be shown to catch something. */
    Stream<Ban> onePatternEach() {
        return targets.stream().map(target -> new Ban(says + ": " + target, commandMay, List.of(target)));
    }

    private DescribedPredicate<JavaAccess<?>> isForbidden() {
        var patterns = targets.stream().map(Pattern::compile).toList();
        return DescribedPredicate.describe("the target is forbidden", access -> {
            var name = access.getTarget().getFullName();
            return patterns.stream().anyMatch(pattern -> pattern.matcher(name).matches());
        });
    }

    @Override
    public String toString() {
        return says;
    }
}
