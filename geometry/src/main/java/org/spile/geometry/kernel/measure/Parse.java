package org.spile.geometry.kernel.measure;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading words: the thing they mean, or why they mean nothing.
 *
 * @param <T> the thing
 */
public sealed interface Parse<T> {

    /**
     * The words were understood.
     *
     * @param <T> the thing
     * @param meant what they mean
     */
    record Understood<T>(T meant) implements Parse<T> {
        /** Checks that there is a thing. */
        public Understood {
            Objects.requireNonNull(meant, "meant");
        }
    }

    /**
     * The words were not understood.
     *
     * @param <T> the thing they should have meant
     * @param why what is wrong with them
     */
    record Refused<T>(Refusal why) implements Parse<T> {
        /** Checks that there is a reason. */
        public Refused {
            Objects.requireNonNull(why, "why");
        }
    }

    /** The thing meant, if the words were understood. */
    default Optional<T> value() {
        return this instanceof Understood<T> understood ? Optional.of(understood.meant()) : Optional.empty();
    }

    /** What is wrong with the words, if they were not understood. */
    default Optional<Refusal> refusal() {
        return this instanceof Refused<T> refused ? Optional.of(refused.why()) : Optional.empty();
    }

    /** Goes on with the thing meant; a refusal stays what it is. */
    default <R> Parse<R> then(Function<T, Parse<R>> next) {
        if (this instanceof Understood<T> understood) {
            return next.apply(understood.meant());
        }
        return new Refused<>(refusal().orElseThrow());
    }

    /** The thing meant, turned into another; a refusal stays what it is. */
    default <R> Parse<R> map(Function<T, R> change) {
        return then(meant -> new Understood<>(change.apply(meant)));
    }
}
