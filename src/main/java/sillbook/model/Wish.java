// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What should flower when.
 *
 * @param from first day it is wished for
 * @param to last day it is wished for; the same as the first for a single day
 * @param feast the feast it was written as; empty for a plain day
 * @param asks for what
 * @param pots the pots meant to meet it
 * @param note in the grower's words; may be empty
 */
public record Wish(
        Id<Wish> id,
        Season season,
        LocalDate from,
        LocalDate to,
        String feast,
        WishedFor asks,
        Set<Id<Pot>> pots,
        String note)
        implements Entity<Wish> {

    public Wish {
        pots = Sorted.copyOf(pots);
        if (from.isAfter(to)) {
            throw new IllegalArgumentException("a wish that ends before it begins: " + from + " to " + to);
        }
    }

    /** The kind wished for, when one is named. */
    public Optional<Kind> kind() {
        return asks.kind();
    }

    /** The same wish, these pots no longer meant for it. */
    public Wish without(Collection<Id<Pot>> gone) {
        Set<Id<Pot>> left = new HashSet<>(pots);
        left.removeAll(gone);
        return meantFor(left);
    }

    /** The same wish, with these pots meant to meet it. */
    public Wish meantFor(Set<Id<Pot>> meant) {
        return new Wish(id, season, from, to, feast, asks, meant, note);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(pots.stream(), asks.room().stream());
    }
}
