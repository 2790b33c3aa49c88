// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Today.Coming.Sort;

/** What comes after the next 14 days, week by week: likely days only, and each pot named once for each thing. */
record WeeksAhead(Collection<PotNow> pots, LocalDate today) {
    private static final int WEEKS = 3;

    /** The first week begins after the 14 days and may be short; all end with a Sunday. */
    List<Today.Week> list() {
        List<Today.Week> weeks = new ArrayList<>();
        LocalDate start = today.plusDays(Today.SOON_DAYS + 1);
        for (int week = 0; week < WEEKS; week++) {
            LocalDate monday = start.with(TemporalAdjusters.next(DayOfWeek.MONDAY));
            weeks.add(week(DaySpan.of(start, monday)));
            start = monday;
        }
        return weeks;
    }

    private Today.Week week(DaySpan days) {
        Map<Sort, List<Id<Pot>>> coming = new EnumMap<>(Sort.class);
        for (PotNow pot : pots) {
            for (Sort sort : Sort.values()) {
                if (day(pot, sort).filter(days::contains).isPresent()) {
                    coming.computeIfAbsent(sort, some -> new ArrayList<>())
                            .add(pot.life().pot().id());
                }
            }
        }
        List<Today.Coming> list = new ArrayList<>();
        coming.forEach((sort, some) -> list.add(new Today.Coming(sort, some)));
        return new Today.Week(days, list);
    }

    private static Optional<LocalDate> day(PotNow pot, Sort sort) {
        return switch (sort) {
            case POT_UP ->
                pot.next().filter(job -> job.kind() == JobKind.POT_UP).map(Job.OfPots::on);
            case READY ->
                pot.readiness()
                        .filter(ready -> ready.verdict() == Verdict.WEEKS_SHORT)
                        .map(Readiness::coldEnoughOn);
            case USE_BY -> pot.useBy();
            case TO_WARM_ROOM -> likely(pot, Stage.WARM_ROOM);
            case FIRST_FLOWER -> likely(pot, Stage.IN_BLOOM);
            case PAST_BLOOM -> likely(pot, Stage.AFTER_BLOOM);
        };
    }

    private static Optional<LocalDate> likely(PotNow pot, Stage stage) {
        return pot.ahead().stream()
                .filter(ahead -> ahead.stage() == stage)
                .map(ahead -> ahead.window().likely())
                .findFirst();
    }
}
