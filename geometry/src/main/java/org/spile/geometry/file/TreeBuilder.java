package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Turns the events of a YAML text into a {@link Tree}. */
final class TreeBuilder {
    private static final int MOST_NESTED = 40;
    private static final int MOST_NODES = 200_000;
    private static final int MOST_CODE_POINTS = 9 * 1024 * 1024;

    private final String file;
    private final String text;
    private final CodePoints codePoints;
    private final Problems problems = new Problems();
    private Iterator<Event> events;
    private int nodes;

    TreeBuilder(String file, String text) {
        this.file = file;
        this.text = text;
        this.codePoints = CodePoints.of(text);
    }

    Tree build() {
        try {
            return grown();
        } catch (YamlEngineException fault) {
            return broken(YamlFault.worded(file, text, fault));
        } catch (TooMuch tooMuch) {
            return broken(tooMuch.problem);
        }
    }

    private Tree grown() {
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                .setCodePointLimit(MOST_CODE_POINTS)
                // The whole text at once: the reader trips over a character of two code units on the border of its
                // buffer.
                .setBufferSize(text.length() + 2)
                .build();
        events = new ParserImpl(settings, new StreamReader(settings, text));
        events.next();
        Event document = events.next();
        if (document.getEventId() == Event.ID.StreamEnd) {
            return broken(Problem.error(
                    Place.whole(file),
                    "",
                    "There is nothing in this file.",
                    "Five lines make a house: see the guide."));
        }
        Node root = node(events.next(), 0);
        events.next();
        Event after = events.next();
        if (after.getEventId() != Event.ID.StreamEnd) {
            problems.error(place(start(after)), "", "\"---\" starts a second document.", "A file holds one house.");
        }
        if (!(root instanceof MapNode map)) {
            return broken(Problem.error(
                    root.place(), "", "A house file is keys with values.", "Begin with a line like title: Saltmarsh."));
        }
        if (problems.none()) {
            new YamlTraps(text, problems).lookThrough(map);
        }
        return new Tree(text, YamlTraps.withoutStrays(map), problems.list(), false);
    }

    private Tree broken(Problem problem) {
        Place start = new Place(file, 1, 1);
        return new Tree(text, new MapNode(start, new Span(0, 0), false, List.of()), List.of(problem), true);
    }

    private Node node(Event event, int depth) {
        nodes++;
        if (nodes > MOST_NODES) {
            throw new TooMuch(Problem.error(
                    place(start(event)),
                    "",
                    "There are more than " + MOST_NODES + " values.",
                    "No house needs so many."));
        }
        if (depth > MOST_NESTED) {
            throw new TooMuch(Problem.error(
                    place(start(event)),
                    "",
                    "This is nested more than " + MOST_NESTED + " deep.",
                    "No house needs that."));
        }
        if (event instanceof NodeEvent decorated) {
            refuseDecoration(decorated);
        }
        if (event instanceof MappingStartEvent map) {
            return map(map, depth);
        }
        if (event instanceof SequenceStartEvent list) {
            return list(list, depth);
        }
        if (event instanceof ScalarEvent scalar) {
            return text(scalar);
        }
        return new TextNode(place(start(event)), span(event), "", TextNode.Style.PLAIN);
    }

    private void refuseDecoration(NodeEvent event) {
        String copies = "To copy a thing, write like: and its name.";
        if (event instanceof AliasEvent alias) {
            refuse(event, "\"*" + alias.getAlias().getValue() + "\" is a YAML alias.", copies);
            return;
        }
        event.getAnchor()
                .ifPresent(anchor -> refuse(event, "\"&" + anchor.getValue() + "\" is a YAML anchor.", copies));
        boolean tagged = event instanceof ScalarEvent scalar
                ? scalar.getTag().isPresent()
                : event instanceof MappingStartEvent map
                        ? map.getTag().isPresent()
                        : event instanceof SequenceStartEvent list
                                && list.getTag().isPresent();
        if (tagged) {
            refuse(event, "\"!\" starts a YAML tag.", "Leave it out; or quote text that begins with \"!\".");
        }
    }

    private void refuse(Event event, String says, String advice) {
        problems.error(place(start(event)), "", says, advice);
        if (problems.flooded()) {
            throw new TooMuch(problems.list().get(0));
        }
    }

    private MapNode map(MappingStartEvent open, int depth) {
        var entries = new ArrayList<MapNode.Entry>();
        Map<String, Place> seen = new LinkedHashMap<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            Node key = node(event, depth + 1);
            Node value = node(events.next(), depth + 1);
            event = events.next();
            if (!(key instanceof TextNode name) || name.text().isEmpty()) {
                problems.error(key.place(), "", "A key is a word.", "Write key: value.");
            } else if (name.text().equals("<<")) {
                problems.error(
                        key.place(), "", "\"<<\" merges maps in YAML.", "To copy a thing, write like: and its name.");
            } else if (seen.containsKey(name.text())) {
                twice(name, seen.get(name.text()));
            } else {
                seen.put(name.text(), name.place());
                entries.add(new MapNode.Entry(name, value));
            }
        }
        boolean flow = open.getFlowStyle() == FlowStyle.FLOW;
        int end = flow || entries.isEmpty()
                ? end(event)
                : last(entries.get(entries.size() - 1).value());
        return new MapNode(place(start(open)), new Span(index(start(open)), end), flow, entries);
    }

    private void twice(TextNode key, Place first) {
        problems.error(
                key.place(),
                "",
                "\"" + key.text() + "\" is already there, in line " + first.line() + ", column " + first.column() + ".",
                "Keep one of the two.");
        if (problems.flooded()) {
            throw new TooMuch(problems.list().get(0));
        }
    }

    private ListNode list(SequenceStartEvent open, int depth) {
        var items = new ArrayList<Node>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(event, depth + 1));
            event = events.next();
        }
        boolean flow = open.getFlowStyle() == FlowStyle.FLOW;
        int end = flow || items.isEmpty() ? end(event) : last(items.get(items.size() - 1));
        return new ListNode(place(start(open)), new Span(index(start(open)), end), flow, items);
    }

    private TextNode text(ScalarEvent scalar) {
        TextNode.Style style = scalar.isPlain()
                ? TextNode.Style.PLAIN
                : scalar.isSQuoted() || scalar.isDQuoted() ? TextNode.Style.QUOTED : TextNode.Style.BLOCK;
        return new TextNode(place(start(scalar)), span(scalar), scalar.getValue(), style);
    }

    private static int last(Node node) {
        return node.span().end();
    }

    private Span span(Event event) {
        return new Span(index(start(event)), end(event));
    }

    private int end(Event event) {
        return index(event.getEndMark().orElseThrow());
    }

    private static Mark start(Event event) {
        return event.getStartMark().orElseThrow();
    }

    private int index(Mark mark) {
        return codePoints.charIndex(mark.getIndex());
    }

    private Place place(Mark mark) {
        return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
    }

    /** Ends the reading of a text that is too much; never leaves this class. */
    private static final class TooMuch extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Problem problem;

        TooMuch(Problem problem) {
            super(problem.says(), null, false, false);
            this.problem = problem;
        }
    }
}
