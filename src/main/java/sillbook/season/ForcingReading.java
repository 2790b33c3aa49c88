// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Season;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Need;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Window;

/** Reads what a pot would take that is not there yet: as of one that waits for its bulbs. */
record ForcingReading(Journal journal, PotNowReading reading, LocalDate today) {
    private static final Id<Pot> NOT_THERE = new Id<>(0, 0);

    Forcing of(Planting planting, Season season) {
        Foretold pot = reading.foretell(
                History.read(journal, Pot.waiting(NOT_THERE, season, "", List.of(planting), Optional.empty()), today));
        Need need = pot.prospect().shares().get(0).need();
        Optional<DayCount> cold = pot.coldNeed().map(ColdNeed::potted);
        int credited = pot.coldNeed().map(ColdNeed::credited).orElse(0);
        PottingTime time = cold.isPresent() ? PottingTime.WITH_COLD : PottingTime.WITHOUT_COLD;
        return new Forcing(
                cold,
                need.coldLimit().map(limit -> limit - credited),
                coolRoom(need),
                need.afterCold(),
                need.inBloom().orElse(DayCount.ZERO),
                time.in(season, journal.settings().seasonStart()));
    }

    /** As much of the days to flower as the cool room takes, as the stages of such a pot tell. */
    private static DayCount coolRoom(Need need) {
        LocalDate any = LocalDate.EPOCH;
        return Schedule.reckon(need, Facts.NONE.with(Milestone.COOL_ROOM, any))
                .map(Schedule::stages)
                .filter(stages -> stages.coolRoom().isPresent())
                .map(stages -> days(any, stages.warmRoom()))
                .orElse(DayCount.ZERO);
    }

    private static DayCount days(LocalDate from, Window to) {
        return DayCount.of(
                Dates.between(from, to.earliest()), Dates.between(from, to.likely()), Dates.between(from, to.latest()));
    }
}
