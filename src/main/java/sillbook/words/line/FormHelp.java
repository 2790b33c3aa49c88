// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;

/**
 * A form of the quick line, for help and docs.
 *
 * @param name what it does, in two or three words: {@code pots up}
 * @param says how it is written and what it accepts
 * @param examples whole lines
 */
public record FormHelp(String name, String says, List<String> examples) {
    public FormHelp {
        examples = List.copyOf(examples);
    }

    static FormHelp of(String name, String says, String... examples) {
        return new FormHelp(name, says, List.of(examples));
    }
}
