// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Pot;

/**
 * A line of Today that asks to be answered: late, ready, due today, a round, or the daily care. What is only told
 * beforehand, or blooms, asks for nothing yet.
 */
record Asked(Job job) {

    /** The lines of a day in the order they are read. */
    static List<Asked> of(Today today) {
        List<Asked> lines = new ArrayList<>();
        Stream.of(today.late(), today.ready(), today.due())
                .flatMap(List::stream)
                .forEach(job -> lines.add(new Asked(job)));
        today.checks().forEach(round -> lines.add(new Asked(round)));
        today.ground().stream().filter(job -> job.due() == Due.TODAY).forEach(job -> lines.add(new Asked(job)));
        today.dailyCare().ifPresent(care -> lines.add(new Asked(care)));
        return lines;
    }

    boolean mayWait() {
        return job.due() == Due.READY;
    }

    void answer(Grower grower) {
        job.fold(new Job.Cases<Void>() {
            @Override
            public Void ofPots(Job.OfPots one) {
                grower.answer(one);
                return null;
            }

            @Override
            public Void round(Job.Round round) {
                grower.answer(round);
                return null;
            }

            @Override
            public Void ofGround(Job.OfGround job) {
                grower.answer(job);
                return null;
            }

            @Override
            public Void dailyCare(Job.DailyCare care) {
                grower.answer(care);
                return null;
            }
        });
    }

    /** Whether the line still asks the same of the same pots. */
    boolean isSame(Asked other) {
        return job.kind() == other.job.kind()
                && job.due() == other.job.due()
                && List.<Id<Pot>>copyOf(job.pots()).equals(other.job.pots())
                && verdict(job).equals(verdict(other.job));
    }

    private static String verdict(Job job) {
        return job instanceof Job.OfPots one
                ? one.readiness()
                                .map(ready -> ready.verdict() + " " + ready.roots())
                                .orElse("")
                        + one.on()
                : "";
    }
}
