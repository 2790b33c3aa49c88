// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.FlowerStage;
import sillbook.model.WishedFor.Manner;
import sillbook.reckon.dates.DaySpan;

class WishedDaysTest {
    private static final LocalDate FEBRUARY = LocalDate.of(2028, 2, 1);
    private static final Rule RULE = new Rule(2, 12, FEBRUARY, FEBRUARY, 4, Set.of(DayOfWeek.SUNDAY));

    private static Wish wish(LocalDate from, LocalDate to, Manner manner, Optional<FlowerStage> stage) {
        WishedFor asks =
                new WishedFor(manner, 1, stage, Optional.empty(), "", false, Optional.empty(), Optional.empty());
        return new Wish(new Id<>(1, from.getDayOfYear()), August.SEASON, from, to, "", asks, Set.of(), "");
    }

    private static Wish dated(LocalDate day, FlowerStage stage) {
        return wish(day, day, Manner.SOME_DAY, Optional.of(stage));
    }

    @Test
    void aStageShiftsTheDayOnWhichAFlowerIsOpen() {
        assertThat(WishedDays.inFlowerOn(dated(FEBRUARY, FlowerStage.BUD_COLOUR)))
                .isEqualTo(FEBRUARY.plusDays(3));
        assertThat(WishedDays.inFlowerOn(dated(FEBRUARY, FlowerStage.FIRST_OPEN)))
                .isEqualTo(FEBRUARY);
        assertThat(WishedDays.inFlowerOn(dated(FEBRUARY, FlowerStage.FULL))).isEqualTo(FEBRUARY.minusDays(3));
        assertThat(WishedDays.shift(wish(FEBRUARY, FEBRUARY, Manner.EVERY_DAY, Optional.of(FlowerStage.FULL))))
                .as("of every day there is no stage")
                .isZero();
    }

    @Test
    void whatIsPastAsksForNothing() {
        Wish past = dated(FEBRUARY, FlowerStage.FIRST_OPEN);
        Wish stretch = wish(FEBRUARY, FEBRUARY.plusDays(9), Manner.EVERY_DAY, Optional.empty());
        LocalDate today = FEBRUARY.plusDays(20);
        WishedDays days = new WishedDays(List.of(past, stretch), RULE, today);

        assertThat(days.everyDay()).isEmpty();
        assertThat(days.asked(past)).isEmpty();
        assertThat(days.hull()).isEqualTo(DaySpan.ofInclusive(today, today));
        assertThat(days.unwished()).containsExactly(DaySpan.ofInclusive(today, today));
    }

    @Test
    void theDaysAboutADatedWishStayAmongThoseThatAreJudged() {
        Wish wish = dated(FEBRUARY, FlowerStage.FIRST_OPEN);
        Wish later = dated(FEBRUARY.plusDays(30), FlowerStage.FIRST_OPEN);
        WishedDays days = new WishedDays(List.of(wish, later), RULE, FEBRUARY.minusDays(30));

        assertThat(days.asked(wish)).containsExactly(FEBRUARY, FEBRUARY, FEBRUARY, FEBRUARY, FEBRUARY.plusDays(2));
        LocalDate thirtieth = FEBRUARY.plusDays(30);
        assertThat(days.asked(later))
                .containsExactly(thirtieth, thirtieth, thirtieth, FEBRUARY.plusDays(28), thirtieth);
        assertThat(days.own(later)).containsExactly(thirtieth);
    }

    @Test
    void daysThatHavePassedOfAStretchAreLeftOut() {
        Wish two = wish(FEBRUARY, FEBRUARY.plusDays(4), Manner.EVERY_DAY, Optional.empty());
        WishedFor scented = new WishedFor(
                Manner.EVERY_DAY, 1, Optional.empty(), Optional.empty(), "", true, Optional.empty(), Optional.empty());
        Wish narrow = new Wish(two.id(), two.season(), two.from(), two.to(), "", scented, Set.of(), "");
        WishedDays days = new WishedDays(List.of(narrow), RULE, FEBRUARY.plusDays(3));

        assertThat(days.asked(narrow)).containsExactly(FEBRUARY.plusDays(3), FEBRUARY.plusDays(4));
        assertThat(days.asked(two)).isEmpty();
    }

    @Test
    void theGrowersDayBeforeAnother() {
        LocalDate tuesday = FEBRUARY;
        assertThat(PottingDays.onOrBefore(tuesday, RULE)).isEqualTo(LocalDate.of(2028, 1, 30));
        assertThat(PottingDays.onOrBefore(LocalDate.of(2028, 1, 30), RULE)).isEqualTo(LocalDate.of(2028, 1, 30));
        PottingDays one = new PottingDays(new Rule(1, 9, FEBRUARY, FEBRUARY, 1, Set.of()));
        assertThat(one.take(tuesday, tuesday)).isEqualTo(tuesday);
        assertThat(one.take(tuesday, tuesday))
                .as("the last itself, where no day is free")
                .isEqualTo(tuesday);
    }
}
