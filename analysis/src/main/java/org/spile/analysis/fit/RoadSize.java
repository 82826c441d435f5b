package org.spile.analysis.fit;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels.Deck;
import org.spile.geometry.kernel.measure.Stack;

/** One of the three sizes that a trailer has on the road, in its own frame. */
enum RoadSize {
    /** Across, mirrors of the tow car left out. */
    WIDE,
    /** From the road up. */
    HIGH,
    /** From end to end, the coupling taken in. */
    LONG;

    private Vector3D way() {
        return switch (this) {
            case WIDE -> Vector3D.Unit.PLUS_Y;
            case HIGH -> Vector3D.Unit.PLUS_Z;
            case LONG -> Vector3D.Unit.PLUS_X;
        };
    }

    /** As limits name it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The size of a trailer and of everything on it; empty if nobody said how high its deck is. */
    Optional<Extent> of(Scene alone, Deck deck) {
        End far = farthest(alone, way(), deckEnd(deck));
        return switch (this) {
            case WIDE ->
                Optional.of(between(
                        far, farthest(alone, way().negate(), deck.right().times(-1))));
            case HIGH ->
                deck.road().map(road -> new Extent(far.stack().minus(road), "the road", far.title(), far.at()));
            case LONG ->
                Optional.of(
                        between(far, farthest(alone, way().negate(), deck.rear().times(-1))));
        };
    }

    private Stack deckEnd(Deck deck) {
        return switch (this) {
            case WIDE -> deck.left();
            case HIGH -> Stack.ZERO;
            case LONG ->
                deck.nose()
                        .filter(nose -> nose.valueMm() > deck.front().valueMm())
                        .orElse(deck.front());
        };
    }

    private static Extent between(End far, End near) {
        return new Extent(far.stack().plus(near.stack()), near.title(), far.title(), far.at());
    }

    /** The end of the deck, or what lies beyond it; linings are inside, and rooms for service are only room. */
    private static End farthest(Scene alone, Vector3D way, Stack deck) {
        End end = new End(deck, "the deck", way.multiply(deck.valueMm()));
        for (Part part : alone.parts()) {
            if (part.kind() != PartKind.LINING && part.kind() != PartKind.SERVICE) {
                Vector3D at = Farthest.of(part.body(), way);
                if (at.dot(way) > end.stack().valueMm()) {
                    end = new End(part.flex().along(at, way), part.title(), at);
                }
            }
        }
        return end;
    }

    /**
     * Where a trailer ends.
     *
     * @param stack how far out that is
     * @param title of what ends there
     * @param at where, in the trailer's frame
     */
    private record End(Stack stack, String title, Vector3D at) {}

    /**
     * A size.
     *
     * @param size as a sum of readings
     * @param from what it is counted from
     * @param to what it reaches to
     * @param at where that is, in the trailer's frame
     */
    record Extent(Stack size, String from, String to, Vector3D at) {}
}
