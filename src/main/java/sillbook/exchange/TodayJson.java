// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Journal;
import sillbook.season.Today;
import sillbook.season.Today.Attention;
import sillbook.words.PlaceTerms;
import sillbook.words.Provisos;

/** What a day asks for, as JSON. */
public final class TodayJson {
    private final Named named;
    private final JobJson jobs;

    private TodayJson(Journal journal, Today today) {
        this.named = new Named(journal);
        this.jobs = new JobJson(named, today.day());
    }

    /** The document of {@code sillbook today --json}. */
    public static String write(Journal journal, Today today, Provisos provisos) {
        return Answer.write(new TodayJson(journal, today).fields(today), provisos);
    }

    private Fields fields(Today today) {
        return new Fields()
                .day("day", today.day())
                .text("season", named.season(today.season()))
                .list("late", today.late(), jobs::ofPots)
                .list("ready", today.ready(), jobs::ofPots)
                .list("today", today.due(), jobs::ofPots)
                .list("checks", today.checks(), jobs::round)
                .object("dailyCare", today.dailyCare(), jobs::dailyCare)
                .list("ground", today.ground(), jobs::ofGround)
                .list("soon", today.soon(), jobs::ofPots)
                .list("inBloom", today.inBloom(), this::blooming)
                .list("opening", today.opening(), this::opening)
                .list("places", today.places(), this::attention)
                .list("afterThat", today.afterThat(), this::week)
                .list("done", today.done(), this::done);
    }

    private Fields blooming(Today.Blooming blooming) {
        return named.pots(blooming.pots())
                .number("dayOfBloom", blooming.dayOfBloom())
                .whole("outOf", blooming.outOf())
                .object("next", blooming.job(), jobs::ofPots);
    }

    private Fields opening(Today.Opening opening) {
        return named.pots(opening.pots()).window(opening.firstFlower());
    }

    private Fields week(Today.Week week) {
        return new Fields()
                .day("from", week.days().start())
                .day("to", week.days().endExclusive().minusDays(1))
                .list(
                        "coming",
                        week.coming(),
                        coming -> new Fields().code("what", coming.sort()).texts("pots", named.labels(coming.pots())));
    }

    private Fields done(Today.Done done) {
        return new Fields()
                .text("writtenAt", done.writtenAt().toString())
                .list("of", done.subjects(), named::subject)
                .object("what", HappeningJson.of(named, done.what()));
    }

    private Fields attention(Attention attention) {
        return attention.fold(new Attention.Cases<Fields>() {
            @Override
            public Fields overRoom(Attention.OverRoom over) {
                return place(over).number("pots", over.pots()).number("room", over.room());
            }

            @Override
            public Fields hazard(Attention.BesideHazard beside) {
                return place(beside)
                        .number("pots", beside.pots())
                        .number("bulbs", beside.bulbs())
                        .text("hazard", PlaceTerms.HAZARDS.say(beside.hazard()));
            }

            @Override
            public Fields unchecked(Attention.Unchecked unchecked) {
                return place(unchecked).day("last", unchecked.last()).number("everyDays", unchecked.everyDays());
            }

            @Override
            public Fields notCold(Attention.NotCold notCold) {
                return place(notCold).number("pots", notCold.pots());
            }

            @Override
            public Fields dryLong(Attention.DryLong dry) {
                return place(dry)
                        .text("bulbs", named.bulbs(dry.bulbs().purchase().id()))
                        .number("count", dry.bulbs().bulbs())
                        .number("dryDays", dry.bulbs().dry().days())
                        .day("potBy", dry.potBy());
            }

            @Override
            public Fields outOfBand(Attention.OutOfBand out) {
                return outside(out, out.band(), out.strayed().since())
                        .decimal("hours", Optional.of(out.strayed().hours()))
                        .decimal("perDayC", Optional.empty());
            }

            @Override
            public Fields leavingBand(Attention.LeavingBand leaving) {
                return outside(leaving, leaving.band(), leaving.drift().on())
                        .decimal("hours", Optional.empty())
                        .decimal("perDayC", Optional.of(leaving.drift().perDay()));
            }

            private Fields outside(Attention outside, Band band, LocalDate from) {
                return place(outside)
                        .object("bandC", Optional.of(band), PlacesJson::band)
                        .day("from", from);
            }

            @Override
            public Fields unread(Attention.Unread unread) {
                return place(unread).day("last", unread.last()).number("days", unread.days());
            }

            @Override
            public Fields frost(Attention.FrostThere frost) {
                return place(frost)
                        .number("pots", frost.pots())
                        .number("lowestC", frost.lowest().celsius())
                        .day("on", frost.on())
                        .day("lookOn", frost.lookOn());
            }

            @Override
            public Fields trial(Attention.OnTrial trial) {
                return place(trial)
                        .day("since", trial.trial().since())
                        .number("days", trial.trial().days())
                        .number("inBand", trial.trial().inBand())
                        .object("bandC", Optional.of(trial.band()), PlacesJson::band);
            }
        });
    }

    private Fields place(Attention attention) {
        return new Fields().text("place", named.place(attention.place())).text("code", attention.code());
    }
}
