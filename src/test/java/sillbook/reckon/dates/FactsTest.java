// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FactsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 10, 14);

    @Test
    void each_fact_is_added_beside_the_others() {
        Facts facts = Facts.NONE
                .withPotted(DAY)
                .with(Milestone.COLD, DAY.plusDays(2))
                .with(Milestone.COOL_ROOM, DAY.plusDays(100))
                .withWish(DAY.plusDays(120))
                .withDryWeeks(2.5);

        assertThat(facts.potted()).contains(DAY);
        assertThat(facts.on(Milestone.COLD)).contains(DAY.plusDays(2));
        assertThat(facts.on(Milestone.COOL_ROOM)).contains(DAY.plusDays(100));
        assertThat(facts.on(Milestone.BLOOM)).isEmpty();
        assertThat(facts.wish()).contains(DAY.plusDays(120));
        assertThat(facts.dryDays()).isEqualTo(18);
        assertThat(facts.withoutWish().wish()).isEmpty();
        assertThat(facts.withoutWish().withWish(DAY.plusDays(120))).isEqualTo(facts);
    }

    @Test
    void a_later_word_on_a_stage_replaces_the_earlier() {
        Facts facts = Facts.NONE.with(Milestone.COLD, DAY).with(Milestone.COLD, DAY.plusDays(1));

        assertThat(facts.happened()).isEqualTo(Map.of(Milestone.COLD, DAY.plusDays(1)));
    }

    @Test
    void what_it_was_made_from_may_change_later() {
        var happened = new EnumMap<Milestone, LocalDate>(Milestone.class);
        Facts facts = new Facts(Optional.empty(), happened, Optional.empty(), 0);
        happened.put(Milestone.COLD, DAY);

        assertThat(facts.happened()).isEmpty();
    }

    @Test
    void days_already_cooled_are_a_number_of_days() {
        assertThatIllegalArgumentException().isThrownBy(() -> Facts.NONE.withDryWeeks(Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Facts(Optional.empty(), Map.of(), Optional.empty(), -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Facts(Optional.empty(), Map.of(), Optional.empty(), 3654));
        assertThat(new Facts(Optional.empty(), Map.of(), Optional.empty(), 3653).dryDays())
                .isEqualTo(3653);
    }

    @Test
    void days_in_order_are_no_disorder() {
        assertThat(Facts.NONE.disorder()).isEmpty();
        assertThat(Facts.NONE.withPotted(DAY).with(Milestone.COLD, DAY).disorder())
                .isEmpty();
        assertThat(Facts.NONE
                        .with(Milestone.COLD, DAY)
                        .with(Milestone.BLOOM, DAY.plusDays(1))
                        .disorder())
                .isEmpty();
    }

    @Test
    void a_stage_before_the_potting_or_before_an_earlier_stage_is_disorder() {
        assertThat(Facts.NONE
                        .withPotted(DAY)
                        .with(Milestone.COOL_ROOM, DAY.minusDays(1))
                        .disorder())
                .contains(new Facts.Disorder(Milestone.COOL_ROOM, DAY.minusDays(1), DAY));
        assertThat(Facts.NONE
                        .withPotted(DAY)
                        .with(Milestone.COLD, DAY.plusDays(5))
                        .with(Milestone.BLOOM, DAY.plusDays(4))
                        .disorder())
                .contains(new Facts.Disorder(Milestone.BLOOM, DAY.plusDays(4), DAY.plusDays(5)));
    }
}
