package org.spile.geometry.file;

/** Finds where a new key or item goes, and with what around it, so that it looks like its neighbours. */
final class EntrySplice {
    private final String text;

    EntrySplice(String text) {
        this.text = text;
    }

    /** A new key at the end of a map. */
    Splice intoMap(MapNode map, String key, String value) {
        String entry = FlowText.key(key) + ": " + value;
        if (map.flow()) {
            return intoFlow(
                    map.span(),
                    map.entries().isEmpty() ? map.span().start() + 1 : lastEnd(map),
                    entry,
                    map.entries().isEmpty());
        }
        TextNode first = map.entries().get(0).key();
        return intoBlock(
                map.span().end(), indent(first.span().start(), first.place().column()), entry);
    }

    /** A new section at the end of the file, with one thing in it. */
    Splice section(MapNode top, String section, String id, String value) {
        TextNode first = top.entries().get(0).key();
        String indent = indent(first.span().start(), first.place().column());
        String thing = FlowText.key(section) + ":" + newline() + indent + "  " + FlowText.key(id) + ": " + value;
        return intoBlock(top.span().end(), indent, thing);
    }

    /** A new item at the end of a list. */
    Splice intoList(ListNode list, String value) {
        boolean empty = list.items().isEmpty();
        if (list.flow()) {
            int end = empty
                    ? list.span().start() + 1
                    : list.items().get(list.items().size() - 1).span().end();
            return intoFlow(list.span(), end, value, empty);
        }
        return intoBlock(
                list.span().end(), indent(list.span().start(), list.place().column()), "- " + value);
    }

    /** A value where a key had none. */
    Splice intoMissing(TextNode missing, String value) {
        int at = missing.span().start();
        boolean spaced = at > 0 && text.charAt(at - 1) == ' ';
        return Splice.at(at, (spaced ? "" : " ") + value);
    }

    /** A map or list in place of another; one in block form moves up behind its key unless a comment is in the way. */
    Splice inPlaceOf(Node node, MapNode.Entry entry, String value) {
        boolean block = (node instanceof MapNode map && !map.flow()) || (node instanceof ListNode list && !list.flow());
        if (!block) {
            return Splice.over(node.span(), value);
        }
        int colon = text.indexOf(':', entry.key().span().end()) + 1;
        if (text.substring(colon, node.span().start()).isBlank()) {
            return new Splice(colon, node.span().end(), " " + value);
        }
        String indent = indent(entry.key().span().start(), entry.key().place().column());
        int lineStart = text.lastIndexOf('\n', node.span().start() - 1) + 1;
        return new Splice(lineStart, node.span().end(), indent + "  " + value);
    }

    private int lastEnd(MapNode map) {
        return map.entries().get(map.entries().size() - 1).value().span().end();
    }

    private Splice intoFlow(Span span, int after, String entry, boolean empty) {
        if (empty) {
            return Splice.at(after, entry);
        }
        int comma = trailingComma(after, span.end());
        return comma < 0 ? Splice.at(after, ", " + entry) : Splice.at(comma + 1, " " + entry);
    }

    /** The comma that some leave behind the last entry; commas in comments are none. */
    private int trailingComma(int from, int to) {
        boolean comment = false;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            comment = c != '\n' && (comment || c == '#');
            if (c == ',' && !comment) {
                return i;
            }
        }
        return -1;
    }

    private Splice intoBlock(int end, String indent, String entry) {
        String newline = newline();
        if (end > 0 && end <= text.length() && text.charAt(end - 1) == '\n') {
            return Splice.at(end, indent + entry + newline);
        }
        int line = end;
        while (line < text.length() && text.charAt(line) != '\n' && text.charAt(line) != '\r') {
            line++;
        }
        return Splice.at(line, newline + indent + entry);
    }

    private String newline() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** The white space before a first key or dash; blanks where something else stands before it. */
    private String indent(int start, int column) {
        String line = text.substring(text.lastIndexOf('\n', start - 1) + 1, start);
        return line.isBlank() ? line : " ".repeat(column - 1);
    }
}
