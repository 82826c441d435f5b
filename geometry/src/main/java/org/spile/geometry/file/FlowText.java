package org.spile.geometry.file;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes values into a house file in one line, quoted where they must be. */
final class FlowText {
    private static final Pattern SIMPLE_KEY = Pattern.compile("[A-Za-z][A-Za-z0-9_-]*");

    private FlowText() {}

    /** A node as it would be typed in one line. */
    static String of(Node node) {
        if (node instanceof MapNode map) {
            return map.entries().stream()
                    .map(entry -> key(entry.name()) + ": " + of(entry.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof ListNode list) {
            return list.items().stream().map(FlowText::of).collect(Collectors.joining(", ", "[", "]"));
        }
        TextNode text = (TextNode) node;
        return text.missing() ? "" : text(text.text(), true, text.style() != TextNode.Style.PLAIN);
    }

    static String key(String key) {
        return SIMPLE_KEY.matcher(key).matches() ? key : quoted(key);
    }

    /**
     * A text as a value.
     *
     * @param inFlow whether it will stand between braces or brackets
     * @param quote whether to quote it even if it need not be
     */
    static String text(String text, boolean inFlow, boolean quote) {
        return !quote && plain(text, inFlow) ? text : quoted(text);
    }

    /** Whether a text means itself without quotes: the reader is asked, not a list of signs. */
    private static boolean plain(String text, boolean inFlow) {
        Tree tree = Tree.of("", inFlow ? "v: {k: " + text + ", l: m}\n" : "k: " + text + "\n");
        MapNode map =
                inFlow && tree.root().value("v").orElse(tree.root()) instanceof MapNode inner ? inner : tree.root();
        return tree.problems().isEmpty()
                && map.entries().size() == (inFlow ? 2 : 1)
                && map.value("k").orElse(map) instanceof TextNode node
                && node.style() == TextNode.Style.PLAIN
                && node.text().equals(text);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }
}
