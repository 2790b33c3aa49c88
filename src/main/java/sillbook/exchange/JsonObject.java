// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sillbook.text.Initial;

/**
 * An object in a JSON file, its fields read one by one. A field that is {@code null} is as one that is not there.
 *
 * @param name what it is called where something is wrong with it, as {@code pot 3}
 */
record JsonObject(String name, JsonNode node) {
    /** What a file holds is not what is read there; the sentence says where, and what would be. */
    static final class Misread extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final String sentence;

        Misread(String sentence) {
            super(sentence);
            this.sentence = sentence;
        }

        String sentence() {
            return sentence;
        }
    }

    JsonObject {
        if (!node.isObject()) {
            throw new Misread(Initial.large(name) + " is no object in braces.");
        }
    }

    /** The name at the beginning of a sentence. */
    String named() {
        return Initial.large(name);
    }

    /** Refuses fields of other names: they were meant to say something. */
    void holdsOnly(String... fields) {
        Set<String> others = new TreeSet<>();
        node.fieldNames().forEachRemaining(others::add);
        Set.of(fields).forEach(others::remove);
        others.stream().findFirst().ifPresent(other -> {
            throw new Misread(
                    named() + " has a field '" + other + "'. Those it may have are " + String.join(", ", fields) + ".");
        });
    }

    boolean has(String field) {
        return holds(node, field);
    }

    static boolean holds(JsonNode node, String field) {
        return node.hasNonNull(field);
    }

    boolean isList(String field) {
        return node.path(field).isArray();
    }

    JsonObject object(String field) {
        return new JsonObject("the " + field + " of " + name, node.path(field));
    }

    /** The elements of a list; none where there is no such field. */
    List<JsonNode> list(String field) {
        if (has(field) && !isList(field)) {
            throw new Misread("The " + field + " of " + name + " are no list in brackets.");
        }
        List<JsonNode> elements = new ArrayList<>();
        node.path(field).forEach(elements::add);
        return elements;
    }

    int whole(String field) {
        return whole(field, node.path(field));
    }

    int whole(String field, int ifNone) {
        return has(field) ? whole(field) : ifNone;
    }

    List<Integer> wholes(String field) {
        return list(field).stream().map(element -> whole(field, element)).toList();
    }

    private int whole(String field, JsonNode value) {
        if (!value.canConvertToExactIntegral()) {
            String said = value.isMissingNode() || value.isNull() ? "is not said" : "is " + value;
            throw new Misread("The " + field + " of " + name + " " + said + ". Write a whole number.");
        }
        if (!value.canConvertToInt()) {
            throw new Misread("The " + field + " of " + name + " is " + value
                    + ", too large a number. Write one of at most 9 digits.");
        }
        return value.intValue();
    }
}
