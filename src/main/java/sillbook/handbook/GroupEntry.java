// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;
import sillbook.model.Kind;

/**
 * A class of tulips, a division of daffodils, or another group of a kind.
 *
 * @param kind the kind with this group
 * @param name the group's name in words
 * @param sources keys of the list of sources
 * @param note what more there is to say of it; may be empty
 */
public record GroupEntry(Kind kind, String name, Suits suits, List<String> sources, String note) {
    public GroupEntry {
        sources = List.copyOf(sources);
    }
}
