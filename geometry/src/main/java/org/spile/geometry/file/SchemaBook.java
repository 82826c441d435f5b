package org.spile.geometry.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.spile.geometry.kernel.measure.Kind;

/** Writes JSON Schema (draft 2020-12) pieces, each named one once. */
final class SchemaBook {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String NUMBER_OR_SAME = "^(as |[-+]?\\.?[0-9])";
    private static final String WITH_UNIT = "^(as .+|[-+]?\\.?[0-9].*[^0-9. ].*)$";

    private final TreeMap<String, ObjectNode> definitions = new TreeMap<>();

    /** The whole schema of a file. */
    ObjectNode whole(Shape<?> file) {
        ObjectNode schema = JSON.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "House file");
        ObjectNode body = map(file.allKeys(), file.says());
        schema.setAll(body);
        ObjectNode all = schema.putObject("$defs");
        definitions.forEach(all::set);
        return schema;
    }

    /** A piece of that name, written at its first use and pointed to. */
    ObjectNode defined(String name, Supplier<ObjectNode> piece) {
        if (!definitions.containsKey(name)) {
            definitions.put(name, JSON.objectNode());
            definitions.put(name, piece.get());
        }
        return JSON.objectNode().put("$ref", "#/$defs/" + name);
    }

    /** Words, described. */
    ObjectNode text(String says) {
        return JSON.objectNode().put("type", "string").put("description", says);
    }

    /** One of some words; those that a YAML reader may turn into true or false, as that too. */
    ObjectNode words(List<String> allowed) {
        ObjectNode piece = JSON.objectNode();
        ArrayNode words = piece.putArray("enum");
        allowed.forEach(words::add);
        if (allowed.stream().anyMatch(Names.SWITCH_WORDS::contains)) {
            words.add(true).add(false);
        }
        return piece;
    }

    /** A value of some kind, or {@code as PATH}. */
    ObjectNode quantity(Kind kind) {
        String name = "quantity-" + Quantity.noun(kind).replace(' ', '-');
        return defined(name, () -> {
            ObjectNode piece = JSON.objectNode().put("description", kind.form() + " Or: as PATH.");
            if (kind.bareAllowed()) {
                piece.putArray("type").add("number").add("string");
                return piece.put("pattern", NUMBER_OR_SAME);
            }
            return piece.put("type", "string").put("pattern", WITH_UNIT);
        });
    }

    /** A tolerance alone. */
    ObjectNode tolerance() {
        ObjectNode piece = JSON.objectNode().put("description", "A tolerance alone: ± 1, or +0.5/-0.2.");
        piece.putArray("type").add("number").add("string");
        return piece;
    }

    /** A distance from a face. */
    ObjectNode distance() {
        return defined("distance", () -> {
            ObjectNode piece = JSON.objectNode()
                    .put(
                            "description",
                            "A distance: 180, 180 out, or both edges off one tape: 640..1380. Or: as PATH.");
            piece.putArray("type").add("number").add("string");
            return piece.put("pattern", NUMBER_OR_SAME);
        });
    }

    /** Any of some pieces. */
    ObjectNode anyOf(ObjectNode... pieces) {
        ObjectNode any = JSON.objectNode();
        ArrayNode each = any.putArray("anyOf");
        List.of(pieces).forEach(each::add);
        return any;
    }

    /** Nothing behind the key. */
    ObjectNode nothing() {
        return JSON.objectNode().put("type", "null");
    }

    /** Several of a kind. */
    ObjectNode list(ObjectNode item, boolean orOne, int least) {
        ObjectNode list = JSON.objectNode().put("type", "array");
        if (least > 0) {
            list.put("minItems", least);
        }
        list.set("items", item);
        return orOne ? anyOf(item.deepCopy(), list) : list;
    }

    /** A pair of numbers. */
    ObjectNode pair(ObjectNode each) {
        ObjectNode pair =
                JSON.objectNode().put("type", "array").put("minItems", 2).put("maxItems", 2);
        pair.set("items", each);
        return pair;
    }

    /** One material and its thickness. */
    ObjectNode layer(ObjectNode thickness) {
        return defined("layer", () -> {
            ObjectNode piece = JSON.objectNode()
                    .put("description", "One layer: a material and its thickness, as {ply: 6}.")
                    .put("type", "object")
                    .put("minProperties", 1)
                    .put("maxProperties", 1);
            piece.set("additionalProperties", thickness);
            return piece;
        });
    }

    /** A map with fixed keys. */
    ObjectNode map(List<Key<?>> keys, String says) {
        ObjectNode map = JSON.objectNode().put("description", says).put("type", "object");
        ObjectNode properties = map.putObject("properties");
        ArrayNode required = JSON.arrayNode();
        for (Key<?> key : keys) {
            ObjectNode value = JSON.objectNode();
            value.setAll(key.form().schema(this));
            properties.set(key.name(), value.put("description", described(key)));
            if (key.required()) {
                required.add(key.name());
            }
        }
        if (!required.isEmpty()) {
            require(map, required, keys.contains(PlacedKeys.LIKE));
        }
        return map.put("additionalProperties", false);
    }

    /** A copy may have by its original what it needs. */
    private static void require(ObjectNode map, ArrayNode required, boolean copies) {
        if (copies) {
            ArrayNode either = map.putArray("anyOf");
            either.addObject().set("required", required);
            either.addObject().putArray("required").add(PlacedKeys.LIKE.name());
        } else {
            map.set("required", required);
        }
    }

    private static String described(Key<?> key) {
        String unsaid = key.unsaid().isEmpty() ? "" : " (" + key.unsaid() + ")";
        return key.says() + unsaid + ". As: " + key.form().words() + ".";
    }

    /** A map with some keys, all of one kind. */
    ObjectNode fixed(List<String> keys, ObjectNode each) {
        ObjectNode map = JSON.objectNode().put("type", "object");
        ObjectNode properties = map.putObject("properties");
        for (String key : keys) {
            properties.set(key, each.deepCopy());
        }
        return map.put("additionalProperties", false);
    }

    /** Things by name. */
    ObjectNode named(ObjectNode each) {
        ObjectNode map = JSON.objectNode();
        map.putArray("type").add("object").add("null");
        map.putObject("patternProperties").set("^" + KeyNames.ID.pattern() + "$", each);
        return map.put("additionalProperties", false);
    }

    /** A map with fixed keys that takes others besides. */
    ObjectNode andNamed(ObjectNode map, ObjectNode each) {
        map.putObject("patternProperties").set(besides(map), each);
        return map.put("additionalProperties", false);
    }

    private static String besides(ObjectNode map) {
        var fixed = new ArrayList<String>();
        map.get("properties").fieldNames().forEachRemaining(fixed::add);
        return "^(?!(" + String.join("|", fixed) + ")$)" + KeyNames.ID.pattern() + "$";
    }
}
