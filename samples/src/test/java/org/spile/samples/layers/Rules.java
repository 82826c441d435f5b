package org.spile.samples.layers;

import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;

/** Every rule on compiled classes. */
final class Rules {

    private Rules() {}

    /**
     * All rules, for the packages below one root.
     *
     * @param root {@code org.spile}, or the root of the wrong fixture
     */
    static List<ArchRule> below(String root) {
        return Stream.concat(
                        withCulprits(root).stream().map(Rule::rule),
                        Bans.all().stream().map(ban -> ban.below(root)))
                .toList();
    }

    /** The rules whose wrong classes are known by name; a {@link Ban} is proved pattern by pattern instead. */
    static List<Rule> withCulprits(String root) {
        return Stream.of(LayerRules.below(root), OwnerRules.below(root), ShapeRules.below(root))
                .flatMap(List::stream)
                .toList();
    }
}
