// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;

/**
 * Influences that nothing ties to the others of their trait: what sets them off could as well belong to what went with
 * them.
 *
 * @param these one or more that can be told from each other, but from no other
 * @param pots how many scored ones they have
 * @param with what of another trait these pots had, and no other
 */
public record Tie(Trait trait, List<Influence> these, int pots, List<Influence> with) {
    public Tie {
        these = List.copyOf(these);
        with = List.copyOf(with);
    }
}
