package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.spile.geometry.file.DocumentPath.Step;

/**
 * How far a tree goes along a path.
 *
 * @param path the path
 * @param nodes the nodes on the way, from the root to the last there is
 * @param entries the entries on the way
 * @param done how many steps of the path led there
 */
record EditWalk(DocumentPath path, List<Node> nodes, List<MapNode.Entry> entries, int done) {
    EditWalk {
        nodes = List.copyOf(nodes);
        entries = List.copyOf(entries);
    }

    /**
     * Walks down a path.
     *
     * @param single whether a single value is to be put there: for a surface that is a map it means the surface's height
     */
    static EditWalk down(Tree tree, DocumentPath path, boolean single) {
        var nodes = new ArrayList<Node>(List.of(tree.root()));
        var entries = new ArrayList<MapNode.Entry>();
        int done = 0;
        Node node = tree.root();
        while (done < path.steps().size()) {
            Step step = path.steps().get(done);
            if (step.isKey()
                    && node instanceof MapNode map
                    && map.entry(step.key()).isPresent()) {
                entries.add(map.entry(step.key()).orElseThrow());
                node = entries.get(entries.size() - 1).value();
            } else if (!step.isKey()
                    && node instanceof ListNode list
                    && step.item() <= list.items().size()) {
                node = list.items().get(step.item() - 1);
            } else {
                break;
            }
            nodes.add(node);
            done++;
        }
        Optional<MapNode.Entry> height = single && done == path.steps().size() && node instanceof MapNode map
                ? map.entry("at").filter(at -> at.value() instanceof TextNode)
                : Optional.empty();
        height.ifPresent(at -> {
            entries.add(at);
            nodes.add(at.value());
        });
        return new EditWalk(path, nodes, entries, done);
    }

    /** The last node there is. */
    Node node() {
        return nodes.get(nodes.size() - 1);
    }

    /** The node before the last, if any. */
    Optional<Node> parent() {
        return nodes.size() < 2 ? Optional.empty() : Optional.of(nodes.get(nodes.size() - 2));
    }

    /** Whether the path was walked to its end. */
    boolean whole() {
        return done == path.steps().size();
    }

    /** Whether the path's last step is a key. */
    boolean endsInKey() {
        return path.steps().get(path.steps().size() - 1).isKey();
    }

    /** Whether the last node stands between braces or brackets of others. */
    boolean inFlow() {
        return nodes.subList(0, nodes.size() - 1).stream().anyMatch(EditWalk::flow);
    }

    /** The entry whose value the last node is. */
    MapNode.Entry entry() {
        return entries.get(entries.size() - 1);
    }

    /** The path of the last node. */
    DocumentPath here() {
        return path.first(done);
    }

    /** The first step that led nowhere. */
    Step next() {
        return path.steps().get(done);
    }

    /** The steps after {@link #next()}. */
    List<Step> rest() {
        return path.steps().subList(done + 1, path.steps().size());
    }

    static boolean flow(Node node) {
        return (node instanceof MapNode map && map.flow()) || (node instanceof ListNode list && list.flow());
    }
}
