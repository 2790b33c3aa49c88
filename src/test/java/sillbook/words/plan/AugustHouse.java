// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.handbook.Handbook;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.SeasonPlan.Search;
import sillbook.model.Settings;
import sillbook.plan.HandRule;
import sillbook.plan.PlanNow;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.season.Outlook;
import sillbook.words.line.Bench;
import sillbook.words.line.LineReading;
import sillbook.words.line.QuickLine;

/** A house in August 2026, written line by line, and plans of its winter. All names are invented. */
final class AugustHouse {
    static final LocalDate TODAY = LocalDate.of(2026, 8, 20);
    static final Season SEASON = new Season(2026);
    private static final LocalDate FIRST = LocalDate.of(2026, 12, 20);
    private static final LocalDate LAST = LocalDate.of(2027, 3, 1);

    private final AtomicLong count = new AtomicLong(1000);
    private final Ids ids = count::incrementAndGet;
    private LocalDate today = TODAY;
    private Journal journal = Journal.empty(Settings.initial(ZoneId.of("Europe/Vienna")));

    /** Six sorts of bulbs, two cold places and a sill. */
    static AugustHouse usual() {
        return new AugustHouse()
                .write(
                        "place garage fridge, fridge, room for 9",
                        "place cellar, room for 20",
                        "place kitchen sill, warm sill, room for 4",
                        "container pan 15 cm, pan, 4 of them",
                        "bought 20 Marrow Lane (tulip), grade 12+, from seed shop, 9.50",
                        "ordered 9 Inkwell (hyacinth)",
                        "ordered 15 Lantern Row (daffodil), from corner shop",
                        "to order 14 Linen Parade (paperwhite), 7.00");
    }

    AugustHouse write(String... lines) {
        Stream.of(lines).forEach(line -> {
            LineReading reading = QuickLine.read(line, bench());
            apply(reading.change().orElseThrow(() -> new AssertionError(line + ": " + reading.complaint())));
        });
        return this;
    }

    /** It is that day now. */
    AugustHouse on(LocalDate day) {
        today = day;
        return this;
    }

    AugustHouse put(Entity<?> entity) {
        journal = journal.with(List.of(new Edit.Put(entity)));
        return this;
    }

    <T> Id<T> id() {
        return ids.next();
    }

    void apply(Change change) {
        Step step = (Step)
                change.on(journal, new Hand(today.atStartOfDay(ZoneOffset.UTC).toInstant(), today, ids));
        journal = journal.with(step.edits());
    }

    Journal journal() {
        return journal;
    }

    Bench bench() {
        return new Bench(journal, Outlook.of(journal, Handbook.standard(), today), Handbook.standard(), ids);
    }

    Planning planning() {
        return Planning.of(journal, bench().outlook(), SEASON);
    }

    static Rule rule() {
        return new Rule(2, 12, FIRST, LAST, 4, Set.of());
    }

    /** By the hand rule. */
    SeasonPlan plan() {
        return plan(HandRule.pots(planning(), rule()), Optional.empty());
    }

    SeasonPlan plan(List<Proposal> pots, Optional<Search> search) {
        return new SeasonPlan(id(), SEASON, "A", rule(), pots, search, Optional.empty(), "");
    }

    PlanNow now(SeasonPlan plan) {
        return PlanReading.of(planning(), plan);
    }

    PlanNow now() {
        return now(plan());
    }
}
