package org.spile.samples.layers;

import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/**
 * One rule on compiled classes.
 *
 * @param rule the rule itself; its description says what it demands
 * @param culprits the simple names of the wrong classes that it must catch when it is run on the wrong fixture
 */
record Rule(ArchRule rule, List<String> culprits) {

    static Rule of(ArchRule rule, String... culprits) {
        return new Rule(rule, List.of(culprits));
    }

    @Override
    public String toString() {
        return rule.getDescription();
    }
}
