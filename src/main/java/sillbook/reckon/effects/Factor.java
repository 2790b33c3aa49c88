// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;

/**
 * Something that varied between the records.
 *
 * @param levels in the order they first occur
 * @param first the column of its first level; the others follow
 */
record Factor(String name, List<String> levels, int first) {
    Factor {
        levels = List.copyOf(levels);
    }

    int column(int level) {
        return first + level;
    }
}
