// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import sillbook.model.Day;
import sillbook.reckon.dates.Window;
import sillbook.reckon.packing.Point;

/** A JSON object put together field by field. What is not known is {@code null}; no field is ever left out. */
final class Fields {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final ObjectNode node = NODES.objectNode();

    Fields text(String name, String value) {
        node.put(name, value);
        return this;
    }

    Fields text(String name, Optional<String> value) {
        node.put(name, value.orElse(null));
        return this;
    }

    /** Words in the grower's own hand; where none were written, {@code null}. */
    Fields written(String name, String words) {
        return text(name, Optional.of(words).filter(text -> !text.isEmpty()));
    }

    /** A word of a fixed set: {@code MAY_COME_IN} is {@code may-come-in}. */
    Fields code(String name, Enum<?> value) {
        return text(name, code(value));
    }

    static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Fields flag(String name, boolean value) {
        node.put(name, value);
        return this;
    }

    Fields number(String name, long value) {
        node.put(name, value);
        return this;
    }

    /** A whole number is written without a point. */
    Fields number(String name, double value) {
        return value == Math.rint(value) ? number(name, (long) value) : put(name, NODES.numberNode(value));
    }

    Fields whole(String name, Optional<Integer> value) {
        return put(name, value.<JsonNode>map(NODES::numberNode).orElse(NODES.nullNode()));
    }

    Fields decimal(String name, Optional<Double> value) {
        value.ifPresentOrElse(known -> number(name, known), () -> node.putNull(name));
        return this;
    }

    Fields day(String name, LocalDate value) {
        return text(name, value.toString());
    }

    Fields day(String name, Optional<LocalDate> value) {
        return text(name, value.map(LocalDate::toString));
    }

    /** The three days of a window. */
    Fields window(Window window) {
        return day("earliest", window.earliest()).day("likely", window.likely()).day("latest", window.latest());
    }

    /** A day that happened, perhaps only about known. */
    Fields happened(String name, Day day) {
        return happened(name, Optional.of(day));
    }

    Fields happened(String name, Optional<Day> day) {
        return object(
                name,
                day,
                known -> new Fields()
                        .day("earliest", known.earliest())
                        .day("likely", known.likely())
                        .day("latest", known.latest()));
    }

    Fields texts(String name, Collection<String> values) {
        ArrayNode list = node.putArray(name);
        values.forEach(list::add);
        return this;
    }

    Fields numbers(String name, Collection<Integer> values) {
        ArrayNode list = node.putArray(name);
        values.forEach(list::add);
        return this;
    }

    /** Whole numbers, each of which may not be known. */
    Fields wholes(String name, Collection<Optional<Integer>> values) {
        ArrayNode list = node.putArray(name);
        values.forEach(value -> list.add(value.<JsonNode>map(NODES::numberNode).orElse(NODES.nullNode())));
        return this;
    }

    /** Numbers in an order of their own, as from the least to the most. */
    Fields decimals(String name, double... values) {
        ArrayNode list = node.putArray(name);
        for (double value : values) {
            list.add(value);
        }
        return this;
    }

    /** Places, each as its x and y. */
    Fields places(String name, Collection<Point> values) {
        ArrayNode list = node.putArray(name);
        values.forEach(place -> list.addArray().add(place.x()).add(place.y()));
        return this;
    }

    <T> Fields list(String name, Collection<T> values, Function<? super T, Fields> each) {
        ArrayNode list = node.putArray(name);
        values.forEach(value -> list.add(each.apply(value).node));
        return this;
    }

    <T> Fields object(String name, Optional<T> value, Function<? super T, Fields> fields) {
        return put(name, value.<JsonNode>map(known -> fields.apply(known).node).orElse(NODES.nullNode()));
    }

    Fields object(String name, Fields fields) {
        return put(name, fields.node);
    }

    private Fields put(String name, JsonNode value) {
        node.set(name, value);
        return this;
    }

    /** The whole object as a document. */
    String write() {
        return JsonText.of(node);
    }
}
