package org.spile.geometry.house;

import java.util.Optional;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/** Where a path goes, in the frame of the trailer where it starts. */
sealed interface Target {
    /** The coordinate to which {@code rest} goes that way. */
    Stack rest(Way way);

    /** What it is called. */
    String title();

    /** Path of the thing it belongs to; empty for outside. */
    String thing();

    /** The trailer it is on. */
    String trailer();

    /**
     * An opening.
     *
     * @param opening as seen from where the path starts
     * @param own in the frame of its own trailer
     */
    record AtOpening(Opening opening, Opening own) implements Target {
        @Override
        public Stack rest(Way way) {
            return opening.centre().get(way.axis());
        }

        @Override
        public String title() {
            return opening.title();
        }

        @Override
        public String thing() {
            return opening.thing();
        }

        @Override
        public String trailer() {
            return own.trailer();
        }

        Optional<Cross> neck() {
            return Cross.of(opening);
        }
    }

    /** A fixture: the path ends at the face it meets. */
    record IntoBox(Stood box, Spot middle) implements Target {
        @Override
        public Stack rest(Way way) {
            return box.own().get(way.axis()).end(way.opposite());
        }

        @Override
        public String title() {
            return box.placed().title();
        }

        @Override
        public String thing() {
            return box.placed().path();
        }

        @Override
        public String trailer() {
            return box.in().trailer();
        }
    }

    /** Out of the trailer. */
    record Outside(Trailer from) implements Target {
        @Override
        public Stack rest(Way way) {
            return switch (way) {
                case UP ->
                    from.over()
                            .map(roof -> roof.greatest(from.deck().extent(roof.along())))
                            .orElse(Stack.ZERO);
                case DOWN -> Stack.ZERO;
                case FORWARD, AFT, LEFT, RIGHT -> from.edge(way);
            };
        }

        @Override
        public String title() {
            return "outside";
        }

        @Override
        public String thing() {
            return "";
        }

        @Override
        public String trailer() {
            return from.id();
        }
    }
}
