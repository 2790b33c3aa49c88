// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ScheduleTest {
    /** Cold 12, 15, 17 weeks; first flower 2, 3, 4 weeks after; 4, 5, 7 days of that in the cool room. */
    private static final Need TULIP = Need.ofCold(DayCount.ofWeeks(12, 15, 17), DayCount.ofWeeks(2, 3, 4))
            .withCoolRoom(DayCount.of(4, 5, 7))
            .withColdLimit(140);

    private static final Need PAPERWHITE =
            Need.withoutCold(DayCount.ofWeeks(3, 5, 8)).withCoolRoom(DayCount.of(7, 14, 21));
    private static final Need AMARYLLIS =
            Need.withoutCold(DayCount.ofWeeks(4, 7, 12)).withInBloom(DayCount.of(30));
    private static final LocalDate POTTED = LocalDate.of(2026, 10, 1);

    private static Schedule reckon(Need need, Facts facts) {
        return Schedule.reckon(need, facts).orElseThrow();
    }

    private static Window window(String earliest, String likely, String latest) {
        return new Window(LocalDate.parse(earliest), LocalDate.parse(likely), LocalDate.parse(latest));
    }

    @Test
    void forward_from_potting_lows_and_highs_add_up() {
        Schedule schedule = reckon(TULIP.withInBloom(DayCount.of(7, 10, 14)), Facts.NONE.withPotted(POTTED));

        assertThat(schedule.stages())
                .isEqualTo(new Stages(
                        Optional.of(Window.on(POTTED)),
                        Optional.of(window("2026-12-24", "2027-01-14", "2027-01-28")),
                        window("2026-12-28", "2027-01-19", "2027-02-04"),
                        window("2027-01-07", "2027-02-04", "2027-02-25"),
                        Optional.of(window("2027-01-14", "2027-02-14", "2027-03-11"))));
        assertThat(schedule.judgement()).isEmpty();
        assertThat(schedule.warnings()).isEmpty();
    }

    @Test
    void the_cold_begins_where_it_is_cold_else_at_potting_which_is_an_assumption() {
        Schedule assumed = reckon(TULIP, Facts.NONE.withPotted(POTTED));
        Schedule known = reckon(TULIP, Facts.NONE.withPotted(POTTED).with(Milestone.COLD, POTTED.plusDays(9)));

        assertThat(assumed.assumed()).containsExactly(Schedule.Assumption.COLD_FROM_POTTING);
        assertThat(known.assumed()).isEmpty();
        assertThat(known.stages().cold()).contains(Window.on(POTTED.plusDays(9)));
        assertThat(known.stages().bloom().likely())
                .isEqualTo(assumed.stages().bloom().likely().plusDays(9));
    }

    @Test
    void backward_from_a_wish_highs_come_off_the_earliest_and_lows_off_the_latest() {
        LocalDate wish = LocalDate.of(2027, 2, 14);

        Schedule schedule = reckon(TULIP, Facts.NONE.withWish(wish));

        assertThat(schedule.stages().bloom()).isEqualTo(Window.on(wish));
        assertThat(schedule.stages().warmRoom())
                .isEqualTo(new Window(wish.minusDays(21), wish.minusDays(16), wish.minusDays(10)));
        assertThat(schedule.stages().coolRoom())
                .contains(new Window(wish.minusDays(28), wish.minusDays(21), wish.minusDays(14)));
        assertThat(schedule.stages().cold())
                .contains(new Window(wish.minusWeeks(21), wish.minusWeeks(18), wish.minusWeeks(14)));
        assertThat(schedule.stages().afterBloom()).isEmpty();
        assertThat(schedule.judgement()).isEmpty();
        assertThat(schedule.assumed()).isEmpty();
    }

    @Test
    void what_has_happened_pins_its_day_and_moves_what_follows_but_not_what_went_before() {
        LocalDate out = LocalDate.of(2027, 1, 20);
        Facts facts = Facts.NONE.withPotted(POTTED).with(Milestone.COOL_ROOM, out);

        Stages stages = reckon(TULIP, facts).stages();

        assertThat(stages.cold()).contains(Window.on(POTTED));
        assertThat(stages.coolRoom()).contains(Window.on(out));
        assertThat(stages.warmRoom()).isEqualTo(new Window(out.plusDays(4), out.plusDays(5), out.plusDays(7)));
        assertThat(stages.bloom()).isEqualTo(new Window(out.plusDays(14), out.plusDays(21), out.plusDays(28)));
    }

    /**
     * Published from the end of the cold for pots that go straight to one warmth: 2 to 4 weeks at 16 to 18 C (IFBC,
     * daffodils in boxes), 21 to 30 days at 16 C (Rees and Hanks 1984). Neither is shorter than the 2 to 3 and 3 to 4
     * weeks of those who use a cool room first, so its days are not taken off.
     */
    @Test
    void carried_straight_from_the_cold_to_the_warm_room_it_takes_all_the_weeks_after_the_cold() {
        LocalDate out = LocalDate.of(2027, 1, 20);
        Facts facts = Facts.NONE.withPotted(POTTED).with(Milestone.WARM_ROOM, out);

        Stages stages = reckon(TULIP, facts).stages();

        assertThat(stages.coolRoom()).isEmpty();
        assertThat(stages.bloom()).isEqualTo(new Window(out.plusDays(14), out.plusDays(21), out.plusDays(28)));
        assertThat(reckon(TULIP, Facts.NONE.with(Milestone.COLD, POTTED).with(Milestone.WARM_ROOM, out))
                        .stages()
                        .bloom())
                .isEqualTo(stages.bloom());
    }

    @Test
    void days_in_the_cool_room_count_as_far_as_they_were_had_and_no_further() {
        LocalDate out = LocalDate.of(2027, 1, 20);
        Facts cool = Facts.NONE.withPotted(POTTED).with(Milestone.COOL_ROOM, out);

        assertThat(reckon(TULIP, cool.with(Milestone.WARM_ROOM, out.plusDays(5)))
                        .stages()
                        .bloom())
                .isEqualTo(new Window(out.plusDays(15), out.plusDays(21), out.plusDays(28)));
        assertThat(reckon(TULIP, cool.with(Milestone.WARM_ROOM, out.plusDays(9)))
                        .stages()
                        .bloom())
                .isEqualTo(new Window(out.plusDays(19), out.plusDays(25), out.plusDays(30)));
    }

    @Test
    void a_kind_without_cold_that_goes_straight_to_warmth_is_counted_from_potting() {
        LocalDate potted = LocalDate.of(2027, 1, 12);
        Facts facts = Facts.NONE.withPotted(potted);

        assertThat(reckon(PAPERWHITE, facts.with(Milestone.WARM_ROOM, potted)).stages())
                .isEqualTo(new Stages(
                        Optional.empty(),
                        Optional.empty(),
                        Window.on(potted),
                        new Window(potted.plusWeeks(3), potted.plusWeeks(5), potted.plusWeeks(8)),
                        Optional.empty()));
        assertThat(reckon(PAPERWHITE, facts.with(Milestone.WARM_ROOM, potted.plusDays(10)))
                        .stages()
                        .bloom())
                .isEqualTo(new Window(potted.plusDays(24), potted.plusWeeks(5), potted.plusWeeks(8)));
    }

    @Test
    void from_a_late_fact_alone_the_days_before_it_are_reckoned_backward() {
        LocalDate warm = LocalDate.of(2027, 1, 20);

        Stages stages =
                reckon(TULIP, Facts.NONE.with(Milestone.WARM_ROOM, warm)).stages();

        assertThat(stages.coolRoom()).contains(new Window(warm.minusDays(7), warm.minusDays(5), warm.minusDays(4)));
        assertThat(stages.cold().orElseThrow().likely())
                .isEqualTo(warm.minusDays(5).minusWeeks(15));
        assertThat(stages.bloom()).isEqualTo(new Window(warm.plusDays(10), warm.plusDays(16), warm.plusDays(21)));
    }

    @Test
    void a_day_nobody_wrote_down_lies_before_the_next_that_is_known() {
        LocalDate bloom = LocalDate.of(2027, 1, 10);

        Stages stages = reckon(TULIP, Facts.NONE.withPotted(POTTED).with(Milestone.BLOOM, bloom))
                .stages();

        assertThat(stages.coolRoom()).contains(window("2026-12-24", "2027-01-10", "2027-01-10"));
        assertThat(stages.warmRoom()).isEqualTo(window("2026-12-28", "2027-01-10", "2027-01-10"));
        assertThat(stages.bloom()).isEqualTo(Window.on(bloom));
    }

    @Test
    void a_kind_without_cold_begins_in_the_cool_room_on_the_day_of_potting() {
        Schedule schedule = reckon(PAPERWHITE, Facts.NONE.withPotted(LocalDate.of(2027, 1, 12)));

        assertThat(schedule.stages())
                .isEqualTo(new Stages(
                        Optional.empty(),
                        Optional.of(Window.on(LocalDate.of(2027, 1, 12))),
                        window("2027-01-19", "2027-01-26", "2027-02-02"),
                        window("2027-02-02", "2027-02-16", "2027-03-09"),
                        Optional.empty()));
        assertThat(schedule.assumed()).isEmpty();
    }

    @Test
    void without_a_cool_room_it_begins_in_the_warm_one() {
        Schedule schedule = reckon(AMARYLLIS, Facts.NONE.withPotted(POTTED));

        assertThat(schedule.stages().coolRoom()).isEmpty();
        assertThat(schedule.stages().warmRoom()).isEqualTo(Window.on(POTTED));
        assertThat(schedule.stages().bloom()).isEqualTo(window("2026-10-29", "2026-11-19", "2026-12-24"));
        assertThat(schedule.stages().afterBloom()).contains(window("2026-11-28", "2026-12-19", "2027-01-23"));
    }

    @Test
    void a_kind_without_cold_may_have_stood_in_the_cold_all_the_same() {
        Facts inThePorch = Facts.NONE.with(Milestone.COLD, POTTED);

        assertThat(reckon(AMARYLLIS, inThePorch).stages().warmRoom()).isEqualTo(Window.on(POTTED));
        assertThat(reckon(AMARYLLIS, inThePorch.withPotted(POTTED.minusDays(3)))
                        .stages()
                        .warmRoom())
                .isEqualTo(Window.on(POTTED.minusDays(3)));
        assertThat(reckon(AMARYLLIS, inThePorch).stages().cold()).isEmpty();
    }

    @Test
    void brought_out_where_no_cool_room_is_used_means_into_the_warm_one() {
        LocalDate out = POTTED.plusDays(20);
        Facts facts = Facts.NONE.withPotted(POTTED).with(Milestone.COOL_ROOM, out);

        assertThat(reckon(AMARYLLIS, facts).stages().warmRoom()).isEqualTo(Window.on(out));
        assertThat(reckon(AMARYLLIS, facts.with(Milestone.WARM_ROOM, out.plusDays(2)))
                        .stages()
                        .warmRoom())
                .isEqualTo(Window.on(out.plusDays(2)));
    }

    @Test
    void a_cool_room_that_would_take_longer_than_there_is_takes_all() {
        Need quick = Need.ofCold(DayCount.of(70), DayCount.of(7, 14, 21)).withCoolRoom(DayCount.of(10, 12, 14));

        Stages stages = reckon(quick, Facts.NONE.withPotted(POTTED)).stages();

        LocalDate out = POTTED.plusDays(70);
        assertThat(stages.warmRoom()).isEqualTo(new Window(out.plusDays(7), out.plusDays(12), out.plusDays(14)));
        assertThat(stages.bloom()).isEqualTo(new Window(out.plusDays(7), out.plusDays(14), out.plusDays(21)));
    }

    @Test
    void the_end_of_bloom_counts_where_it_is_known_and_is_kept_where_it_is_only_seen() {
        LocalDate faded = LocalDate.of(2027, 1, 30);
        Facts facts = Facts.NONE.withPotted(POTTED).with(Milestone.AFTER_BLOOM, faded);

        Stages lastsUnknown = reckon(TULIP, facts).stages();

        assertThat(lastsUnknown.afterBloom()).contains(Window.on(faded));
        assertThat(lastsUnknown.bloom().latest()).isEqualTo(faded);
        assertThat(reckon(AMARYLLIS, Facts.NONE.with(Milestone.AFTER_BLOOM, faded))
                        .stages()
                        .bloom())
                .isEqualTo(Window.on(faded.minusDays(30)));
    }

    @Test
    void without_any_day_there_is_nothing_to_reckon() {
        assertThat(Schedule.reckon(TULIP, Facts.NONE)).isEmpty();
        assertThat(Schedule.reckon(TULIP, Facts.NONE.with(Milestone.AFTER_BLOOM, POTTED)))
                .isEmpty();
    }

    @Test
    void days_out_of_order_are_refused() {
        Facts facts = Facts.NONE.withPotted(POTTED).with(Milestone.BLOOM, POTTED.minusDays(1));

        assertThatIllegalArgumentException().isThrownBy(() -> Schedule.reckon(TULIP, facts));
    }

    @Test
    void a_southern_winter_is_reckoned_like_a_northern_one() {
        Stages stages =
                reckon(TULIP, Facts.NONE.withPotted(LocalDate.of(2027, 4, 1))).stages();

        assertThat(stages.bloom()).isEqualTo(window("2027-07-08", "2027-08-05", "2027-08-26"));
        assertThat(reckon(TULIP, Facts.NONE.withWish(LocalDate.of(2027, 8, 5)))
                        .stages()
                        .cold()
                        .orElseThrow()
                        .likely())
                .isEqualTo(LocalDate.of(2027, 4, 1));
    }

    @Test
    void the_leap_day_is_a_day_of_cold_like_any_other() {
        Need tenDays = Need.ofCold(DayCount.of(10), DayCount.of(10));
        LocalDate potted = LocalDate.of(2028, 2, 20);

        assertThat(reckon(tenDays, Facts.NONE.withPotted(potted)).stages().bloom())
                .isEqualTo(Window.on(LocalDate.of(2028, 3, 11)));
        assertThat(reckon(tenDays, Facts.NONE.withPotted(potted.minusYears(1)))
                        .stages()
                        .bloom())
                .isEqualTo(Window.on(LocalDate.of(2027, 3, 12)));
        assertThat(reckon(tenDays, Facts.NONE.withWish(LocalDate.of(2028, 3, 11)))
                        .stages()
                        .cold())
                .contains(Window.on(potted));
        assertThat(reckon(tenDays, Facts.NONE.withPotted(LocalDate.of(2028, 2, 29)))
                        .stages()
                        .bloom())
                .isEqualTo(Window.on(LocalDate.of(2028, 3, 20)));
    }

    @Test
    void part_weeks_are_rounded_before_they_are_added() {
        Need halves = Need.ofCold(DayCount.ofWeeks(12.5, 12.5, 12.5), DayCount.ofWeeks(2.5, 2.5, 2.5));

        assertThat(reckon(halves, Facts.NONE.withPotted(POTTED)).stages().bloom())
                .isEqualTo(Window.on(POTTED.plusDays(88 + 18)));
    }

    @Test
    void its_lists_are_its_own() {
        List<Warning> warnings = new java.util.ArrayList<>();
        Schedule schedule = new Schedule(
                reckon(TULIP, Facts.NONE.withPotted(POTTED)).stages(), Optional.empty(), warnings, List.of());
        warnings.add(new Warning.NoPottedCold());

        assertThat(schedule.warnings()).isEmpty();
    }

    @Test
    void a_limit_belongs_to_a_need_of_cold() {
        assertThatIllegalArgumentException().isThrownBy(() -> PAPERWHITE.withColdLimit(140));
    }
}
