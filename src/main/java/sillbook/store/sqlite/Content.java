// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sillbook.model.Entity;
import sillbook.model.Journal;

/** The entries in the file, read and written through their mappings. */
final class Content {
    private static final String BURY = "INSERT OR REPLACE INTO tombstone (table_name, id, removed_at) VALUES (?, ?, ?)";
    private static final String UNBURY = "DELETE FROM tombstone WHERE table_name = ? AND id = ?";

    private final Database database;
    private final WrongSums wrong;

    Content(Database database) {
        this(database, new WrongSums(database));
    }

    /** One that notes there which sums of days are wrong by what is written. */
    Content(Database database, WrongSums wrong) {
        this.database = database;
        this.wrong = wrong;
    }

    /** The journal of the entries that a scope lets through. */
    Journal read(Scope scope) {
        List<Entity<?>> entities = new ArrayList<>();
        for (Mapping<?> mapping : Mappings.ALL) {
            entities.addAll(read(mapping, scope.of(mapping.table())));
        }
        return Journal.of(entities);
    }

    Optional<Entity<?>> find(Key key) {
        return read(key.mapping(), " WHERE id = ?", key.id()).stream()
                .<Entity<?>>map(found -> found)
                .findFirst();
    }

    <T extends Entity<T>> List<T> read(Mapping<T> mapping, String condition, @Nullable Object... values) {
        Map<String, List<?>> parts = parts(mapping, condition, values);
        List<T> entities = new ArrayList<>();
        database.each(
                mapping.table().select() + condition, result -> entities.add(read(mapping, result, parts)), values);
        return entities;
    }

    private <T extends Entity<T>> T read(Mapping<T> mapping, ResultSet result, Map<String, List<?>> parts)
            throws SQLException {
        try {
            return mapping.read(new Row(result, parts));
        } catch (IllegalArgumentException | DateTimeException e) {
            throw Failures.damaged(
                    database.file(),
                    "the " + mapping.table().name() + " " + result.getString(1) + " makes no sense",
                    e);
        }
    }

    /** The parts of the entries that meet the condition, by the id of the entry. */
    private Map<String, List<?>> parts(Mapping<?> mapping, String condition, @Nullable Object... values) {
        Map<String, List<Object>> parts = new HashMap<>();
        mapping.parts()
                .ifPresent(some -> database.each(
                        some.table().selectOf(mapping.table(), condition),
                        result -> {
                            Row row = new Row(result);
                            String id = row.text();
                            row.number();
                            parts.computeIfAbsent(id, of -> new ArrayList<>())
                                    .add(some.reading().of(row));
                        },
                        values));
        return Map.copyOf(parts);
    }

    /** Puts an entry, new or in the place of the one with its id. */
    void put(Entity<?> entity) {
        Key key = Key.of(entity);
        wrong.entry(key);
        database.update(key.table().put(), key.mapping().row(entity));
        key.partTable().ifPresent(parts -> {
            database.update(parts.delete(), key.id());
            key.mapping().partRows(entity).forEach(row -> database.update(parts.insert(), row));
        });
        database.update(UNBURY, key.table().name(), key.id());
        wrong.entry(key);
    }

    /** Removes an entry; its parts go with it, and a trace stays. */
    void remove(Key key, Instant now) {
        wrong.entry(key);
        database.update(key.table().delete(), key.id());
        database.update(BURY, key.table().name(), key.id(), now.toEpochMilli());
    }

    Image image(Key key) {
        return new Image(
                database.first(key.table().rowAsJson(), Row::text, key.id()),
                key.partTable().flatMap(parts -> database.first(parts.rowsAsJson(), Row::text, key.id())));
    }

    /** Makes an entry what it is in the image. */
    void restore(Key key, Image image, Instant now) {
        if (image.row().isEmpty()) {
            remove(key, now);
            return;
        }
        wrong.entry(key);
        database.update(key.table().putJson(), image.row().get());
        wrong.entry(key);
        key.partTable().ifPresent(parts -> {
            database.update(parts.delete(), key.id());
            database.update(parts.insertJson(), image.parts().orElse("[]"));
        });
        database.update(UNBURY, key.table().name(), key.id());
    }
}
