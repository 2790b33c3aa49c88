// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import sillbook.reckon.heat.SineDay;

/** What cold is counted by: what an hour is worth, 0 to 1. */
public sealed interface HourWorth permits ColdWeight, PublishedCount, StrictCount {
    /** Of an hour in which the temperature goes evenly from one to another, in C: the exact mean. */
    double between(double start, double end);

    /** The least an hour is worth that lies somewhere between two temperatures, the lower first. */
    double least(double lowest, double highest);

    /** The most it is worth. */
    double most(double lowest, double highest);

    /** Effective hours of a day. */
    double of(SineDay day);
}
