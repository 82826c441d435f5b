package org.spile.geometry.file;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.file.DocumentPath.Step;
import org.spile.geometry.kernel.measure.Retyped;
import org.spile.geometry.kernel.measure.Unit;

/** The splice that makes an edit, where its path leads. */
final class EditMove {
    private final Tree tree;
    private final EditWalk walk;
    private final NewValue value;
    private final EntrySplice places;

    EditMove(Tree tree, EditWalk walk, NewValue value) {
        this.tree = tree;
        this.walk = walk;
        this.value = value;
        this.places = new EntrySplice(tree.text());
    }

    /** The splice that writes out what the edited thing has by {@code like} only, if there is such. */
    Optional<Splice> copy() {
        boolean below =
                !walk.whole() && walk.next().isKey() && !(walk.rest().isEmpty() && value instanceof NewValue.Whole);
        return below && walk.node() instanceof MapNode map
                ? original(map, walk.next().key())
                        .map(original -> places.intoMap(map, walk.next().key(), FlowText.of(original)))
                : Optional.empty();
    }

    private Optional<Node> original(MapNode map, String key) {
        Set<String> seen = new HashSet<>();
        MapNode here = map;
        while (walk.parent().orElse(map) instanceof MapNode siblings
                && here.value("like").orElse(here) instanceof TextNode like
                && seen.add(like.text())
                && siblings.value(like.text()).orElse(like) instanceof MapNode other) {
            if (other.value(key).isPresent()) {
                return other.value(key);
            }
            here = other;
        }
        return Optional.empty();
    }

    /** The splice that puts the value there. */
    Splice splice() {
        if (walk.whole()) {
            return walk.node() instanceof TextNode text ? overText(text) : overWhole();
        }
        if (walk.node() instanceof MapNode map) {
            return added(map);
        }
        if (walk.node() instanceof ListNode list) {
            return places.intoList(list, nested(walk.rest(), true));
        }
        return belowText((TextNode) walk.node());
    }

    private Splice added(MapNode map) {
        List<Step> rest = walk.rest();
        if (walk.done() > 0 || map.flow() || rest.isEmpty() || !rest.get(0).isKey()) {
            boolean inFlow = walk.inFlow() || map.flow() || !rest.isEmpty();
            return places.intoMap(map, walk.next().key(), nested(rest, inFlow));
        }
        List<Step> below = rest.subList(1, rest.size());
        return places.section(map, walk.next().key(), rest.get(0).key(), nested(below, !below.isEmpty()));
    }

    private Splice belowText(TextNode text) {
        Step next = walk.next();
        if (text.missing()) {
            return places.intoMissing(
                    text,
                    nested(
                            walk.path()
                                    .steps()
                                    .subList(walk.done(), walk.path().steps().size()),
                            true));
        }
        if (!next.isKey() && value instanceof NewValue.Single single) {
            PairText pair = PairText.of(text.text()).orElseThrow();
            return retyped(
                    text,
                    next.item() == 1
                            ? pair.withFirst(over(pair.first(), single)).toString()
                            : pair.withSecond(over(pair.second(), single)).toString());
        }
        String at = FlowText.text(text.text(), true, text.style() != TextNode.Style.PLAIN);
        return Splice.over(
                text.span(), "{at: " + at + ", " + FlowText.key(next.key()) + ": " + nested(walk.rest(), true) + "}");
    }

    private Splice overText(TextNode text) {
        if (value instanceof NewValue.Single single) {
            return retyped(text, over(text.text(), single));
        }
        String words = words(true);
        return text.missing() ? places.intoMissing(text, words) : Splice.over(text.span(), words);
    }

    private Splice retyped(TextNode text, String fresh) {
        if (fresh.equals(text.text()) && !text.missing()) {
            return Splice.at(text.span().start(), "");
        }
        String words = FlowText.text(fresh, walk.inFlow(), text.style() == TextNode.Style.QUOTED);
        if (text.missing()) {
            return places.intoMissing(text, words);
        }
        return Splice.over(text.span(), words + (text.style() == TextNode.Style.BLOCK ? "\n" : ""));
    }

    private Splice overWhole() {
        if (value instanceof NewValue.Whole whole && whole.node().sameAs(walk.node())) {
            return Splice.at(walk.node().span().start(), "");
        }
        return walk.endsInKey()
                ? places.inPlaceOf(walk.node(), walk.entry(), words(true))
                : Splice.over(walk.node().span(), words(true));
    }

    private String over(String old, NewValue.Single single) {
        return Retyped.over(old, single.text(), bareLength());
    }

    /** The new value with the maps and lists that its last steps ask for round it. */
    private String nested(List<Step> below, boolean inFlow) {
        String words = words(inFlow);
        for (int i = below.size() - 1; i >= 0; i--) {
            Step step = below.get(i);
            words = step.isKey() ? "{" + FlowText.key(step.key()) + ": " + words + "}" : "[" + words + "]";
        }
        return words;
    }

    private String words(boolean inFlow) {
        return value instanceof NewValue.Single single
                ? FlowText.text(single.text(), inFlow, false)
                : value instanceof NewValue.Whole whole ? whole.words() : "";
    }

    private Unit bareLength() {
        boolean inches = tree.root().value("lengths").orElse(tree.root()) instanceof TextNode unit
                && unit.text().equals(Unit.INCH.symbol());
        return inches ? Unit.INCH : Unit.MILLIMETRE;
    }
}
