// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;

/** What to beware of, as plain lines. */
final class CareLines {
    private CareLines() {}

    /** {@code care: Upsets the stomach of cats and dogs.} of each. */
    static List<String> of(List<String> cautions) {
        return cautions.stream().map(caution -> "care: " + caution).toList();
    }
}
