// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Entities of one type by id, in the order they were first put in. It never changes.
 *
 * @param <T> the type of entity
 */
public final class Catalogue<T extends Entity<T>> {
    static final Catalogue<?> NONE = new Catalogue<>(Map.<Id<Variety>, Variety>of());

    private final Map<Id<T>, T> entries;

    private Catalogue(Map<Id<T>, T> entries) {
        this.entries = entries;
    }

    public static <T extends Entity<T>> Catalogue<T> of(Collection<T> entities) {
        Map<Id<T>, T> entries = new LinkedHashMap<>();
        entities.forEach(entity -> entries.put(entity.id(), entity));
        return new Catalogue<>(entries);
    }

    /** These entities with the edits carried out on them, in order. */
    Catalogue<T> with(List<Edit> edits) {
        Map<Id<T>, T> edited = new LinkedHashMap<>(entries);
        edits.forEach(edit -> carryOut(edit, edited));
        return new Catalogue<>(edited);
    }

    /** The caller sorted the edits by type, so each names a {@code T}. */
    @SuppressWarnings("unchecked")
    private void carryOut(Edit edit, Map<Id<T>, T> entries) {
        T entity = (T) edit.entity();
        if (edit instanceof Edit.Put) {
            entries.put(entity.id(), entity);
        } else {
            entries.remove(entity.id());
        }
    }

    public Optional<T> find(Id<T> id) {
        return Optional.ofNullable(entries.get(id));
    }

    /**
     * The entity of an id that an entry of the same journal refers to.
     *
     * @throws IllegalStateException when it is not there: the journal is broken
     */
    public T get(Id<T> id) {
        return find(id).orElseThrow(
                        () -> new IllegalStateException("the journal refers to " + id + ", which is not in it"));
    }

    public boolean contains(Id<T> id) {
        return entries.containsKey(id);
    }

    /** The same for an id of which the type is not known. */
    boolean knows(Id<?> id) {
        return entries.keySet().contains(id);
    }

    public Collection<T> all() {
        return Collections.unmodifiableCollection(entries.values());
    }

    public int size() {
        return entries.size();
    }

    public boolean isEmpty() {
        return entries.isEmpty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Catalogue<?> that && entries.equals(that.entries);
    }

    @Override
    public int hashCode() {
        return entries.hashCode();
    }

    @Override
    public String toString() {
        return entries.values().toString();
    }
}
