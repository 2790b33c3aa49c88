// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.FlowerStage;
import sillbook.model.WishedFor.Manner;
import sillbook.plan.LatestDays;
import sillbook.plan.WishMet;
import sillbook.reckon.dates.DaySpan;

class WishWordsTest {
    private static final LocalDate VALENTINE = LocalDate.of(2027, 2, 14);
    private static final LocalDate FROM = LocalDate.of(2027, 1, 10);
    private static final LocalDate TO = LocalDate.of(2027, 3, 25);

    private final AugustHouse house = AugustHouse.usual();
    private final WishWords words = new WishWords(house.journal());

    private static WishedFor asks(Manner manner, int pots, boolean scented) {
        return new WishedFor(
                manner, pots, Optional.empty(), Optional.empty(), "", scented, Optional.empty(), Optional.empty());
    }

    private Wish wish(LocalDate from, LocalDate to, String feast, WishedFor asks) {
        return new Wish(house.id(), AugustHouse.SEASON, from, to, feast, asks, Set.of(), "");
    }

    private Id<Variety> inkwell() {
        return house.journal().varieties().all().stream()
                .filter(variety -> variety.name().equals("Inkwell"))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private WishMet dated(List<Integer> pots, double chance, Optional<Integer> spares) {
        Wish wish = wish(VALENTINE, VALENTINE, "", asks(Manner.SOME_DAY, 3, true));
        return new WishMet(wish, pots, List.of(), chance, spares, Optional.empty());
    }

    private WishMet everyDay(DaySpan... gaps) {
        Wish wish = wish(FROM, TO, "", asks(Manner.EVERY_DAY, 1, false));
        return new WishMet(wish, List.of(), List.of(gaps), 0.62, Optional.empty(), Optional.empty());
    }

    private static DaySpan week() {
        return DaySpan.ofInclusive(LocalDate.of(2027, 2, 21), LocalDate.of(2027, 2, 27));
    }

    @Test
    void aWishSaysItsDaysAndWhatItAsks() {
        assertThat(words.what(everyDay().wish())).isEqualTo("10 Jan-25 Mar");
        assertThat(words.what(dated(List.of(), 0, Optional.empty()).wish())).isEqualTo("14 Feb, 3 scented");
        assertThat(words.what(wish(VALENTINE, VALENTINE, "Valentine's Day", asks(Manner.SOME_DAY, 2, false))))
                .isEqualTo("Valentine's Day, 14 Feb, 2 pots");
    }

    @Test
    void everythingItCanAskIsSaid() {
        WishedFor asks = new WishedFor(
                Manner.SOME_DAY,
                2,
                Optional.of(FlowerStage.FULL),
                Optional.of(new Kind("tulip", "Triumph")),
                "white",
                true,
                Optional.of(Length.ofCentimetres(30)),
                Optional.of(house.journal().places().all().stream()
                        .filter(place -> place.name().equals("kitchen sill"))
                        .findFirst()
                        .orElseThrow()
                        .id()));
        assertThat(words.asks(asks)).isEqualTo("2 scented white tulip Triumph, up to 30 cm, full, kitchen sill");
    }

    @Test
    void howAPlanStandsToIt() {
        assertThat(words.says(dated(List.of(1, 2, 3), 0.8, Optional.of(2)))).isEqualTo("14 Feb, 3 scented: met");
        assertThat(words.says(dated(List.of(1, 2), 0, Optional.empty()))).isEqualTo("14 Feb, 3 scented: 1 pot short");
        assertThat(words.says(everyDay(week()))).isEqualTo("10 Jan-25 Mar: 7 days short");
        assertThat(words.says(everyDay())).isEqualTo("10 Jan-25 Mar: met");
    }

    @ParameterizedTest
    @CsvSource({
        "0, no chance",
        "0.01, under 1 in 10",
        "0.05, 1 in 10",
        "0.8, 8 in 10",
        "0.94, 9 in 10",
        "0.95, over 9 in 10",
        "0.9999, over 9 in 10",
        "1, sure"
    })
    void aChanceIsSaidInTenths(double chance, String said) {
        assertThat(WishWords.chance(chance)).isEqualTo(said);
    }

    @Test
    void howManySparesWouldMakeItSure() {
        assertThat(WishWords.spares(dated(List.of(1, 2, 3), 0.6, Optional.of(2))))
                .contains("2 more, 3-5 days apart, would make it sure in nine of ten");
        assertThat(WishWords.spares(dated(List.of(1, 2, 3), 0.95, Optional.of(0))))
                .contains("sure in nine of ten as it is");
        assertThat(WishWords.spares(dated(List.of(), 0, Optional.empty())))
                .contains("a few pots more would not make it sure in nine of ten");
        assertThat(WishWords.spares(everyDay())).isEmpty();
    }

    @Test
    void allOfItInSentences() {
        assertThat(words.lines(everyDay(week()))).containsExactly("10 Jan-25 Mar: 7 days short; chance 6 in 10.");
        WishMet met = new WishMet(
                dated(List.of(), 0, Optional.empty()).wish(),
                List.of(),
                List.of(),
                1,
                Optional.of(0),
                Optional.of(new LatestDays(
                        inkwell(),
                        Optional.of(LocalDate.of(2026, 9, 1)),
                        LocalDate.of(2026, 9, 15),
                        LocalDate.of(2027, 1, 20))));
        assertThat(words.lines(met))
                .containsExactly(
                        "14 Feb, 3 scented: 3 pots short; sure.",
                        "Sure in nine of ten as it is.",
                        "'Inkwell': order by 1 Sep, pot by 15 Sep, bring in by 20 Jan.");
        assertThat(words.lines(dated(List.of(), 0, Optional.empty())).get(0))
                .isEqualTo("14 Feb, 3 scented: 3 pots short; no chance.");
    }
}
