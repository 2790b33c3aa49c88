// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A table of the content, and the statements every such table needs. The first column tells whose rows they are: the id
 * of an entry, or of the entry that has these parts.
 */
record Table(String name, List<String> columns) {

    static Table of(String name, String... columns) {
        return new Table(name, List.of(columns));
    }

    int indexOf(String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new IllegalArgumentException(name + " has no column " + column);
        }
        return index;
    }

    private String key() {
        return columns.get(0);
    }

    private String commaSeparated() {
        return String.join(", ", columns);
    }

    /** All rows; a condition may follow. */
    String select() {
        return "SELECT " + commaSeparated() + " FROM " + name;
    }

    /** The parts of those rows of the other table that meet a condition, in order. */
    String selectOf(Table whole, String condition) {
        String some =
                condition.isEmpty() ? "" : " WHERE " + key() + " IN (SELECT id FROM " + whole.name + condition + ")";
        return select() + some + " ORDER BY " + key() + ", position";
    }

    /** Bound to the values of a row. */
    String insert() {
        return insertValues(column -> "?");
    }

    /** Like {@link #insert()}, or the entry of that id gets these values. */
    String put() {
        return insert() + orUpdate();
    }

    /** Bound to a row as {@link #rowAsJson()} gives it. */
    String putJson() {
        return insertValues(column -> "?1 ->> " + column) + orUpdate();
    }

    /** Bound to rows as {@link #rowsAsJson()} gives them. */
    String insertJson() {
        String values = IntStream.range(0, columns.size())
                .mapToObj(column -> "value ->> " + column)
                .collect(Collectors.joining(", "));
        return "INSERT INTO " + name + " (" + commaSeparated() + ") SELECT " + values + " FROM json_each(?1)";
    }

    private String insertValues(IntFunction<String> value) {
        String values = IntStream.range(0, columns.size()).mapToObj(value).collect(Collectors.joining(", "));
        return "INSERT INTO " + name + " (" + commaSeparated() + ") VALUES (" + values + ")";
    }

    private String orUpdate() {
        return columns.stream()
                .map(column -> column + " = excluded." + column)
                .collect(Collectors.joining(", ", " ON CONFLICT (" + key() + ") DO UPDATE SET ", ""));
    }

    /** An array of the row's values, made by the database itself. */
    String rowAsJson() {
        return "SELECT json_array(" + commaSeparated() + ") FROM " + name + " WHERE " + key() + " = ?";
    }

    /** An array of such arrays, in the order of the parts. */
    String rowsAsJson() {
        return "SELECT json_group_array(json_array(" + commaSeparated() + ") ORDER BY position) FROM " + name
                + " WHERE " + key() + " = ?";
    }

    /** Every row as such an array, by whose it is and then in this order. */
    String allAsJson(String order) {
        return "SELECT json_array(" + commaSeparated() + ") FROM " + name + " ORDER BY " + key() + ", " + order;
    }

    String delete() {
        return "DELETE FROM " + name + " WHERE " + key() + " = ?";
    }
}
