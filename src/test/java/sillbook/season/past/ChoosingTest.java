// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.Handbook;
import sillbook.model.Arrival;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.SetAside;
import sillbook.model.Choice.Undecided;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Failure;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.model.Variety.Scent;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Outlook;
import sillbook.season.Winter;
import sillbook.words.ChoosingWords;
import sillbook.words.ReasonWords;

class ChoosingTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Season NEXT = new Season(2027);

    private final Winter house = winter().place("fridge", Sort.FRIDGE).place("cellar", Sort.CELLAR);
    private final List<Entity<?>> more = new ArrayList<>();
    private int number;

    private ChoosingTest grown(int season, String variety, String place, int... scores) {
        house.of(season);
        for (int score : scores) {
            house.pot("T" + ++number, variety, "tulip").potted("1 oct", place).outcome("1 mar", score);
        }
        return this;
    }

    private Variety variety(String name) {
        return house.journal().varieties().all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Id<Variety> written(String name, Kind kind) {
        Variety variety = Variety.of(new Id<>(70, ++number), name, kind);
        more.add(variety);
        return variety.id();
    }

    private void bought(Id<Variety> variety, int season, int bulbs, State state, Optional<Money> price) {
        more.add(new Purchase(
                new Id<>(71, ++number),
                variety,
                new Season(season),
                Day.on(LocalDate.of(season, 9, 5)),
                bulbs,
                Purchase.Grade.UNKNOWN,
                price,
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                state,
                ""));
    }

    private void marked(Id<Variety> variety, Season season, Mark mark) {
        more.add(new Choice(new Id<>(72, ++number), variety, season, mark));
    }

    private static Optional<Money> price(long minor) {
        return Optional.of(new Money(minor, ""));
    }

    private Journal journal() {
        return house.journal().with(more.stream().<Edit>map(Edit.Put::new).toList());
    }

    private Choosing choosing() {
        Journal journal = journal();
        return Choosing.of(journal, Outlook.of(journal, Handbook.standard(), TODAY));
    }

    private Candidate of(String name) {
        return choosing().candidates().stream()
                .filter(one -> one.variety().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private List<String> because(String name) {
        ReasonWords words = new ReasonWords(journal());
        return of(name).reasons().stream().map(words::say).toList();
    }

    @Test
    void anEmptyJournalHasNothingToChooseFrom() {
        assertThat(choosing().season()).isEqualTo(NEXT);
        assertThat(choosing().candidates()).isEmpty();
        assertThat(choosing().bulbs()).isZero();
        assertThat(choosing().cost()).isEmpty();
        assertThat(new ChoosingWords(journal()).lines(choosing())).isEmpty();
    }

    @Test
    void whatWasNeverGrownHasNoFigure() {
        written("Tin Starling", Kind.of("tulip"));

        assertThat(of("Tin Starling").mean()).isEmpty();
        assertThat(because("Tin Starling")).containsExactly("never tried here");
        assertThat(new ChoosingWords(journal()).line(of("Tin Starling")))
                .isEqualTo("'Tin Starling': undecided; no data; never tried here");
    }

    @Test
    void oneThatGrowsNowIsTried() {
        house.of(2026);
        house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "cellar");

        assertThat(because("Marrow Lane")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4, 4, true", "5, 3, false", "3, 5, false", "4, 5, true"})
    void twoWintersRunningAreToBeWellDone(int before, int last, boolean well) {
        grown(2024, "Marrow Lane", "cellar", before).grown(2025, "Marrow Lane", "fridge", last);

        assertThat(because("Marrow Lane").contains("did well here 2 winters running"))
                .isEqualTo(well);
    }

    @Test
    void winterThatBrokeTheRunEndsIt() {
        grown(2023, "Marrow Lane", "cellar", 2)
                .grown(2024, "Marrow Lane", "cellar", 4)
                .grown(2025, "Marrow Lane", "fridge", 4, 5);
        assertThat(of("Marrow Lane").reasons()).contains(new Reason.DidWell(2));
    }

    @Test
    void onePotIsTooFew() {
        grown(2025, "Bramble Tax", "fridge", 4);

        assertThat(because("Bramble Tax")).containsExactly("one pot only: worth a second try");
    }

    @Test
    void onePlaceSoFarIsSaid() {
        grown(2024, "Tuesday Coat", "fridge", 3).grown(2025, "Tuesday Coat", "fridge", 4);
        assertThat(because("Tuesday Coat")).containsExactly("only in the fridge so far");
        grown(2025, "Tuesday Coat", "cellar", 3);
        assertThat(because("Tuesday Coat")).isEmpty();
    }

    @Test
    void failuresInOnePlaceAreNotTheVarietys() {
        grown(2024, "Ninepenny Hat", "cellar", 2).grown(2025, "Ninepenny Hat", "cellar", 1);
        assertThat(because("Ninepenny Hat")).doesNotContain("failed twice, in the cellar only");
        grown(2025, "Ninepenny Hat", "fridge", 4);
        assertThat(because("Ninepenny Hat")).containsExactly("failed twice, in the cellar only");
        grown(2025, "Ninepenny Hat", "cellar", 1);
        assertThat(because("Ninepenny Hat")).containsExactly("failed 3 times, in the cellar only");
        grown(2025, "Ninepenny Hat", "fridge", 1);
        assertThat(because("Ninepenny Hat")).isEmpty();
    }

    @Test
    void floppyInTwoWintersIsSaid() {
        Failure floppy = new Failure(Set.of(Failure.Sign.FLOPPY), Optional.empty(), "", Optional.empty());
        house.of(2024);
        house.pot("D1", "Goose Errand", "daffodil").potted("1 oct").outcomeWithoutScore("1 mar", floppy);
        house.pot("D2", "Goose Errand", "daffodil").potted("1 oct").outcomeWithoutScore("1 mar", floppy);
        assertThat(because("Goose Errand")).doesNotContain("floppy, 2 winters");
        house.of(2025);
        house.pot("D3", "Goose Errand", "daffodil").potted("1 oct").outcomeWithoutScore("1 mar", floppy);
        assertThat(because("Goose Errand")).contains("floppy, 2 winters");
    }

    @Test
    void whatFloweredInAGapOfTheLastWinterFillsIt() {
        house.of(2024);
        house.pot("L1", "Lantern Row", "daffodil")
                .potted("1 oct", "fridge")
                .flowered("18 feb")
                .pastBloom("28 feb");
        house.of(2025);
        house.pot("M1", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .flowered("10 feb")
                .pastBloom("21 feb");
        house.pot("M2", "Inkwell", "hyacinth")
                .potted("1 oct", "fridge")
                .flowered("1 mar")
                .pastBloom("9 mar");

        assertThat(of("Lantern Row").reasons())
                .contains(new Reason.FillsGap(DaySpan.of(LocalDate.of(2026, 2, 21), LocalDate.of(2026, 2, 28))));
        assertThat(because("Lantern Row")).contains("fills your gap of 21-27 Feb");
        assertThat(of("Marrow Lane").reasons()).noneMatch(Reason.FillsGap.class::isInstance);
    }

    @Test
    void thePastWintersOfAPlantThatLivesOnLeaveNoGapInTheLast() {
        house.of(2024);
        house.pot("L1", "Lantern Row", "daffodil")
                .potted("1 sep", "fridge")
                .flowered("10 nov")
                .pastBloom("20 nov");
        house.pot("A1", "Umbrella Street", "amaryllis")
                .potted("1 oct", "cellar")
                .flowered("5 jan")
                .pastBloom("25 jan");
        house.of(2025);
        house.cared("20 nov", Care.WOKEN).flowered("10 jan").pastBloom("2 feb");

        assertThat(of("Lantern Row").reasons()).noneMatch(Reason.FillsGap.class::isInstance);
    }

    @Test
    void whatNeedsNoColdFreesThePlaces() {
        written("Linen Parade", Kind.of("paperwhite"));
        written("Marrow Lane", Kind.of("tulip"));
        written("Soot and Honey", Kind.of("fritillary"));

        assertThat(because("Linen Parade")).contains("needs no cold: frees the cold places");
        assertThat(because("Soot and Honey"))
                .as("of which nothing is known")
                .doesNotContain("needs no cold: frees the cold places");
        assertThat(because("Marrow Lane")).doesNotContain("needs no cold: frees the cold places");
    }

    @Test
    void scentAndPotsAreSaidOfTheVariety() {
        Variety plain = Variety.of(new Id<>(73, 1), "Inkwell", new Kind("tulip", "Triumph"));
        for (Scent scent : Scent.values()) {
            more.add(new Variety(
                    plain.id(),
                    plain.name(),
                    "",
                    plain.kind(),
                    Optional.empty(),
                    plain.bloomSeason(),
                    "",
                    scent,
                    plain.packetForcing(),
                    plain.forPots(),
                    ""));
            List<String> because = because("Inkwell");
            assertThat(because).contains("suits pots");
            assertThat(because.contains("scented")).isEqualTo(scent == Scent.LIGHT);
            assertThat(because.contains("strongly scented")).isEqualTo(scent == Scent.STRONG);
        }
    }

    @Test
    void aThirdOfWhatIsPaidIsCheap() {
        List<Id<Variety>> all = List.of(
                written("Night Marbles", Kind.of("crocus")),
                written("Inkwell", Kind.of("crocus")),
                written("Blue Postcard", Kind.of("crocus")));
        bought(all.get(0), 2025, 20, State.IN_HAND, price(900));
        bought(all.get(0), 2026, 10, State.IN_HAND, price(180));
        bought(all.get(1), 2026, 10, State.IN_HAND, price(1050));
        assertThat(because("Night Marbles")).doesNotContain("cheap, 0.18 each");
        bought(all.get(2), 2026, 10, State.IN_HAND, price(300));

        assertThat(of("Night Marbles").each()).contains(new Money(18, ""));
        assertThat(because("Night Marbles")).contains("cheap, 0.18 each");
        assertThat(because("Blue Postcard")).doesNotContain("cheap, 0.30 each");
        bought(written("Bluejar", Kind.of("crocus")), 2026, 1, State.IN_HAND, Optional.of(new Money(1, "EUR")));
        assertThat(because("Bluejar")).as("the only one in its currency").doesNotContain("cheap, EUR 0.01 each");
    }

    @Test
    void theChosenComeFirstAndTheSetAsideLast() {
        grown(2025, "Inkwell", "fridge", 5).grown(2025, "Marrow Lane", "cellar", 4);
        grown(2025, "Lantern Row", "cellar", 2);
        written("Tin Starling", Kind.of("tulip"));
        assertThat(choosing().candidates())
                .extracting(one -> one.variety().name())
                .containsExactly("Inkwell", "Marrow Lane", "Lantern Row", "Tin Starling");

        marked(variety("Inkwell").id(), NEXT, new SetAside("too dear"));
        marked(variety("Lantern Row").id(), NEXT, new Chosen(10));

        assertThat(choosing().candidates())
                .extracting(one -> one.variety().name())
                .containsExactly("Lantern Row", "Marrow Lane", "Tin Starling", "Inkwell");
    }

    @Test
    void aMarkOfAnEarlierSeasonIsShownAsSuch() {
        grown(2025, "Inkwell", "fridge", 5, 4).grown(2025, "Marrow Lane", "cellar", 4);
        Id<Variety> inkwell = variety("Inkwell").id();
        marked(inkwell, NEXT.previous(), new SetAside("too dear"));
        marked(variety("Marrow Lane").id(), NEXT.previous(), new Chosen(10));

        assertThat(of("Inkwell").isSetAside()).isTrue();
        assertThat(of("Marrow Lane").chosen()).as("bulbs of another season").isEmpty();
        assertThat(choosing().bulbs()).isZero();
        assertThat(new ChoosingWords(journal()).lines(choosing()))
                .containsExactly(
                        "For season 2027-28: nothing chosen.",
                        "'Marrow Lane': undecided; for 2026-27 chosen, 10 bulbs; ▪4.0 of 1 pot; one pot only: worth a second try",
                        "'Inkwell': undecided; for 2026-27 set aside: too dear; ▪4.5 of 2 pots; only in the fridge so far");

        marked(inkwell, NEXT, new Undecided());
        assertThat(of("Inkwell").isSetAside()).isFalse();
    }

    @Test
    void bulbsAndCostAreSummed() {
        Id<Variety> inkwell = written("Inkwell", Kind.of("hyacinth"));
        Id<Variety> bluejar = written("Bluejar", Kind.of("squill"));
        Id<Variety> euro = written("Penny Gloaming", Kind.of("crocus"));
        marked(inkwell, NEXT, new Chosen(9));
        assertThat(ChoosingWords.sum(choosing())).isEqualTo("1 chosen, 9 bulbs, no price known");
        bought(inkwell, 2026, 60, State.IN_HAND, price(6300));
        bought(euro, 2026, 10, State.IN_HAND, Optional.of(new Money(200, "EUR")));
        marked(bluejar, NEXT, new Chosen(20));
        marked(euro, NEXT, new Chosen(1));

        assertThat(choosing().bulbs()).isEqualTo(30);
        assertThat(choosing().cost()).containsExactlyInAnyOrder(new Money(945, ""), new Money(20, "EUR"));
        assertThat(ChoosingWords.sum(choosing()))
                .startsWith("3 chosen, 30 bulbs, about ")
                .endsWith(", 1 without a price");
    }

    @Test
    void whatIsChosenIsToOrderAsFarAsNoPurchaseHasIt() {
        Id<Variety> inkwell = written("Inkwell", Kind.of("hyacinth"));
        Id<Variety> bluejar = written("Bluejar", Kind.of("squill"));
        ChoosingWords words = new ChoosingWords(journal());
        assertThat(words.toOrder(choosing(), "write it")).isEmpty();

        marked(inkwell, NEXT, new Chosen(9));
        bought(inkwell, 2026, 60, State.IN_HAND, Optional.empty());
        bought(inkwell, 2027, 4, State.ORDERED, Optional.empty());
        assertThat(of("Inkwell").toOrder()).isEqualTo(5);
        assertThat(words.toOrder(choosing(), "write it")).contains("Not yet to order: 5 bulbs of 'Inkwell'; write it.");
        marked(bluejar, NEXT, new Chosen(20));
        assertThat(words.toOrder(choosing(), "write it"))
                .contains("Not yet to order: 25 bulbs of 2 varieties; write it.");

        bought(inkwell, 2027, 5, State.TO_ORDER, Optional.empty());
        bought(bluejar, 2027, 30, State.IN_HAND, Optional.empty());
        assertThat(choosing().toOrder()).isEmpty();
        assertThat(words.lines(choosing())).last().isEqualTo("All that is chosen is to order, ordered or in hand.");
    }

    @Test
    void whatIsToComeIsNotInHand() {
        Id<Variety> inkwell = written("Inkwell", Kind.of("hyacinth"));
        bought(inkwell, 2026, 5, State.IN_HAND, Optional.empty());
        bought(inkwell, 2027, 9, State.TO_ORDER, Optional.empty());
        bought(inkwell, 2027, 3, State.ORDERED, Optional.empty());
        bought(inkwell, 2027, 4, State.REJECTED, Optional.empty());

        assertThat(of("Inkwell").inHand()).isEqualTo(5);
        assertThat(of("Inkwell").onOrder()).isEqualTo(12);
        assertThat(new ChoosingWords(journal()).line(of("Inkwell"))).contains("5 bulbs in hand; 12 bulbs to come");
    }
}
