// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import java.util.Optional;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.Variety;

/**
 * What a sort of list is made of.
 *
 * @param <E> what each of its rows is
 */
interface ListForm<E extends Entity<E>> {
    List<Column<E, ?>> columns();

    /** What a row means of which every cell can be read; empty, and the cell blamed, where they do not go together. */
    Optional<Meant<E>> read(Cells cells);

    /** What an entry is called where it is spoken of. */
    String name(E entity, Journal journal);

    /**
     * What a row means.
     *
     * @param before the entry of the journal it is about; empty when it is a new one
     * @param made the variety it names, where that has to be written down before it
     */
    record Meant<E extends Entity<E>>(Optional<E> before, E after, Optional<Variety> made) {}
}
