package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Finds what YAML reads otherwise than it was meant: {@code {at: 0,5 m}}, {@code {high:200}}, {@code title: Cabin #3}.
 *
 * <p>Each is told; the keys that only a trap made are taken out of the tree, so that they aren't told of twice.
 */
final class YamlTraps {
    private static final List<String> FREE_TEXT = List.of("title", "by", "for", "number");
    private static final Pattern NUMBER_START = Pattern.compile("\\d.*");
    private static final Pattern NUMBER_END = Pattern.compile(".*\\d");
    private static final Pattern WORD_NUMBER = Pattern.compile("([a-z][a-z0-9-]*) +(\\S.*)");
    private static final Pattern WORD_COLON = Pattern.compile("([^:]+):(.+)");

    private final String text;
    private final Problems problems;

    YamlTraps(String text, Problems problems) {
        this.text = text;
        this.problems = problems;
    }

    void lookThrough(Node node) {
        if (node instanceof ListNode list) {
            list.items().forEach(this::lookThrough);
        } else if (node instanceof MapNode map) {
            for (int i = 0; i < map.entries().size(); i++) {
                MapNode.Entry entry = map.entries().get(i);
                if (stray(entry)) {
                    tell(map, i);
                } else if (entry.value() instanceof TextNode value) {
                    cutShort(entry.name(), value);
                } else {
                    lookThrough(entry.value());
                }
            }
        }
    }

    /** The map without keys that never had a colon behind them. */
    static MapNode withoutStrays(MapNode map) {
        var kept = new ArrayList<MapNode.Entry>();
        for (MapNode.Entry entry : map.entries()) {
            if (!stray(entry)) {
                kept.add(new MapNode.Entry(entry.key(), withoutStrays(entry.value())));
            }
        }
        return new MapNode(map.place(), map.span(), map.flow(), kept);
    }

    private static Node withoutStrays(Node node) {
        if (node instanceof MapNode map) {
            return withoutStrays(map);
        }
        if (node instanceof ListNode list) {
            List<Node> items =
                    list.items().stream().map(YamlTraps::withoutStrays).toList();
            return new ListNode(list.place(), list.span(), list.flow(), items);
        }
        return node;
    }

    /** A key without a colon has a value that begins where the key ends. */
    private static boolean stray(MapNode.Entry entry) {
        return entry.value() instanceof TextNode value
                && value.missing()
                && value.span().start() == entry.key().span().end();
    }

    private void tell(MapNode map, int i) {
        TextNode key = map.entries().get(i).key();
        if (i > 0 && map.entries().get(i - 1).value() instanceof TextNode before && comma(before, key)) {
            String name = map.entries().get(i - 1).name();
            String point = before.text() + "." + key.text();
            problems.error(
                    before.place(),
                    "",
                    "\"" + text.substring(before.span().start(), key.span().end())
                            + "\": between { } a comma starts the next entry; this reads as " + name + ": "
                            + before.text() + " and a key \"" + key.text() + "\".",
                    "Write " + name + ": " + point + ".");
            return;
        }
        var colon = WORD_COLON.matcher(key.text());
        var number = WORD_NUMBER.matcher(key.text());
        String advice = colon.matches()
                ? "A space follows the colon: " + colon.group(1) + ": " + colon.group(2) + "."
                : number.matches() ? "Write " + number.group(1) + ": " + number.group(2) + "." : "Write key: value.";
        problems.error(key.place(), "", "\"" + key.text() + "\" is no key with a value.", advice);
    }

    private boolean comma(TextNode before, TextNode key) {
        return before.style() == TextNode.Style.PLAIN
                && NUMBER_END.matcher(before.text()).matches()
                && NUMBER_START.matcher(key.text()).matches()
                && text.substring(before.span().end(), key.span().start()).equals(",");
    }

    private void cutShort(String key, TextNode value) {
        int end = value.span().end();
        if (value.style() != TextNode.Style.PLAIN || value.text().isEmpty() || !text.startsWith(" #", end)) {
            return;
        }
        char next = end + 2 < text.length() ? text.charAt(end + 2) : ' ';
        boolean number =
                Character.isDigit(next) && !NUMBER_START.matcher(value.text()).matches();
        boolean word = FREE_TEXT.contains(key) && !Character.isWhitespace(next) && next != '#';
        if (number || word) {
            String rest = text.substring(end).lines().findFirst().orElse("").stripTrailing();
            int column =
                    value.place().column() + text.codePointCount(value.span().start(), end) + 1;
            boolean oneLine = text.substring(value.span().start(), end).lines().count() == 1;
            problems.doubt(
                    oneLine ? new Place(value.place().file(), value.place().line(), column) : value.place(),
                    "",
                    "\" #\" starts a comment, so the " + key + " reads \"" + value.text() + "\".",
                    "To keep the rest, quote it: \"" + value.text() + rest + "\".");
        }
    }
}
