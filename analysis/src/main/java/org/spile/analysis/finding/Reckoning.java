package org.spile.analysis.finding;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a formula answers: a result, or why it has none.
 *
 * <p>A published formula holds inside a range. Outside it there is no number to be had, and whoever asked can't overlook
 * that.
 *
 * @param <T> what is reckoned, a number mostly
 */
public sealed interface Reckoning<T> {

    /**
     * Reckoned.
     *
     * @param <T> what is reckoned
     * @param value what came out
     */
    record Known<T>(T value) implements Reckoning<T> {
        /** Checks that there is a result. */
        public Known {
            Objects.requireNonNull(value, "value");
        }
    }

    /**
     * Not to be had.
     *
     * @param <T> what should have been reckoned
     * @param why one plain sentence, with the offending number and the range
     */
    record NotKnown<T>(String why) implements Reckoning<T> {
        /** Checks that there is a reason. */
        public NotKnown {
            Objects.requireNonNull(why, "why");
        }
    }

    /** A result. */
    static <T> Reckoning<T> of(T result) {
        return new Known<>(result);
    }

    /** No result, and why. */
    static <T> Reckoning<T> none(String because) {
        return new NotKnown<>(because);
    }

    /** The result, if there is one. */
    default Optional<T> result() {
        return this instanceof Known<T> known ? Optional.of(known.value()) : Optional.empty();
    }

    /** Why there is none; empty if there is one. */
    default Optional<String> because() {
        return this instanceof NotKnown<T> open ? Optional.of(open.why()) : Optional.empty();
    }

    /** Goes on with the result; a reason stays what it is. */
    default <R> Reckoning<R> then(Function<T, Reckoning<R>> next) {
        if (this instanceof Known<T> known) {
            return next.apply(known.value());
        }
        return new NotKnown<>(because().orElseThrow());
    }

    /** The result, turned into another; a reason stays what it is. */
    default <R> Reckoning<R> map(Function<T, R> change) {
        return then(result -> new Known<>(change.apply(result)));
    }
}
