// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Length;
import sillbook.model.Stage;
import sillbook.season.BatchShare;
import sillbook.season.Deadline;
import sillbook.season.Destination;
import sillbook.season.Job;
import sillbook.season.Noted;
import sillbook.season.Readiness;
import sillbook.words.Terms;

/** The jobs of a journal as JSON. */
record JobJson(Named named, LocalDate today) {

    Fields ofPots(Job.OfPots job) {
        return named.pots(job.pots())
                .text("job", Terms.JOBS.say(job.kind()))
                .object("batch", job.batch(), this::batch)
                .text("from", named.place(job.route().from()))
                .text("to", named.place(job.route().to().map(Destination::place)))
                .text("stage", Terms.STAGES.say(job.route().stage()))
                .window(job.window())
                .day("on", job.on())
                .code("due", job.due())
                .object("deadline", job.deadline(), this::deadline)
                .number("daysLate", job.daysLate(today))
                .object("readiness", job.readiness(), JobJson::readiness)
                .flag("heldBack", job.heldBack().isPresent())
                .object("putOff", job.putOff(), JobJson::delay);
    }

    Fields round(Job.Round round) {
        return new Fields()
                .text("place", named.place(round.place()))
                .texts("pots", named.labels(round.pots()))
                .texts("bulbs", round.bulbs().stream().map(named::bulbs).toList())
                .number("everyDays", round.everyDays())
                .day("last", round.last())
                .day("on", round.on())
                .code("due", round.due())
                .object("putOff", round.putOff(), JobJson::delay)
                .flag("asksForSoftness", round.asksForSoftness());
    }

    Fields dailyCare(Job.DailyCare care) {
        return new Fields()
                .texts("pots", named.labels(care.pots()))
                .number("ofPots", care.ofPots())
                .texts("places", care.places().stream().map(named::place).toList());
    }

    Fields ofGround(Job.OfGround job) {
        return new Fields()
                .text("place", named.place(job.place()))
                .text("job", Terms.JOBS.say(job.kind()))
                .texts("pots", named.labels(job.pots()))
                .window(job.window())
                .day("on", job.on())
                .code("due", job.due())
                .flag("byReading", job.isByReading())
                .object("putOff", job.putOff(), JobJson::delay);
    }

    private Fields batch(BatchShare share) {
        Map<Stage, Integer> counts = new EnumMap<>(share.counts());
        return new Fields()
                .texts("pots", named.labels(share.pots()))
                .list(
                        "stages",
                        counts.entrySet(),
                        stage -> new Fields()
                                .text("stage", Terms.STAGES.say(stage.getKey()))
                                .number("pots", stage.getValue()));
    }

    private Fields deadline(Deadline deadline) {
        return deadline.fold(new Deadline.Cases<Fields>() {
            @Override
            public Fields useBy(Deadline.UseBy by) {
                return new Fields().text("for", "use-by").day("day", by.day()).day("wish", Optional.empty());
            }

            @Override
            public Fields forWish(Deadline.ForWish by) {
                return new Fields()
                        .text("for", "wish")
                        .day("day", by.day())
                        .day("wish", Optional.of(by.wish().from()));
            }
        });
    }

    static Fields readiness(Readiness readiness) {
        return new Fields()
                .code("verdict", readiness.verdict())
                .day("coldEnoughOn", readiness.coldEnoughOn())
                .text("roots", readiness.roots().map(Noted::value).map(Terms.ROOTS::say))
                .decimal("shootCm", readiness.shoot().map(Noted::value).map(Length::centimetres))
                .day("since", readiness.since());
    }

    private static Fields delay(Job.Delay delay) {
        return new Fields().day("until", delay.until()).written("reason", delay.reason());
    }
}
