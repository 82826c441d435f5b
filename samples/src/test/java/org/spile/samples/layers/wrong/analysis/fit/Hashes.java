package org.spile.samples.layers.wrong.analysis.fit;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Orders things by hashes, some of which change from run to run. */
final class Hashes {

    private Hashes() {}

    static Map<String, String> copied(Map<String, String> names) {
        return Map.copyOf(names);
    }

    static Set<String> copied(Collection<String> names) {
        return Set.copyOf(names);
    }

    static Set<String> collected(List<String> names) {
        return names.stream().collect(Collectors.toSet());
    }

    static Map<String, Integer> lengths(List<String> names) {
        return names.stream().collect(Collectors.toMap(name -> name, String::length));
    }

    static Map<Integer, Long> grouped(List<String> names) {
        return names.stream().collect(Collectors.groupingBy(String::length, Collectors.counting()));
    }
}
