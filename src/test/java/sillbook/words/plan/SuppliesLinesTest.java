// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Purchase;
import sillbook.plan.Supplies;
import sillbook.plan.Supplies.Bulbs;
import sillbook.plan.Supplies.State;
import sillbook.plan.SuppliesReading;

class SuppliesLinesTest {
    private final AugustHouse house = AugustHouse.usual();

    private List<String> lines() {
        return new SuppliesLines(house.journal()).lines(SuppliesReading.of(house.journal(), house.plan()));
    }

    @Test
    void theTightestIsSaidFirstAndWhatIsInHandIsNotToBeOrdered() {
        assertThat(lines())
                .containsSubsequence(
                        "corner shop: 15 'Lantern Row', for 4 pots, ordered; pot by Sun 13 Sep",
                        "seed shop: 12 'Marrow Lane', 12+, for 2 pots, in hand; pot by Sat 24 Oct",
                        "supplier not known: 14 'Linen Parade', for 3 pots, to order; pot by Sun 20 Dec;"
                                + " 14 to order by Sun 6 Dec, about 7.00",
                        "still to order: 14 bulbs, about 7.00");
    }

    @Test
    void containersLabelsMixAndLeftoversFollow() {
        house.write("container pan 15 cm, pan, 4 of them, 1 unwashed", "bought 2 Umbrella Street (amaryllis), cellar");
        assertThat(lines())
                .contains("pan 15 cm: 12 needed, 4 free, 1 to wash first, 8 to buy", "labels: 12")
                .anyMatch(line -> line.startsWith("potting mix: ") && line.endsWith(" L of potting mix"))
                .anyMatch(line -> line.startsWith("left over: 20 'Marrow Lane'"));
        house.write("container pan 15 cm, 40 of them, all washed");
        assertThat(lines()).contains("pan 15 cm: 12 needed, 40 free");
    }

    @Test
    void whereBulbsWaitIsSaidOfThoseLeftOver() {
        house.write("bought 3 Night Marbles (grape hyacinth), cellar");
        Purchase marbles = house.journal().purchases().all().stream()
                .filter(purchase -> purchase.count() == 3)
                .findFirst()
                .orElseThrow();
        Supplies supplies = new Supplies(
                List.of(),
                List.of(new Supplies.Leftover(marbles.id(), marbles.variety(), 3)),
                List.of(),
                Optional.empty(),
                0);
        assertThat(new SuppliesLines(house.journal()).lines(supplies))
                .containsExactly("left over: 3 'Night Marbles', in the cellar");
    }

    @Test
    void whatHasNoPriceIsCounted() {
        house.write("to order 24 Penny Gloaming (crocus)");
        assertThat(lines())
                .anyMatch(line -> line.contains("'Penny Gloaming'") && line.endsWith(", no price known"))
                .anyMatch(line -> line.startsWith("still to order: ") && line.endsWith(", 1 sort without a price"));
    }

    @Test
    void whoIsToBeWrittenToFirstStandsFirst() {
        List<Bulbs> given = List.of(
                bulbs("late shop", LocalDate.of(2026, 10, 1)),
                bulbs("early shop", LocalDate.of(2026, 10, 5)),
                bulbs("early shop", LocalDate.of(2026, 9, 1)));
        Supplies supplies = new Supplies(given, List.of(), List.of(), Optional.empty(), 0);
        assertThat(SuppliesLines.inOrder(supplies)).containsExactly(given.get(2), given.get(1), given.get(0));
    }

    private Bulbs bulbs(String supplier, LocalDate orderBy) {
        return new Bulbs(
                supplier,
                house.id(),
                "",
                Optional.<sillbook.model.Id<Purchase>>empty(),
                State.TO_BUY,
                5,
                1,
                5,
                Optional.empty(),
                orderBy.plusDays(14),
                orderBy);
    }

    @Test
    void potsOfNoKnownSizeAreSaid() {
        Supplies.Mix mix = new Supplies.Mix(3.25, Optional.empty(), List.of(), 2);
        Supplies supplies = new Supplies(List.of(), List.of(), List.of(), Optional.of(mix), 0);
        assertThat(new SuppliesLines(house.journal()).lines(supplies))
                .containsExactly("potting mix: 3.3 L of potting mix; without 2 pots of no known size");
    }
}
