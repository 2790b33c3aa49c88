// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How the plans of a season are found. */
class SeasonPlansTest {
    private static final Season SEASON = new Season(2027);
    private static final LocalDate DAY = LocalDate.of(2027, 12, 20);

    private static SeasonPlan plan(int number, Season season, String name) {
        return new SeasonPlan(
                new Id<>(1, number),
                season,
                name,
                new SeasonPlan.Rule(2, 12, DAY, DAY.plusDays(60), 4, Set.of()),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    @Test
    void aPlanIsFoundByItsLetterHoweverThatIsWritten() {
        SeasonPlan first = plan(1, SEASON, "A");
        SeasonPlan second = plan(2, SEASON, "B");
        Journal journal = Journal.of(List.of(second, first, plan(3, SEASON.next(), "C")));

        assertThat(SeasonPlan.of(SEASON, journal)).containsExactly(first, second);
        assertThat(SeasonPlan.called(SEASON, "B", journal)).contains(second);
        assertThat(SeasonPlan.called(SEASON, "a", journal)).contains(first);
        assertThat(SeasonPlan.called(SEASON, "C", journal))
                .as("of another season")
                .isEmpty();
    }

    @Test
    void theSeasonUnderWayIsPlannedWhileItAloneHasAPlan() {
        Settings settings = Settings.initial(ZoneOffset.UTC);
        SeasonPlan kept = plan(1, SEASON, "A");
        SeasonPlan adopted = kept.adoptedOn(DAY, List.of());
        SeasonPlan next = plan(2, SEASON.next(), "A");

        assertThat(SeasonPlan.plannedOn(DAY, Journal.of(List.of(settings, adopted))))
                .isEqualTo(SEASON);
        assertThat(SeasonPlan.plannedOn(DAY, Journal.of(List.of(settings, adopted, next))))
                .isEqualTo(SEASON.next());
        assertThat(SeasonPlan.plannedOn(DAY, Journal.of(List.of(settings, kept))))
                .isEqualTo(SEASON.next());
        assertThat(SeasonPlan.plannedOn(DAY.minusMonths(3), Journal.of(List.of(settings))))
                .as("bulbs of the season under way are still chosen")
                .isEqualTo(SEASON);
    }

    @Test
    void theAdoptedPlanIsTheOneItsSeasonGoesBy() {
        SeasonPlan adopted = plan(2, SEASON, "B").adoptedOn(DAY, List.of());
        Journal journal = Journal.of(List.of(plan(1, SEASON, "A"), adopted, plan(3, SEASON.next(), "A")));

        assertThat(SeasonPlan.adopted(SEASON, journal)).contains(adopted);
        assertThat(SeasonPlan.adopted(SEASON.next(), journal)).isEmpty();
    }
}
