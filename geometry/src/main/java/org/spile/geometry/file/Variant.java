package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.kernel.measure.NearestName;

/**
 * A house file with options and edits applied to its text.
 *
 * @param binding reads the text
 * @param text the file's own text
 */
record Variant(Binding binding, String text) {

    ReadResult read(List<String> options, List<Edit> edits) {
        ReadResult asTyped = binding.read(text);
        if (options.isEmpty() && edits.isEmpty()) {
            return asTyped;
        }
        Optional<Spot> root = binding.root(text);
        if (root.isEmpty()) {
            return asTyped;
        }
        var problems = new ArrayList<Problem>();
        var all = new ArrayList<Edit>();
        options.forEach(option -> all.addAll(option(root.get(), option, problems)));
        all.addAll(edits);
        String edited = problems.isEmpty() ? edited(all, problems) : text;
        if (!problems.isEmpty()) {
            return new ReadResult.Wrong(problems);
        }
        ReadResult result = binding.read(edited);
        return result instanceof ReadResult.Wrong wrong ? new ReadResult.Wrong(named(asTyped, wrong, all)) : result;
    }

    private static List<Edit> option(Spot root, String name, List<Problem> problems) {
        Optional<Spot> options = root.child("options");
        Optional<Spot> option = options.flatMap(spot -> spot.child(name));
        if (option.isEmpty()) {
            List<String> names = options.stream()
                    .flatMap(spot -> spot.entries().stream())
                    .map(Spot.Entry::key)
                    .toList();
            String there = names.isEmpty() ? "The file has no options." : "It has " + String.join(", ", names) + ".";
            problems.add(Problem.error(
                    Place.whole("option \"" + name + "\""),
                    "",
                    "The file has no such option.",
                    NearestName.of(name, names)
                            .map(near -> "Nearest: \"" + near + "\".")
                            .orElse(there)));
            return List.of();
        }
        List<Spot> lines = option.get().isList() ? option.get().items() : List.of(option.get());
        return lines.stream().map(line -> Edit.of(line.text())).toList();
    }

    private String edited(List<Edit> edits, List<Problem> problems) {
        String now = text;
        for (Edit edit : edits) {
            Optional<Problem> fault = binding.root(now)
                    .flatMap(root -> new Vocabulary(root).fault(edit.path()))
                    .map(found -> Problem.error(place(edit), "", found.says(), found.advice()));
            if (fault.isPresent()) {
                problems.add(fault.get());
                continue;
            }
            Edited done = Edits.apply(now, List.of(edit));
            if (done instanceof Edited.Done fresh) {
                now = fresh.text();
            } else if (done instanceof Edited.Undone undone) {
                problems.addAll(undone.problems());
            }
        }
        return now;
    }

    /** What the file had wrong by itself keeps its place; what an edit brought is placed at the edit. */
    private static List<Problem> named(ReadResult asTyped, ReadResult.Wrong edited, List<Edit> edits) {
        List<Problem> own = asTyped instanceof ReadResult.Wrong wrong ? wrong.problems() : List.of();
        var named = new ArrayList<Problem>();
        for (Problem problem : edited.problems()) {
            Optional<Problem> same = own.stream()
                    .filter(each ->
                            each.path().equals(problem.path()) && each.says().equals(problem.says()))
                    .findFirst();
            named.add(same.orElseGet(() -> new Problem(
                    culprit(problem, edits), problem.path(), problem.says(), problem.advice(), problem.doubt())));
        }
        return named;
    }

    /** The last edit whose path leads to the problem or lies within it; else all of them together. */
    private static Place culprit(Problem problem, List<Edit> edits) {
        for (int i = edits.size() - 1; i >= 0; i--) {
            String path = edits.get(i).path();
            boolean related = problem.path().startsWith(path) || path.startsWith(problem.path());
            if (edits.size() == 1 || (related && !problem.path().isEmpty())) {
                return place(edits.get(i));
            }
        }
        return Place.whole("edits");
    }

    private static Place place(Edit edit) {
        return Place.whole("edit \"" + edit + "\"");
    }
}
