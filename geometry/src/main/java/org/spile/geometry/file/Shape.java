package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * A map with fixed keys: the definition of one thing of the house file.
 *
 * @param <T> what it is read as
 */
final class Shape<T> implements Form<T> {
    private final String name;
    private final String noun;
    private final String says;
    private final List<Key<?>> keys;
    private final Map<String, UnaryOperator<String>> hints;
    private final Optional<NamedForm<?>> rest;
    private final Function<Values, T> make;

    private Shape(
            String name,
            String noun,
            String says,
            List<Key<?>> keys,
            Map<String, UnaryOperator<String>> hints,
            Optional<NamedForm<?>> rest,
            Function<Values, T> make) {
        this.name = name;
        this.noun = noun;
        this.says = says;
        this.keys = List.copyOf(keys);
        this.hints = Collections.unmodifiableMap(new LinkedHashMap<>(hints));
        this.rest = rest;
        this.make = make;
    }

    /**
     * Defines a thing.
     *
     * @param name its name in the schema and the page's headings, as {@code cavity}
     * @param noun the name with its article
     * @param says what it is, a sentence
     * @param make puts it together; called only if every key was read and none is missing
     */
    static <T> Shape<T> of(String name, String noun, String says, List<Key<?>> keys, Function<Values, T> make) {
        return new Shape<>(name, noun, says, keys, Map.of(), Optional.empty(), make);
    }

    /** This shape with an answer to a wrong key that people often type. */
    Shape<T> hint(String wrongKey, String advice) {
        return hint(wrongKey, value -> advice);
    }

    /** This shape with an answer, made from the value typed, to a wrong key that people often type. */
    Shape<T> hint(String wrongKey, UnaryOperator<String> advice) {
        var more = new HashMap<>(hints);
        more.put(wrongKey, advice);
        return new Shape<>(name, noun, says, keys, more, rest, make);
    }

    /** This shape, every other key of which names a thing. */
    Shape<T> besides(NamedForm<?> others) {
        return new Shape<>(name, noun, says, keys, hints, Optional.of(others), make);
    }

    String name() {
        return name;
    }

    String says() {
        return says;
    }

    List<Key<?>> allKeys() {
        return keys;
    }

    @Override
    public Optional<T> read(Spot spot, Scribe scribe) {
        if (!spot.isMap() && !spot.isNothing()) {
            scribe.wrong(spot, spot.found() + " stands where " + noun + " is meant.", "Its keys are " + listed() + ".");
            return Optional.empty();
        }
        int before = scribe.count();
        var values = new HashMap<String, Object>();
        Optional<?> others = others(spot, scribe);
        for (Key<?> key : keys) {
            Optional<Spot.Entry> entry = spot.entry(key.name());
            if (entry.isPresent()) {
                key.form().read(entry.get().value(), scribe).ifPresent(value -> values.put(key.name(), value));
            } else if (key.required()) {
                scribe.wrongThing(
                        spot,
                        " needs \"" + key.name() + "\": " + key.says() + ".",
                        "It is " + key.form().words() + ".");
            }
        }
        return scribe.count() > before
                ? Optional.empty()
                : Optional.ofNullable(make.apply(new Values(spot, scribe, values, others)));
    }

    /** What the other keys hold; without a form for them, they are unknown. */
    private Optional<?> others(Spot spot, Scribe scribe) {
        if (rest.isEmpty()) {
            new UnknownKeys(this::advice, keys()).check(spot, scribe);
            return Optional.empty();
        }
        List<Spot.Entry> entries = spot.entries().stream()
                .filter(entry -> !keys().contains(entry.key()))
                .toList();
        return rest.get().read(spot.withEntries(entries), scribe);
    }

    private String advice(String wrongKey, String value) {
        return hints.containsKey(wrongKey) ? hints.get(wrongKey).apply(value) : "";
    }

    private String listed() {
        return String.join(", ", keys());
    }

    @Override
    public ObjectNode schema(SchemaBook book) {
        return book.defined(name, () -> {
            ObjectNode map = book.map(keys, says);
            return rest.map(others -> book.andNamed(map, others.each().schema(book)))
                    .orElse(map);
        });
    }

    @Override
    public String words() {
        return name;
    }

    @Override
    public String linked() {
        return "[" + name + "](#" + name + ")";
    }

    @Override
    public List<Shape<?>> shapes() {
        return List.of(this);
    }

    /** The things that its keys rest on, in their order. */
    List<Shape<?>> below() {
        var below = new ArrayList<Shape<?>>();
        for (Key<?> key : keys) {
            below.addAll(key.form().shapes());
        }
        rest.ifPresent(others -> below.addAll(others.shapes()));
        return below;
    }

    @Override
    public Optional<Form<?>> under(String step) {
        for (Key<?> key : keys) {
            if (key.name().equals(step)) {
                return Optional.of(key.form());
            }
        }
        return rest.flatMap(others -> others.under(step));
    }

    @Override
    public List<String> keys() {
        var names = new ArrayList<String>();
        for (Key<?> key : keys) {
            names.add(key.name());
        }
        return names;
    }
}
