// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/**
 * What the beginning of a plan came to.
 *
 * @param length days in bloom of all its pots
 */
record Count(int unmet, int gaps, int used, int length) {
    static final Count NOTHING = new Count(0, 0, 0, 0);

    Count withLack(int pots) {
        return new Count(unmet + pots, gaps, used, length);
    }

    Count withGap() {
        return new Count(unmet, gaps + 1, used, length);
    }

    Count with(Way way) {
        return new Count(unmet, gaps, used + 1, length + way.length());
    }

    int cost(Stage.Goal goal) {
        return switch (goal) {
            case UNMET -> unmet;
            case GAP -> gaps;
            case USED -> used;
            case OVERLAP -> length;
        };
    }

    boolean isWithin(Stage stage) {
        return unmet <= stage.mostLacking() && gaps <= stage.mostGaps() && used <= stage.mostUsed();
    }
}
