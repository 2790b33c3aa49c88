// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;
import sillbook.model.Kind;

/**
 * What is published in words.
 *
 * @param kind what it holds for: a class, a kind, {@link Handbook#HARDY} or {@link Handbook#EVERY}
 * @param says one or more whole sentences
 * @param sources keys of the list of sources, at least one
 */
public record Remark(Kind kind, Topic topic, String says, List<String> sources, Sureness sureness) {
    public Remark {
        sources = List.copyOf(sources);
        if (sources.isEmpty()) {
            throw new IllegalArgumentException("a remark without a source: " + says);
        }
    }
}
