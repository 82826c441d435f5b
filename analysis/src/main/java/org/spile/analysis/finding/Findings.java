package org.spile.analysis.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every answer to a house, in the order in which they are shown.
 *
 * <p>Questions (the first part of a check's name) stand in the order in which they were asked; within a question the worst
 * comes first. Answers of the same {@linkplain Finding#id id} are one question asked in several stances or situations: the
 * worst one stands, with the list of those where it holds.
 */
public final class Findings {
    private static final Comparator<Map.Entry<String, List<Finding>>> MOST_FIRST = Comparator.comparing(
                    (Map.Entry<String, List<Finding>> entry) -> entry.getKey().isEmpty())
            .thenComparing(entry -> -entry.getValue().size());

    private final List<Finding> all;

    private Findings(List<Finding> all) {
        this.all = List.copyOf(all);
    }

    /** Merges and orders what the checks gave. */
    public static Findings of(List<Finding> given) {
        Map<String, List<Finding>> byQuestion = byQuestion(OneAnswer.each(given));
        List<Finding> ordered = new ArrayList<>();
        byQuestion.values().forEach(group -> ordered.addAll(sorted(group)));
        return new Findings(ordered);
    }

    /** All of them: question by question, worst first. */
    public List<Finding> all() {
        return all;
    }

    /** The same findings by question, as {@code fit}; in the order of {@link #all}. */
    public Map<String, List<Finding>> byQuestion() {
        return byQuestion(all);
    }

    /** All of them with the worst first, whatever they were asked. */
    public List<Finding> worstFirst() {
        return sorted(all);
    }

    /**
     * Those of one check or question.
     *
     * @param name a check's dotted name, or the first parts of one: {@code fit}, {@code fit.clearance}
     */
    public Findings only(String name) {
        return new Findings(
                all.stream().filter(finding -> isOf(name, finding.check())).toList());
    }

    /**
     * What isn't known, by the value that would settle it: the one that settles most first, and last, under an empty path,
     * what no single value would settle.
     */
    public Map<String, List<Finding>> notKnownByMissing() {
        Map<String, List<Finding>> waiting = new LinkedHashMap<>();
        for (Finding finding : all) {
            if (finding.verdict() == Verdict.NOT_KNOWN) {
                boolean undecided = finding.margin().isPresent();
                String missing = undecided ? "" : finding.against().orElse("");
                waiting.computeIfAbsent(missing, path -> new ArrayList<>()).add(finding);
            }
        }
        Map<String, List<Finding>> ordered = new LinkedHashMap<>();
        waiting.entrySet().stream().sorted(MOST_FIRST).forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
        return ordered;
    }

    /** How many came out how. */
    public Summary summary() {
        return Summary.of(all);
    }

    /** Whether any fails. */
    public boolean anyFails() {
        return all.stream().anyMatch(finding -> finding.verdict() == Verdict.FAILS);
    }

    /** Whether a check's name is the one asked for, or lies below it. */
    public static boolean isOf(String asked, String check) {
        return check.equals(asked) || check.startsWith(asked + ".");
    }

    private static Map<String, List<Finding>> byQuestion(List<Finding> findings) {
        Map<String, List<Finding>> groups = new LinkedHashMap<>();
        for (Finding finding : findings) {
            String question = finding.check().split("\\.", 2)[0];
            groups.computeIfAbsent(question, name -> new ArrayList<>()).add(finding);
        }
        return groups;
    }

    private static List<Finding> sorted(List<Finding> findings) {
        return findings.stream().sorted(new WorstFirst()).toList();
    }
}
