// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.reckon.dates.Judgement.Reason;
import sillbook.reckon.dates.Judgement.Verdict;

class JudgementTest {
    private static final LocalDate POTTED = LocalDate.of(2026, 10, 1);
    private static final DayCount COLD = DayCount.of(80, 100, 120);

    /** Flowers 90, 115 or 140 days after potting. */
    private static final Need NEED = Need.ofCold(COLD, DayCount.of(10, 15, 20));

    private static Schedule judge(Need need, Facts facts, int wishDay) {
        return Schedule.reckon(need, facts.withWish(POTTED.plusDays(wishDay))).orElseThrow();
    }

    private static Schedule potted(Need need, int wishDay) {
        return judge(need, Facts.NONE.withPotted(POTTED), wishDay);
    }

    private static Verdict verdict(Schedule schedule) {
        return schedule.judgement().orElseThrow().verdict();
    }

    private static Window days(int earliest, int likely, int latest) {
        return new Window(POTTED.plusDays(earliest), POTTED.plusDays(likely), POTTED.plusDays(latest));
    }

    @Test
    void a_wish_from_the_likely_day_on_is_reachable() {
        assertThat(verdict(potted(NEED, 115))).isEqualTo(Verdict.REACHABLE);
        assertThat(verdict(potted(NEED, 140))).isEqualTo(Verdict.REACHABLE);
        assertThat(potted(NEED, 140).warnings()).isEmpty();
        assertThat(potted(NEED, 140).judgement().orElseThrow().reason()).isEmpty();
    }

    @Test
    void a_wish_before_the_likely_day_is_late_and_before_the_earliest_too_late() {
        assertThat(verdict(potted(NEED, 114))).isEqualTo(Verdict.LATE);
        assertThat(verdict(potted(NEED, 90))).isEqualTo(Verdict.LATE);
        assertThat(verdict(potted(NEED, 89))).isEqualTo(Verdict.TOO_LATE);
        assertThat(verdict(potted(NEED, 1))).isEqualTo(Verdict.TOO_LATE);
    }

    @Test
    void late_and_too_late_are_warned_of_with_the_days_they_rest_on() {
        assertThat(potted(NEED, 100).warnings())
                .containsExactly(new Warning.Late(POTTED.plusDays(100), days(90, 115, 140)));
        assertThat(potted(NEED, 50).warnings())
                .containsExactly(new Warning.TooLate(POTTED.plusDays(50), days(90, 115, 140)));
    }

    @Test
    void a_wish_not_after_the_start_cannot_be_reached() {
        Schedule schedule = potted(NEED, 0);

        assertThat(verdict(schedule)).isEqualTo(Verdict.NOT_REACHABLE);
        assertThat(schedule.judgement().orElseThrow().reason()).contains(Reason.BEFORE_START);
        assertThat(schedule.warnings())
                .containsExactly(new Warning.NotReachable(POTTED, days(90, 115, 140), Reason.BEFORE_START));
    }

    @Test
    void it_does_not_wait_past_the_longest_cold_where_no_limit_is_known() {
        Schedule schedule = potted(NEED, 141);

        assertThat(verdict(schedule)).isEqualTo(Verdict.NOT_REACHABLE);
        assertThat(schedule.judgement().orElseThrow().reason()).contains(Reason.FLOWERS_BEFORE);
        assertThat(schedule.warnings()).extracting(Warning::code).containsExactly("not-reachable");
    }

    @Test
    void it_may_wait_in_the_cold_up_to_a_known_limit_at_a_price() {
        Need bearsMore = NEED.withColdLimit(130);

        assertThat(verdict(potted(bearsMore, 150))).isEqualTo(Verdict.REACHABLE);
        assertThat(potted(bearsMore, 150).warnings())
                .containsExactly(new Warning.TooMuchCold(130, COLD, Optional.of(130), true));
        assertThat(potted(bearsMore, 141).warnings())
                .containsExactly(new Warning.TooMuchCold(121, COLD, Optional.of(130), true));
        assertThat(verdict(potted(bearsMore, 151))).isEqualTo(Verdict.NOT_REACHABLE);
    }

    @Test
    void a_limit_below_the_longest_cold_gives_no_time_to_wait() {
        assertThat(verdict(potted(NEED.withColdLimit(110), 140))).isEqualTo(Verdict.REACHABLE);
        assertThat(verdict(potted(NEED.withColdLimit(110), 141))).isEqualTo(Verdict.NOT_REACHABLE);
    }

    @Test
    void what_is_out_of_the_cold_no_longer_waits() {
        Facts out = Facts.NONE.withPotted(POTTED).with(Milestone.COOL_ROOM, POTTED.plusDays(100));
        Need coolRoom = NEED.withColdLimit(130).withCoolRoom(DayCount.of(5));
        Facts warm = Facts.NONE.withPotted(POTTED).with(Milestone.WARM_ROOM, POTTED.plusDays(100));

        assertThat(verdict(judge(coolRoom, out, 120))).isEqualTo(Verdict.REACHABLE);
        assertThat(verdict(judge(coolRoom, out, 121))).isEqualTo(Verdict.NOT_REACHABLE);
        assertThat(verdict(judge(coolRoom, warm, 121))).isEqualTo(Verdict.NOT_REACHABLE);
        assertThat(verdict(judge(coolRoom, out, 114))).isEqualTo(Verdict.LATE);
    }

    @Test
    void a_wish_is_met_by_a_pot_still_in_flower() {
        Need lasts = NEED.withInBloom(DayCount.of(7, 10, 14));

        assertThat(verdict(potted(lasts, 153))).isEqualTo(Verdict.REACHABLE);
        assertThat(potted(lasts, 153).warnings()).isEmpty();
        assertThat(verdict(potted(lasts, 154))).isEqualTo(Verdict.NOT_REACHABLE);
    }

    @Test
    void what_has_flowered_is_judged_by_its_flower() {
        Facts flowered = Facts.NONE.withPotted(POTTED).with(Milestone.BLOOM, POTTED.plusDays(110));
        Facts onlyFlower = Facts.NONE.with(Milestone.BLOOM, POTTED.plusDays(110));

        assertThat(verdict(judge(NEED, flowered, 110))).isEqualTo(Verdict.REACHABLE);
        assertThat(verdict(judge(NEED, flowered, 109))).isEqualTo(Verdict.TOO_LATE);
        assertThat(verdict(judge(NEED, onlyFlower, 110))).isEqualTo(Verdict.REACHABLE);
        assertThat(verdict(judge(NEED, onlyFlower, 109))).isEqualTo(Verdict.TOO_LATE);
    }

    @Test
    void it_tells_when_each_stage_would_have_had_to_start_for_the_wish() {
        Judgement judgement = potted(NEED, 100).judgement().orElseThrow();

        assertThat(judgement.wish()).isEqualTo(POTTED.plusDays(100));
        assertThat(judgement.bloom()).isEqualTo(days(90, 115, 140));
        assertThat(judgement.needed().broughtOut()).isEqualTo(days(80, 85, 90));
        assertThat(judgement.needed().cold()).contains(days(-40, -15, 10));
    }

    @Test
    void a_kind_without_cold_does_not_wait() {
        Need amaryllis = Need.withoutCold(DayCount.of(30, 50, 80));

        assertThat(verdict(potted(amaryllis, 80))).isEqualTo(Verdict.REACHABLE);
        assertThat(verdict(potted(amaryllis, 81))).isEqualTo(Verdict.NOT_REACHABLE);
        assertThat(potted(amaryllis, 81).warnings()).extracting(Warning::code).containsExactly("not-reachable");
    }
}
