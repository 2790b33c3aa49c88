// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening.LeftOut;
import sillbook.model.Happening.PutOff;
import sillbook.model.JobKind;

/**
 * What the grower answered to jobs, the last answer to each.
 *
 * @param putOff jobs put off, and when that was said
 * @param leftOut jobs that are not going to be done, and since when
 */
public record Answers(Map<JobKind, Noted<Job.Delay>> putOff, Map<JobKind, Day> leftOut) {

    static final Answers NONE = new Answers(Map.of(), Map.of());

    public Answers {
        putOff = Map.copyOf(putOff);
        leftOut = Map.copyOf(leftOut);
    }

    /** What is answered in a history up to a day, the last answer to each job. */
    static Answers of(List<Event> history, LocalDate today) {
        Answers answers = NONE;
        for (Event event : history) {
            if (event.day().likely().isAfter(today)) {
                continue;
            }
            if (event.what() instanceof PutOff putOff) {
                answers = answers.with(event.day(), putOff);
            } else if (event.what() instanceof LeftOut leftOut) {
                answers = answers.with(event.day(), leftOut);
            }
        }
        return answers;
    }

    /** The same after one more answer, which stands in the place of an earlier one to the same job. */
    Answers with(Day day, PutOff answer) {
        Map<JobKind, Noted<Job.Delay>> delays = new HashMap<>(putOff);
        delays.put(answer.job(), new Noted<>(new Job.Delay(answer.until(), answer.reason()), day));
        Map<JobKind, Day> others = new HashMap<>(leftOut);
        others.remove(answer.job());
        return new Answers(delays, others);
    }

    Answers with(Day day, LeftOut answer) {
        Map<JobKind, Noted<Job.Delay>> delays = new HashMap<>(putOff);
        delays.remove(answer.job());
        Map<JobKind, Day> others = new HashMap<>(leftOut);
        others.put(answer.job(), day);
        return new Answers(delays, others);
    }

    public boolean isLeftOut(JobKind kind) {
        return leftOut.containsKey(kind);
    }

    public Optional<Job.Delay> delay(JobKind kind) {
        return Optional.ofNullable(putOff.get(kind)).map(Noted::value);
    }
}
