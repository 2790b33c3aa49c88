// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Stock;
import sillbook.model.Variety;

/** Each purchase is of 10 bulbs; each pot takes 5 from its own. */
class StockTest {
    private final Winter house = winter().place("fridge", Sort.FRIDGE)
            .place("shed", Sort.COOL_ROOM)
            .pot("T1", "Tuesday Coat", "tulip")
            .bought("1 sep", "fridge")
            .pot("T2", "Tuesday Coat", "tulip")
            .bought("8 sep", "shed")
            .pot("H1", "Inkwell", "hyacinth")
            .bought("5 sep", "fridge");

    private Id<Variety> variety(String name) {
        return house.journal().varieties().all().stream()
                .filter(variety -> variety.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private Stock stock(String name, int season) {
        return Stock.of(variety(name), new Season(season), house.journal());
    }

    private Optional<String> cameOn(int bulbs) {
        return stock("Tuesday Coat", 2026)
                .source(bulbs)
                .map(purchase -> purchase.day().likely().toString());
    }

    @Test
    void whatIsInNoPotIsInHand() {
        assertThat(stock("Tuesday Coat", 2026).inHand()).isEqualTo(10);
        assertThat(stock("Inkwell", 2026).inHand()).isEqualTo(5);
        assertThat(stock("Inkwell", 2025).inHand()).isZero();
    }

    @Test
    void bulbsOfPotsThatWaitAreInNoPottedPotYet() {
        assertThat(stock("Tuesday Coat", 2026).unpotted()).isEqualTo(20);
        house.then("T1").potted("1 oct");
        assertThat(stock("Tuesday Coat", 2026).unpotted()).isEqualTo(15);
    }

    @Test
    void bulbsAreTakenFromTheOldestPurchaseThatHasThemAll() {
        assertThat(cameOn(5)).contains("2026-09-01");
        house.pot("T4", "Tuesday Coat", "tulip")
                .bought("1 oct", "fridge")
                .then("T4")
                .bought("2 oct", "fridge");
        assertThat(cameOn(6)).as("the one that no pot takes from any more").contains("2026-10-01");
    }

    @Test
    void withoutEnoughTheOneThatHasMostIsTakenAndAnEmptyOneNever() {
        Purchase first = stock("Tuesday Coat", 2026).purchases().get(0);
        Stock emptied = new Stock(house.journal(), List.of(first));

        assertThat(emptied.source(6)).contains(first);
        assertThat(new Stock(house.journal(), List.of()).source(1)).isEmpty();
    }

    // What waits at a place

    private PlaceNow at(String today, String place) {
        return house.on(today).places().stream()
                .filter(now -> now.place().name().equals(place))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPlaceKnowsWhatWaitsThereOldestFirstAndHowLongItWasCold() {
        assertThat(at("15 sep", "fridge").waiting())
                .extracting(
                        waiting -> waiting.purchase().day().likely().toString(),
                        WaitingBulbs::bulbs,
                        waiting -> waiting.dry().atTheirPlace())
                .containsExactly(tuple("2026-09-01", 10, 14), tuple("2026-09-05", 10, 10));
        assertThat(at("15 sep", "shed").waiting())
                .singleElement()
                .satisfies(waiting -> assertThat(waiting.dry().atTheirPlace()).isZero());
    }

    @Test
    void aLookBeforeItCameIsNoLookAtItsPlace() {
        house.then("T1").potted("20 sep", "shed").checked("22 sep").moved("25 sep", "fridge");

        assertThat(at("1 oct", "fridge").lastLook()).isEmpty();
        house.then("T1").checked("28 sep");
        assertThat(at("1 oct", "fridge").lastLook()).contains(house.day("28 sep"));
        house.then("T2").potted("20 sep", "fridge").checked("26 sep");
        assertThat(at("1 oct", "fridge").lastLook()).contains(house.day("28 sep"));
        house.then("H1").potted("20 sep", "fridge").moved("30 sep", "fridge").checked("20 sep");
        assertThat(at("1 oct", "fridge").lastLook()).contains(house.day("28 sep"));
    }
}
