package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The way to a value: keys joined by dots, items of lists counted from 1, {@code runs.lab-supply.path[3].wide}.
 *
 * @param steps the keys and item numbers, from the top
 */
record DocumentPath(List<Step> steps) {
    /** The top of the file. */
    static final DocumentPath TOP = new DocumentPath(List.of());

    private static final Pattern KEY = Pattern.compile("[^.\\[\\]\\s=]+");
    private static final Pattern ITEM = Pattern.compile("\\[([1-9][0-9]{0,6})]");

    /**
     * One step: a key, or an item if the key is empty.
     *
     * @param key the key
     * @param item the item's number, from 1; 0 for a key
     */
    record Step(String key, int item) {
        boolean isKey() {
            return item == 0;
        }

        @Override
        public String toString() {
            return isKey() ? key : "[" + item + "]";
        }
    }

    DocumentPath {
        steps = List.copyOf(steps);
    }

    /** The path that words name; none if they are no path. */
    static Optional<DocumentPath> of(String words) {
        var steps = new ArrayList<Step>();
        int at = 0;
        while (at < words.length()) {
            Matcher item = ITEM.matcher(words).region(at, words.length());
            if (!steps.isEmpty() && item.lookingAt()) {
                steps.add(new Step("", Integer.parseInt(item.group(1))));
                at = item.end();
                continue;
            }
            int start = steps.isEmpty() ? at : at + 1;
            Matcher key = KEY.matcher(words).region(Math.min(start, words.length()), words.length());
            if ((!steps.isEmpty() && words.charAt(at) != '.') || !key.lookingAt()) {
                return Optional.empty();
            }
            steps.add(new Step(key.group(), 0));
            at = key.end();
        }
        return steps.isEmpty() ? Optional.empty() : Optional.of(new DocumentPath(steps));
    }

    /** The value of a key below this one. */
    DocumentPath key(String key) {
        return with(new Step(key, 0));
    }

    /** An item of this list, counted from 1. */
    DocumentPath item(int number) {
        return with(new Step("", number));
    }

    /** The first so many steps. */
    DocumentPath first(int count) {
        return new DocumentPath(steps.subList(0, count));
    }

    private DocumentPath with(Step step) {
        var longer = new ArrayList<>(steps);
        longer.add(step);
        return new DocumentPath(longer);
    }

    @Override
    public String toString() {
        var text = new StringBuilder();
        for (Step step : steps) {
            text.append(step.isKey() && text.length() > 0 ? "." : "").append(step);
        }
        return text.toString();
    }
}
