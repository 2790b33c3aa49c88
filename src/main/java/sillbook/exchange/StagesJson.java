// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.reckon.stages.StudentT;
import sillbook.words.Provisos;

/** How long the next stage lasts, as JSON. */
public final class StagesJson {
    private static final double OF_TEN_CASES_EIGHT = 0.8;

    private StagesJson() {}

    /** The document of {@code sillbook reckon stages --json}. */
    public static String write(StudentT next, Provisos provisos) {
        StudentT.Interval interval = next.interval(OF_TEN_CASES_EIGHT);
        Fields fields = new Fields()
                .number("centre", next.centre())
                .number("scale", next.scale())
                .number("df", next.degreesOfFreedom())
                .decimals("interval80", interval.low(), interval.high());
        return Answer.write(fields, provisos);
    }
}
