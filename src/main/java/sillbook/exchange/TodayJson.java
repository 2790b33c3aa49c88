// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.List;
import sillbook.model.Journal;
import sillbook.plan.OrderDue;
import sillbook.season.Today;
import sillbook.words.Provisos;

/** What a day asks for, as JSON. */
public final class TodayJson {
    private final Named named;
    private final JobJson jobs;
    private final AttentionJson attentions;

    private TodayJson(Journal journal, Today today) {
        this.named = new Named(journal);
        this.jobs = new JobJson(named, today.day());
        this.attentions = new AttentionJson(named);
    }

    /** The document of {@code sillbook today --json}. */
    public static String write(Journal journal, Today today, List<OrderDue> orders, Provisos provisos) {
        return Answer.write(new TodayJson(journal, today).fields(today, orders), provisos);
    }

    private Fields fields(Today today, List<OrderDue> orders) {
        return new Fields()
                .day("day", today.day())
                .text("season", named.season(today.season()))
                .list("late", today.late(), jobs::ofPots)
                .list("ready", today.ready(), jobs::ofPots)
                .list("today", today.due(), jobs::ofPots)
                .list("checks", today.checks(), jobs::round)
                .object("dailyCare", today.dailyCare(), jobs::dailyCare)
                .list("ground", today.ground(), jobs::ofGround)
                .list("orders", orders, order -> order(order, today.day()))
                .list("soon", today.soon(), jobs::ofPots)
                .list("inBloom", today.inBloom(), this::blooming)
                .list("opening", today.opening(), this::opening)
                .list("places", today.places(), attentions::of)
                .list("afterThat", today.afterThat(), this::week)
                .list("done", today.done(), this::done);
    }

    private Fields blooming(Today.Blooming blooming) {
        return named.pots(blooming.pots())
                .number("dayOfBloom", blooming.dayOfBloom())
                .whole("outOf", blooming.outOf())
                .object("next", blooming.job(), jobs::ofPots);
    }

    private Fields order(OrderDue order, LocalDate day) {
        return new Fields()
                .text("plan", order.plan().name())
                .text("season", named.season(order.plan().season()))
                .text("variety", named.variety(order.variety()))
                .number("bulbs", order.bulbs())
                .written("supplier", order.supplier())
                .day("orderBy", order.orderBy())
                .day("potBy", order.potBy())
                .flag("late", order.isLate(day));
    }

    private Fields opening(Today.Opening opening) {
        return named.pots(opening.pots()).window(opening.firstFlower());
    }

    private Fields week(Today.Week week) {
        return new Fields()
                .day("from", week.days().start())
                .day("to", week.days().last())
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
}
