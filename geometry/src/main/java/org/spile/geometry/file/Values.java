package org.spile.geometry.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** What was read of one thing, key by key. */
final class Values {
    private final Spot spot;
    private final Scribe scribe;
    private final Map<String, Object> byKey;
    private final Optional<?> others;

    Values(Spot spot, Scribe scribe, Map<String, Object> byKey, Optional<?> others) {
        this.spot = spot;
        this.scribe = scribe;
        this.byKey = byKey;
        this.others = others;
    }

    Spot spot() {
        return spot;
    }

    Scribe scribe() {
        return scribe;
    }

    String path() {
        return spot.path();
    }

    String id() {
        return spot.lastStep();
    }

    boolean has(Key<?> key) {
        return byKey.containsKey(key.name());
    }

    /** Where a key's value stands; the thing itself if the key was left out. */
    Spot at(Key<?> key) {
        return spot.entry(key.name()).map(Spot.Entry::value).orElse(spot);
    }

    @SuppressWarnings("unchecked") // put there by the key's own form
    <T> Optional<T> maybe(Key<T> key) {
        return Optional.ofNullable((T) byKey.get(key.name()));
    }

    <T> T need(Key<T> key) {
        return maybe(key).orElseThrow(() -> new IllegalStateException("\"" + key.name() + "\" isn't a required key"));
    }

    <T> T or(Key<T> key, T unsaid) {
        return maybe(key).orElse(unsaid);
    }

    String text(Key<String> key) {
        return or(key, "");
    }

    <T> List<T> list(Key<List<T>> key) {
        return or(key, List.of());
    }

    <V> Map<String, V> map(Key<Map<String, V>> key) {
        return or(key, Map.of());
    }

    /** What the keys beside the fixed ones hold. */
    @SuppressWarnings("unchecked") // put there by the shape's own form for them
    <V> Map<String, V> others(NamedForm<V> form) {
        return ((Optional<Map<String, V>>) others).orElse(Map.of());
    }

    /** The reading there, or a stated default at the key's own path. */
    Reading or(Key<Reading> key, Kind kind, double base) {
        return maybe(key).orElseGet(() -> Reading.byDefault(path() + "." + key.name(), kind, base));
    }
}
