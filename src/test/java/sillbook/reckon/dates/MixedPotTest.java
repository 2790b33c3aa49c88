// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MixedPotTest {
    private static final DayCount AFTER = DayCount.of(14);
    private static final Need TULIP = Need.ofCold(DayCount.of(84, 105, 119), AFTER);
    private static final Need MUSCARI = Need.ofCold(DayCount.of(63, 84, 105), DayCount.of(21));
    private static final Need CROCUS =
            Need.ofCold(DayCount.of(40, 45, 50), AFTER).withInBloom(DayCount.of(7));
    private static final Need PAPERWHITE = Need.withoutCold(DayCount.of(35));

    private static MixedPot pot(Need... needs) {
        return new MixedPot(List.of(needs));
    }

    @Test
    void they_share_the_longest_minimum_and_the_shortest_maximum() {
        assertThat(pot(TULIP, MUSCARI).cold()).contains(DayCount.of(84, 105, 105));
        assertThat(pot(MUSCARI, TULIP).cold()).contains(DayCount.of(84, 105, 105));
        assertThat(pot(TULIP, MUSCARI).warnings()).isEmpty();
    }

    @Test
    void the_usual_cold_is_the_neediest_ones_as_far_as_the_others_bear_it() {
        Need hurried = Need.ofCold(DayCount.of(80, 84, 90), AFTER);

        assertThat(pot(TULIP, hurried).cold()).contains(DayCount.of(84, 90, 90));
    }

    @Test
    void where_one_needs_more_than_another_bears_there_is_no_common_time_and_the_neediest_has_its_way() {
        MixedPot mixed = pot(MUSCARI, TULIP, CROCUS);

        assertThat(mixed.warnings()).containsExactly(new Warning.NoCommonTime(84, 1, 50, 2));
        assertThat(mixed.cold()).contains(DayCount.of(84, 105, 119));
    }

    @Test
    void of_equals_the_first_is_named() {
        assertThat(pot(TULIP, CROCUS, MUSCARI, TULIP, CROCUS).warnings())
                .containsExactly(new Warning.NoCommonTime(84, 0, 50, 1));
        assertThat(pot(CROCUS, TULIP).warnings()).containsExactly(new Warning.NoCommonTime(84, 1, 50, 0));
    }

    @Test
    void a_minimum_that_meets_a_maximum_is_a_common_time_of_one_day() {
        Need exactly = Need.ofCold(DayCount.of(60, 70, 84), AFTER);

        assertThat(pot(exactly, TULIP).warnings()).isEmpty();
        assertThat(pot(exactly, TULIP).cold()).contains(DayCount.of(84));
    }

    @Test
    void cold_and_no_cold_in_one_pot_is_said_whoever_comes_first() {
        assertThat(pot(TULIP, PAPERWHITE).warnings()).containsExactly(new Warning.ColdAndNoCold(List.of(1)));
        assertThat(pot(PAPERWHITE, TULIP).warnings()).containsExactly(new Warning.ColdAndNoCold(List.of(0)));
        assertThat(pot(PAPERWHITE, TULIP).cold()).isEqualTo(TULIP.cold());
    }

    @Test
    void where_none_needs_cold_there_is_none_and_nothing_to_say() {
        assertThat(pot(PAPERWHITE, PAPERWHITE).cold()).isEmpty();
        assertThat(pot(PAPERWHITE, PAPERWHITE).warnings()).isEmpty();
        assertThat(pot(PAPERWHITE).sharing()).containsExactly(PAPERWHITE);
    }

    @Test
    void each_keeps_its_own_way_after_the_shared_cold() {
        DayCount shared = DayCount.of(84, 105, 105);

        assertThat(pot(TULIP, MUSCARI).sharing()).containsExactly(TULIP.withCold(shared), MUSCARI.withCold(shared));
        assertThat(pot(TULIP, PAPERWHITE).sharing().get(1).cold()).isEqualTo(TULIP.cold());
    }

    @Test
    void the_pot_is_in_bloom_from_the_first_to_the_last() {
        LocalDate potted = LocalDate.of(2026, 10, 1);
        Facts facts = Facts.NONE.withPotted(potted);
        Need early = Need.ofCold(DayCount.of(80), DayCount.of(10)).withInBloom(DayCount.of(8));
        Need late = Need.ofCold(DayCount.of(80), DayCount.of(20))
                .withInBloom(DayCount.of(6))
                .withCoolRoom(DayCount.of(5));

        Stages both = MixedPot.together(pot(early, late).sharing().stream()
                .map(need -> Schedule.reckon(need, facts).orElseThrow().stages())
                .toList());

        assertThat(both.cold()).contains(Window.on(potted));
        assertThat(both.coolRoom()).contains(Window.on(potted.plusDays(80)));
        assertThat(both.warmRoom()).isEqualTo(Window.on(potted.plusDays(80)));
        assertThat(both.bloom()).isEqualTo(Window.on(potted.plusDays(90)));
        assertThat(both.afterBloom()).contains(Window.on(potted.plusDays(106)));
    }

    @Test
    void it_enters_the_cool_room_with_the_first_that_may() {
        LocalDate day = LocalDate.of(2027, 1, 1);
        Stages early = new Stages(
                Optional.empty(), Optional.of(Window.on(day)), Window.on(day), Window.on(day), Optional.empty());
        Stages later = new Stages(
                Optional.empty(),
                Optional.of(Window.on(day.plusDays(1))),
                Window.on(day.plusDays(1)),
                Window.on(day.plusDays(1)),
                Optional.empty());

        assertThat(MixedPot.together(List.of(later, early))).isEqualTo(early);
    }

    @Test
    void how_long_it_is_in_bloom_is_unknown_where_one_is() {
        Stages known = Schedule.reckon(CROCUS, Facts.NONE.withPotted(LocalDate.of(2026, 10, 1)))
                .orElseThrow()
                .stages();
        Stages unknown =
                new Stages(Optional.empty(), Optional.empty(), known.warmRoom(), known.bloom(), Optional.empty());

        assertThat(MixedPot.together(List.of(known, unknown)).afterBloom()).isEmpty();
        assertThat(MixedPot.together(List.of(unknown, known)).afterBloom()).isEmpty();
        assertThat(MixedPot.together(List.of(unknown, known)).cold()).isEqualTo(known.cold());
        assertThat(MixedPot.together(List.of(unknown)).cold()).isEmpty();
    }

    @Test
    void a_pot_has_at_least_one_sort_in_it() {
        assertThatIllegalArgumentException().isThrownBy(() -> new MixedPot(List.of()));
        assertThatThrownBy(() -> MixedPot.together(List.of())).isInstanceOf(NoSuchElementException.class);
    }
}
