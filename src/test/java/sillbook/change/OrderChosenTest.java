// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Arrival;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.SetAside;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Variety;

class OrderChosenTest {
    private static final Season NEXT = Bench.WINTER.next();
    private static final OrderChosen ORDER = new OrderChosen(NEXT);
    private static final Variety INKWELL = Variety.of(new Id<>(1, 2), "Inkwell", Kind.of("hyacinth"));

    private final Bench bench = new Bench();

    @BeforeEach
    void another() {
        bench.done(new WriteDown(INKWELL));
    }

    private void choose(Variety variety, int bulbs) {
        bench.done(new Choose(variety.id(), NEXT, new Chosen(bulbs)));
    }

    private Purchase stands(int bulbs, Season season, State state) {
        Purchase purchase =
                Purchase.of(bench.hand.ids().next(), INKWELL.id(), season, Day.on(Bench.TODAY), bulbs, state);
        bench.done(new WriteDown(purchase));
        return purchase;
    }

    @Test
    void eachChosenVarietyIsAPurchaseToOrder() {
        choose(Bench.MARROW_LANE, 30);
        choose(INKWELL, 9);
        Step step = bench.done(ORDER);

        assertThat(step.name()).isEqualTo("39 bulbs of 2 chosen varieties to order for 2027-28");
        assertThat(bench.journal.purchases().all())
                .extracting(Purchase::variety, Purchase::count, Purchase::state, Purchase::season, Purchase::price)
                .containsExactlyInAnyOrder(
                        tuple(Bench.MARROW_LANE.id(), 30, State.TO_ORDER, NEXT, Optional.empty()),
                        tuple(INKWELL.id(), 9, State.TO_ORDER, NEXT, Optional.empty()));
        assertThat(bench.journal.purchases().all())
                .allSatisfy(purchase -> assertThat(purchase.day()).isEqualTo(Day.on(Bench.TODAY)));
    }

    @Test
    void oneVarietyIsNamed() {
        choose(INKWELL, 9);
        assertThat(bench.done(ORDER).name()).isEqualTo("9 'Inkwell' to order for 2027-28");
    }

    @Test
    void nothingIsOrderedTwice() {
        choose(INKWELL, 9);
        bench.done(ORDER);

        assertThat(bench.refused(ORDER))
                .isEqualTo("All that is chosen for 2027-28 is to order, ordered or in hand already."
                        + " Choose more, or leave it.");
    }

    @ParameterizedTest
    @CsvSource({"TO_ORDER, 5", "ORDERED, 5", "IN_HAND, 5", "REJECTED, 9"})
    void onlyWhatIsMissingIsOrdered(State state, int missing) {
        choose(INKWELL, 9);
        stands(4, NEXT, state);

        assertThat(bench.done(ORDER).name()).isEqualTo(missing + " 'Inkwell' to order for 2027-28");
    }

    @Test
    void bulbsThatCameAndCannotBePlantedAreOrderedAgain() {
        choose(INKWELL, 9);
        Purchase came = stands(9, NEXT, State.ORDERED).arrivedOn(Day.on(Bench.TODAY));
        Arrival soft = new Arrival(
                came.arrival().ordered(), Optional.empty(), Optional.empty(), Optional.of(2), Optional.empty(), "");
        bench.journal = bench.journal.with(List.of(new Edit.Put(new Purchase(
                came.id(),
                came.variety(),
                came.season(),
                came.day(),
                came.count(),
                came.grade(),
                came.price(),
                came.supplier(),
                came.origin(),
                soft,
                came.waits(),
                came.cooled(),
                came.state(),
                came.note()))));

        assertThat(bench.done(ORDER).name()).isEqualTo("2 'Inkwell' to order for 2027-28");
    }

    @Test
    void whatAnotherSeasonHasOrChoseCountsForNothing() {
        stands(9, Bench.WINTER, State.IN_HAND);
        choose(INKWELL, 9);
        bench.done(new Choose(Bench.MARROW_LANE.id(), Bench.WINTER, new Chosen(5)));

        assertThat(bench.done(ORDER).name()).isEqualTo("9 'Inkwell' to order for 2027-28");
    }

    @Test
    void withNothingChosenThereIsNothingToOrder() {
        String nothing = "Nothing is chosen for 2027-28. Choose first, as: choose Lantern Row x10.";
        assertThat(bench.refused(ORDER)).isEqualTo(nothing);
        bench.done(new Choose(INKWELL.id(), NEXT, new SetAside("")));
        assertThat(bench.refused(ORDER)).isEqualTo(nothing);
    }
}
