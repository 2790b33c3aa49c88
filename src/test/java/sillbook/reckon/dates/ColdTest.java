// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dry cold before potting, and cold too short or too long. */
class ColdTest {
    private static final DayCount NEED = DayCount.ofWeeks(12, 15, 17);
    private static final Need TULIP =
            Need.ofCold(NEED, DayCount.ofWeeks(2, 3, 4)).withColdLimit(140);
    private static final LocalDate POTTED = LocalDate.of(2026, 10, 1);

    private static Schedule broughtOut(Need need, double dryWeeks, int pottedDays) {
        Facts facts = Facts.NONE
                .withPotted(POTTED)
                .withDryWeeks(dryWeeks)
                .with(Milestone.COOL_ROOM, POTTED.plusDays(pottedDays));
        return Schedule.reckon(need, facts).orElseThrow();
    }

    /** Ten weeks count and five must follow potting: Oklahoma State University, HortScience 29(5):487d, 1994. */
    @ParameterizedTest(name = "{0} dry weeks leave {1}, {2}, {3}")
    @CsvSource({"0, 12, 15, 17", "6, 6, 9, 11", "7, 5, 8, 10", "8, 5, 7, 9", "10, 5, 5, 7", "11, 5, 5, 7", "14, 5, 5, 7"
    })
    void dry_weeks_are_deducted_up_to_ten_and_five_stay(double dry, int low, int typical, int high) {
        Schedule schedule = Schedule.reckon(TULIP, Facts.NONE.withPotted(POTTED).withDryWeeks(dry))
                .orElseThrow();

        assertThat(schedule.stages().broughtOut())
                .isEqualTo(new Window(POTTED.plusWeeks(low), POTTED.plusWeeks(typical), POTTED.plusWeeks(high)));
    }

    @Test
    void dry_weeks_are_deducted_backward_too() {
        Facts facts = Facts.NONE.withWish(LocalDate.of(2027, 2, 14)).withDryWeeks(10);

        Schedule schedule = Schedule.reckon(TULIP, facts).orElseThrow();

        assertThat(schedule.stages().cold().orElseThrow().likely())
                .isEqualTo(LocalDate.of(2027, 2, 14).minusWeeks(8));
        assertThat(schedule.warnings()).isEmpty();
    }

    @Test
    void a_need_shorter_than_five_weeks_is_not_made_longer() {
        Need short4 = Need.ofCold(DayCount.ofWeeks(3, 4, 6), DayCount.of(14));

        Schedule schedule = Schedule.reckon(
                        short4, Facts.NONE.withPotted(POTTED).withDryWeeks(10))
                .orElseThrow();

        assertThat(schedule.stages().broughtOut())
                .isEqualTo(new Window(POTTED.plusWeeks(3), POTTED.plusWeeks(4), POTTED.plusWeeks(5)));
    }

    @Test
    void more_than_ten_dry_weeks_are_warned_of_forward_and_backward() {
        Warning credit = new Warning.DryCredit(71, 70);
        Facts eleven = Facts.NONE.withDryWeeks(71 / 7.0);

        assertThat(Schedule.reckon(TULIP, eleven.withPotted(POTTED))
                        .orElseThrow()
                        .warnings())
                .containsExactly(credit);
        assertThat(Schedule.reckon(TULIP, eleven.withWish(POTTED)).orElseThrow().warnings())
                .containsExactly(credit);
        assertThat(Schedule.reckon(TULIP, Facts.NONE.withDryWeeks(10).withPotted(POTTED))
                        .orElseThrow()
                        .warnings())
                .isEmpty();
    }

    @Test
    void dry_weeks_of_a_kind_that_needs_none_change_nothing() {
        Need amaryllis = Need.withoutCold(DayCount.ofWeeks(4, 7, 12));
        Facts facts = Facts.NONE.withPotted(POTTED);

        assertThat(Schedule.reckon(amaryllis, facts.withDryWeeks(20))).isEqualTo(Schedule.reckon(amaryllis, facts));
    }

