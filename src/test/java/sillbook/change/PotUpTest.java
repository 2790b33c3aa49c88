// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.change.Bench.day;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Stage;

class PotUpTest {
    private final Bench bench = new Bench();

    @Test
    void severalPotsMakeABatchWithLabelsInARow() {
        Step step = bench.done(Bench.tulips(6, "T"));

        assertThat(step.name()).isEqualTo("T1-T6 'Marrow Lane' potted, cellar");
        assertThat(bench.journal.potsOf(Bench.WINTER))
                .extracting(Pot::label)
                .containsExactly("T1", "T2", "T3", "T4", "T5", "T6");
        assertThat(bench.journal.potsOf(Bench.WINTER))
                .extracting(Pot::batch)
                .doesNotContain(Optional.empty())
                .containsOnly(bench.journal.pots().get(bench.pot("T1")).batch());
    }

    @Test
    void onePotIsNoBatch() {
        bench.done(Bench.tulips(1, "T"));

        assertThat(bench.journal.pots().get(bench.pot("T1")).batch()).isEmpty();
    }

    @Test
    void itBeginsWithPottingAndThenThePlace() {
        bench.done(Bench.tulips(1, "T"));

        assertThat(bench.journal.history(bench.pot("T1")))
                .extracting(Event::what)
                .containsExactly(new Happening.Potted(), new Happening.Moved(Bench.CELLAR.id(), Stage.COLD));
    }

    @Test
    void withoutADayItWaits() {
        Step step = bench.done(Bench.pots(1, "T", Optional.empty(), Optional.empty()));

        assertThat(step.name()).isEqualTo("T1 'Marrow Lane' to be potted");
        assertThat(bench.journal.history(bench.pot("T1"))).isEmpty();
    }

    @Test
    void theNextFreeLabelFollowsTheHighest() {
        bench.done(Bench.tulips(1, "T7"));
        bench.done(Bench.tulips(2, "t"));

        assertThat(bench.journal.pot(Bench.WINTER, "t9")).isPresent();
    }

    @Test
    void aTakenLabelIsRefused() {
        bench.done(Bench.tulips(3, "T"));

        assertThat(bench.refused(Bench.tulips(2, "T3")))
                .isEqualTo("The label T3 is taken in season 2026-27. Write another.");
    }

    @Test
    void theNumberOfPotsIsSensible() {
        assertThat(bench.refused(Bench.tulips(0, "T"))).contains("0 pots cannot be made at once");
        assertThat(bench.refused(Bench.tulips(501, "T"))).contains("write 1 to 500");
        bench.done(Bench.tulips(500, "T"));
        assertThat(bench.refused(Bench.tulips(-1, "T1"))).contains("-1 pots cannot be made at once");
    }

    @Test
    void somethingIsPlanted() {
        assertThat(bench.refused(heir(List.of(), Bench.WINTER, Optional.empty())))
                .isEqualTo("Nothing was named to plant. Name a variety, as 6 x Marrow Lane.");
    }

    @Test
    void aPlantLivesOnInALaterSeason() {
        bench.done(Bench.tulips(1, "A"));
        Pot parent = bench.journal.pots().get(bench.pot("A1"));

        assertThat(bench.refused(heir(parent.plantings(), Bench.WINTER, Optional.of(parent.id()))))
                .isEqualTo(
                        "The plant of A1 is in that pot until season 2027-28." + " Choose a pot of an earlier season.");
        bench.done(heir(parent.plantings(), Bench.WINTER.next(), Optional.of(parent.id())));
    }

    private static PotUp heir(List<Pot.Planting> plantings, Season season, Optional<Id<Pot>> parent) {
        return new PotUp(
                season,
                plantings,
                1,
                "A",
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                parent,
                "");
    }

    @Test
    void aNumberThatIsNoneIsLeftAside() {
        bench.done(Bench.tulips(1, "T0"));

        assertThat(bench.journal.pot(Bench.WINTER, "T1")).isPresent();
    }

    @Test
    void aDayAheadIsRefused() {
        assertThat(bench.refused(Bench.pots(1, "T", Optional.of(day(1, 13)), Optional.empty())))
                .isEqualTo(
                        "Wed 13 Jan 2027 is still to come, so it cannot be written as done. Write a day up to today.");
    }

    @Test
    void waitingPotsArePottedLater() {
        bench.done(Bench.pots(2, "T", Optional.empty(), Optional.empty()));

        Plant plant = new Plant(List.of(bench.pot("T1"), bench.pot("T2")), Optional.of(Bench.CELLAR.id()), day(11, 2));
        assertThat(bench.done(plant).name()).isEqualTo("T1-T2 potted, cellar");
        assertThat(bench.journal.history(bench.pot("T2"))).hasSize(2);
        assertThat(bench.refused(plant)).startsWith("T1 is potted already.");
    }

    /** As many came as two pots take: the third is left as it is. */
    @Test
    void potsThatWaitedForBulbsOfNoPurchaseTakeThemFromWhatIsInHand() {
        bench.done(Bench.pots(3, "T", Optional.empty(), Optional.empty()));
        Pot first = bench.journal.pots().get(bench.pot("T1"));
        Purchase came = Purchase.of(
                new Id<>(5, 5),
                first.first().variety(),
                first.season(),
                day(10, 1),
                2 * first.bulbs(),
                Purchase.State.IN_HAND);
        bench.done(new WriteDown(came));
        List<Id<Pot>> pots = List.of(bench.pot("T1"), bench.pot("T2"), bench.pot("T3"));

        bench.done(new Plant(pots, Optional.empty(), day(11, 2)));

        assertThat(pots)
                .extracting(pot -> bench.journal.pots().get(pot).first().purchase())
                .containsExactly(Optional.of(came.id()), Optional.of(came.id()), Optional.empty());
        assertThat(bench.journal.pots().get(pots.get(0)).bulbs()).isEqualTo(first.bulbs());
    }

    @Test
    void aPotCanBePottedBeforeItHasAPlace() {
        bench.done(Bench.pots(1, "T", Optional.empty(), Optional.empty()));

        assertThat(bench.done(new Plant(List.of(bench.pot("T1")), Optional.empty(), day(11, 2)))
                        .name())
                .isEqualTo("T1 potted");
        assertThat(bench.refused(new Plant(List.of(), Optional.empty(), day(11, 2))))
                .startsWith("No pot was named.");
        assertThat(bench.refused(new Plant(List.of(bench.pot("T1")), Optional.empty(), day(2, 2))))
                .contains("still to come");
    }
}
