// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;
import sillbook.model.Kind;

/**
 * A kind the handbook knows.
 *
 * @param letter what the labels of its pots begin with
 * @param needsCold whether it flowers indoors only after a cold time
 * @param otherNames other names it is typed by, in small letters
 * @param sources keys of the list of sources
 * @param suits how nearly all of it suit pots, whatever their class
 */
public record KindEntry(
        Kind kind,
        String plural,
        String letter,
        boolean needsCold,
        List<String> otherNames,
        List<String> sources,
        Suits suits) {
    public KindEntry {
        otherNames = List.copyOf(otherNames);
        sources = List.copyOf(sources);
    }
}