    @Test
    void brought_out_before_the_shortest_cold_is_too_little() {
        assertThat(broughtOut(TULIP, 0, 83).warnings()).containsExactly(new Warning.TooLittleCold(83, 0, NEED, 84));
        assertThat(broughtOut(TULIP, 0, 84).warnings()).isEmpty();
    }

    @Test
    void enough_weeks_with_too_few_of_them_potted_are_too_little() {
        assertThat(broughtOut(TULIP, 10, 34).warnings()).containsExactly(new Warning.TooLittleCold(34, 70, NEED, 35));
        assertThat(broughtOut(TULIP, 10, 35).warnings()).isEmpty();
    }

    @Test
    void longer_than_the_longest_cold_is_too_much_and_past_the_limit_more_so() {
        assertThat(broughtOut(TULIP, 0, 119).warnings()).isEmpty();
        assertThat(broughtOut(TULIP, 0, 120).warnings())
                .containsExactly(new Warning.TooMuchCold(120, NEED, Optional.of(140), false));
        assertThat(broughtOut(TULIP, 10, 50).warnings())
                .containsExactly(new Warning.TooMuchCold(120, NEED, Optional.of(140), false));
    }

    @Test
    void the_limit_is_passed_the_day_after_it() {
        assertThat(new Warning.TooMuchCold(140, NEED, Optional.of(140), false).isPastLimit())
                .isFalse();
        assertThat(new Warning.TooMuchCold(141, NEED, Optional.of(140), false).isPastLimit())
                .isTrue();
        assertThat(new Warning.TooMuchCold(999, NEED, Optional.empty(), false).isPastLimit())
                .isFalse();
    }

    @Test
    void straight_into_the_warm_room_the_cold_ends_there() {
        Facts facts = Facts.NONE.withPotted(POTTED).with(Milestone.WARM_ROOM, POTTED.plusDays(60));
        Need withCoolRoom = TULIP.withCoolRoom(DayCount.of(5));

        assertThat(Schedule.reckon(withCoolRoom, facts).orElseThrow().warnings())
                .containsExactly(new Warning.TooLittleCold(60, 0, NEED, 84));
    }

    @Test
    void a_kind_that_needs_cold_and_gets_none_in_its_pot_is_warned_of() {
        Need none = Need.ofCold(DayCount.ZERO, DayCount.ofWeeks(2, 3, 4));

        Schedule schedule = Schedule.reckon(none, Facts.NONE.withPotted(POTTED)).orElseThrow();

        assertThat(schedule.warnings()).containsExactly(new Warning.NoPottedCold());
        assertThat(schedule.stages().broughtOut()).isEqualTo(Window.on(POTTED));
        assertThat(broughtOut(TULIP, 10, 0).warnings())
                .containsExactly(new Warning.NoPottedCold(), new Warning.TooLittleCold(0, 70, NEED, 35));
    }

    /** Prepared hyacinths were kept warm, not cold: nothing comes off their need. */
    @Test
    void prepared_is_not_cooled() {
        Need prepared = Need.ofCold(DayCount.ofWeeks(8, 10, 12), DayCount.ofWeeks(2, 3, 4));

        assertThat(Schedule.reckon(prepared, Facts.NONE.withPotted(POTTED))
                        .orElseThrow()
                        .stages()
                        .broughtOut()
                        .earliest())
                .isEqualTo(POTTED.plusWeeks(8));
    }

    @Test
    void while_it_is_in_the_cold_nothing_is_too_little_or_too_much() {
        assertThat(Schedule.reckon(TULIP, Facts.NONE.withPotted(POTTED))
                        .orElseThrow()
                        .warnings())
                .isEmpty();
        assertThat(Schedule.reckon(TULIP, Facts.NONE.with(Milestone.COOL_ROOM, POTTED))
                        .orElseThrow()
                        .warnings())
                .isEmpty();
    }
}
