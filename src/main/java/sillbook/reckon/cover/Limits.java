// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** What a number may be; a sentence where it is not that. */
final class Limits {
    private static final int FARTHEST_DAY = 1_000_000;

    private Limits() {}

    static void day(String name, int day) {
        within(name, day, -FARTHEST_DAY, FARTHEST_DAY);
    }

    /** Where the least is 1 and the most is 0, none of what is numbered is there. */
    static void within(String name, int number, int least, int most) {
        if (number < least || number > most) {
            String instead = most < least ? "no " + name + " is given" : "it must be " + least + " to " + most;
            throw new Unreckonable("the " + name + " is " + number + "; " + instead);
        }
    }
}
