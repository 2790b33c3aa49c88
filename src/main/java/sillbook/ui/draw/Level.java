// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.List;

/** The ways a line is drawn at four heights a row, each by its signs from the lowest to the highest. */
enum Level {
    /** What was read. */
    READ(Sign.LOW, Sign.MIDDLE, Sign.HIGH, Sign.TOP),
    /** What it kept between. */
    EXTREME(Sign.LOW_EXTREME, Sign.MIDDLE_EXTREME, Sign.HIGH_EXTREME, Sign.TOP_EXTREME),
    FORETOLD(Sign.LOW_FORETOLD, Sign.MIDDLE_FORETOLD, Sign.HIGH_FORETOLD, Sign.TOP_FORETOLD),
    /** The edge of a band. */
    EDGE(Sign.LOW_EDGE, Sign.MIDDLE_EDGE, Sign.HIGH_EDGE, Sign.TOP_EDGE);

    @SuppressWarnings("ImmutableEnumChecker") // an immutable list is no type of its own in java.base
    private final List<Sign> signs;

    Level(Sign low, Sign middle, Sign high, Sign top) {
        signs = List.of(low, middle, high, top);
    }

    Sign at(int level) {
        return signs.get(level);
    }
}
