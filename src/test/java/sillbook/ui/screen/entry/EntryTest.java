// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sillbook.change.Change;
import sillbook.change.CorrectEvent;
import sillbook.change.Hand;
import sillbook.change.PotUp;
import sillbook.change.Step;
import sillbook.change.WriteDown;
import sillbook.handbook.FigureName;
import sillbook.model.Arrival;
import sillbook.model.Band;
import sillbook.model.Cause;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Failure;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Impression;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Outcome;
import sillbook.model.OwnFigure;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Stage;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Layer;

class EntryTest {
    private static final Variety LINEN = new Variety(
            new Id<>(71, 1),
            "Harbour, at Night",
            "Harbour at Night (new)",
            new Kind("tulip", "Triumph"),
            Optional.of(new Length(4800, "48 cm")),
            Variety.BloomSeason.LATE,
            "near black, honey within",
            Variety.Scent.LIGHT,
            Variety.PacketForcing.YES,
            Variety.ForPots.SUITS,
            "late, but worth it");
    private static final Place ATTIC = new Place(
            new Id<>(72, 1),
            "attic, north side",
            Place.Sort.OTHER,
            Stage.COOL_ROOM,
            Optional.of(Band.ofCelsius(4, 11.5)),
            new Place.ColdDays(MonthDay.of(10, 15), MonthDay.of(4, 1)),
            "one skylight",
            Optional.of(12),
            7,
            Duration.ofHours(12),
            Set.of(Place.Hazard.MICE, Place.Hazard.FROST),
            "mind the third step");
    private static final PottingMix MIX = new PottingMix(
            new Id<>(73, 1),
            "sill mix",
            List.of(new PottingMix.Part(2, "loam"), new PottingMix.Part(1, "peat")),
            "sieved");
    private static final Container BOWL = new Container(
            new Id<>(74, 1),
            "blue bowl",
            Container.Shape.BOWL,
            Optional.of(new Length(1900, "19 cm")),
            Optional.of(new Length(900, "9 cm")),
            2,
            1,
            "chipped");
    private static final Purchase BOUGHT = new Purchase(
            new Id<>(75, 1),
            LINEN.id(),
            new Season(2026),
            Day.on(LocalDate.of(2026, 9, 2)),
            27,
            new Purchase.Grade("12+", Optional.of(new Length(380, "3.8 cm"))),
            Optional.of(new Purchase.Money(950, "")),
            "Harbour Seeds",
            "the polder, by the dyke",
            new Arrival(
                    Optional.of(30), Optional.empty(), Optional.of(24), Optional.of(2), Optional.of(1), "dry, on top"),
            Optional.of(ATTIC.id()),
            new Purchase.Cooled(Optional.of(6.0)),
            Purchase.State.IN_HAND,
            "asked for three more");
    private static final Pot POT = new Pot(
            new Id<>(76, 1),
            new Season(2026),
            "X7",
            List.of(new Pot.Planting(LINEN.id(), 6, Optional.of(BOUGHT.id()))),
            Pot.Way.BOWL,
            Optional.of(BOWL.id()),
            Optional.empty(),
            Optional.of(MIX.id()),
            new Potting("old pans", Potting.Holes.MESH, Potting.Depth.TIPS_LEVEL, "grit, fine"),
            Optional.empty(),
            Optional.empty(),
            "by the window");

    private static final Outcome DID = new Outcome(
            new Id<>(77, 1),
            POT.id(),
            Optional.empty(),
            Day.on(LocalDate.of(2027, 1, 10)),
            Optional.of(4),
            Optional.of(5),
            Optional.of(new Length(3800, "38 cm")),
            Optional.of(LocalDate.of(2026, 12, 28)),
            Optional.of(LocalDate.of(2027, 1, 9)),
            new Failure(
                    Set.of(Failure.Sign.FLOPPY, Failure.Sign.ROT),
                    Optional.of(Failure.Roots.BROWN),
                    "grey, soft",
                    Optional.of(Cause.FROZEN)),
            new Impression(
                    Impression.Evenness.RAGGED, Variety.Scent.NONE, Outcome.Again.DIFFERENTLY, "cooler, and later"),
            "leaned, then fell");

    private static Journal journal() {
        return GrowersWinter.told()
                .journal()
                .with(Stream.<Entity<?>>of(LINEN, ATTIC, MIX, BOWL, BOUGHT, POT, DID)
                        .<Edit>map(Edit.Put::new)
                        .toList());
    }

    private Desk desk = Desk.over(journal());

    private Desk open(Layer form) {
        return desk.lay(form);
    }

    /** What Enter asks to be kept; a first Enter may take what is suggested. */
    private Change recorded() {
        desk.press("Enter");
        if (desk.effects().isEmpty()) {
            desk.press("Enter");
        }
        return desk.effects().stream()
                .filter(Effect.CarryOut.class::isInstance)
                .map(effect -> ((Effect.CarryOut) effect).change())
                .findFirst()
                .orElseThrow(() -> new AssertionError(String.join("\n", desk.lines())));
    }

    private Journal after(Change change) {
        Hand hand = new Hand(Instant.parse("2027-01-12T09:00:00Z"), Desk.TODAY, Desk.counting());
        return change.on(desk.state().journal(), hand)
                .fold((Step step) -> desk.state().journal().with(step.edits()), refusal -> {
                    throw new AssertionError(refusal.sentence());
                });
    }

    @TestFactory
    Stream<DynamicTest> aCorrectionLeftUntouchedChangesNothing() {
        return Stream.of(
                        Entry.correct(desk.state(), LINEN),
                        Entry.correct(desk.state(), ATTIC),
                        Entry.correct(MIX),
                        Entry.correct(desk.state(), BOWL),
                        Entry.correct(desk.state(), BOUGHT),
                        Entry.correct(desk.state(), POT),
                        Entry.correct(desk.state(), DID),
                        Entry.settings(desk.state()))
                .map(form -> DynamicTest.dynamicTest(form.draftName().orElseThrow(), () -> {
                    EntryTest fresh = new EntryTest();
                    fresh.open(form);
                    Journal after = fresh.after(fresh.recorded());
                    Set<String> changed = withoutWriting(after);
                    changed.removeAll(withoutWriting(journal()));
                    assertThat(changed).isEmpty();
                }));
    }

    /** What was written beside a measure in other words is no difference. */
    private static Set<String> withoutWriting(Journal journal) {
        return journal.entities().stream()
                .map(entity -> entity.toString().replaceAll("written=[^\\]]*", ""))
                .collect(Collectors.toCollection(HashSet::new));
    }

    @Test
    void aPotIsPottedUpByItsForm() {
        open(Entry.newPot()).type("Inkw").press("Tab").type("3");

        Journal after = after(recorded());

        assertThat(after.potsOf(new Season(2026)).size())
                .isEqualTo(journal().potsOf(new Season(2026)).size() + 1);
    }

    @Test
    void severalPotsAtOnceWithANewVariety() {
        open(Entry.newPot())
                .type("Lintel (crocus)")
                .press("Tab")
                .type("12")
                .press("Tab")
                .type("15 cm");

        Change change = recorded();

        Journal after = after(change);
        Pot made = after.pots().all().stream().reduce((first, last) -> last).orElseThrow();
        assertThat(after.varieties().get(made.first().variety()).name()).isEqualTo("Lintel");
        assertThat(made.first().count()).isEqualTo(12);
        assertThat(made.across()).map(Length::centimetres).contains(15.0);
    }

    @Test
    void whatIsWantedIsSaidWhereItIsWanted() {
        open(Entry.newPot()).type("Inkwell").press("Tab", "Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(String.join(" ", desk.lines())).contains("How many bulbs in each pot?");
    }

    @Test
    void whatIsNotUnderstoodIsBlamedOnItsBlank() {
        open(Entry.newPlace()).type("loft").press("Tab").type("sprg").press("Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.lines())
                .anySatisfy(line -> assertThat(line).contains("What it is").contains("sprg"));
        assertThat(String.join(" ", desk.lines())).contains("sprg");
    }

    @Test
    void aVarietyIsWrittenDown() {
        open(Entry.newVariety())
                .type("Lintel Smoke")
                .press("Tab")
                .type("daffodil")
                .press("Tab")
                .type("40 cm");

        assertThat(recorded())
                .isInstanceOfSatisfying(
                        WriteDown.class,
                        change -> assertThat(change.entity()).isInstanceOfSatisfying(Variety.class, made -> {
                            assertThat(made.name()).isEqualTo("Lintel Smoke");
                            assertThat(made.kind()).isEqualTo(Kind.of("daffodil"));
                        }));
    }

    @Test
    void aFactTakenAwayIsNoLongerKnown() {
        open(Entry.correct(desk.state(), LINEN));
        desk.press("Tab", "Tab", "Ctrl-U");

        assertThat(((Variety) ((WriteDown) recorded()).entity()).height()).isEmpty();
    }

    @Test
    void aPurchaseOfAKnownVariety() {
        open(Entry.newPurchase(Optional.of(LINEN))).type("20");

        assertThat(((Purchase) ((WriteDown) recorded()).entity()).count()).isEqualTo(20);
    }

    @Test
    void bulbsThatCameShort() {
        desk = Desk.over(GrowersWinter.withAnOrder());
        desk.press("4", "v", "p", "Enter").type("27 of 30").press("Tab").type("2 soft, 1 mould");

        Purchase came = (Purchase) ((WriteDown) recorded()).entity();
        assertThat(came.state()).isEqualTo(Purchase.State.IN_HAND);
        assertThat(came.missing()).isEqualTo(3);
        assertThat(came.sound()).isEqualTo(24);
        assertThat(came.supplier()).isEqualTo("Harbour Seeds");
    }

    @Test
    void potsLikeOneThatIsThere() {
        open(Entry.sameAgain(journal().pot(new Season(2026), "T4").orElseThrow()));

        assertThat(recorded()).isInstanceOf(PotUp.class);
    }

    @Test
    void anOutcomeWithItsEnd() {
        Pot pot = journal().pot(new Season(2026), "P1").orElseThrow();
        open(Entry.outcome(List.of(pot))).type("4").press("Tab").type("5");
        desk.press("Tab", "Tab", "Tab").type("even").press("Tab").type("strong");
        desk.press("Tab", "Tab", "Tab").type("sooner, and cooler").press("Tab").type("done");

        Journal after = after(recorded());

        assertThat(after.outcomes().all())
                .filteredOn(outcome -> outcome.pot().equals(pot.id()))
                .singleElement()
                .satisfies(outcome -> {
                    assertThat(outcome.score()).contains(4);
                    assertThat(outcome.impression())
                            .isEqualTo(new Impression(
                                    Impression.Evenness.EVEN,
                                    Variety.Scent.STRONG,
                                    Outcome.Again.DIFFERENTLY,
                                    "sooner, and cooler"));
                });
        assertThat(after.history(pot.id()))
                .last()
                .satisfies(event -> assertThat(event.what()).isInstanceOf(Happening.Closed.class));
    }

    @Test
    void anOutcomePutRightKeepsWhatTheFormDoesNotAsk() {
        open(Entry.correct(desk.state(), DID)).press("Backspace").type("2").press("Tab", "Backspace");

        Outcome corrected = after(recorded()).outcomes().get(DID.id());

        assertThat(corrected.score()).contains(2);
        assertThat(corrected.flowers()).isEmpty();
        assertThat(corrected.failure()).isEqualTo(DID.failure());
        assertThat(corrected.note()).isEqualTo(DID.note());
    }

    @Test
    void anOutcomeOfWhichNothingIsLeftIsNotTaken() {
        openScored("").press("Up", "Backspace", "Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.lines())
                .anyMatch(line -> line.contains("How did it do? Write a score from 1 to 5, what was seen, or a note."));
    }

    @Test
    void anOutcomeMayComeToNoMoreThanItsNote() {
        openScored("stood by the door").press("Up", "Backspace");

        Outcome corrected = after(recorded()).outcomes().get(DID.id());

        assertThat(corrected)
                .isEqualTo(new Outcome(
                        DID.id(),
                        POT.id(),
                        Optional.empty(),
                        DID.day(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Failure.NONE,
                        Impression.NONE,
                        "stood by the door"));
    }

    /** An outcome with a score, and perhaps a note, under correction. */
    private Desk openScored(String note) {
        Outcome scored = new Outcome(
                DID.id(),
                POT.id(),
                Optional.empty(),
                DID.day(),
                Optional.of(4),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Failure.NONE,
                Impression.NONE,
                note);
        desk = Desk.over(journal().with(List.of(new Edit.Put(scored))));
        return open(Entry.correct(desk.state(), scored));
    }

    @Test
    void aWishForSomePots() {
        open(Entry.newWish(List.of(journal().pot(new Season(2026), "T4").orElseThrow())))
                .type("14 feb");

        Wish wish = (Wish) ((WriteDown) recorded()).entity();
        assertThat(wish.from()).isEqualTo("2027-02-14");
        assertThat(wish.pots()).hasSize(1);
    }

    @Test
    void aFigureOfOnesOwn() {
        open(Entry.figure("tulip", FigureName.COLD, "")).type("13 14 16");

        assertThat(((OwnFigure) ((WriteDown) recorded()).entity()).range()).contains(new OwnFigure.Range(13, 14, 16));
    }

    @Test
    void inchesAndAnotherSeasonStart() {
        open(Entry.settings(desk.state()))
                .press("Shift-Tab", "Shift-Tab", "Shift-Tab", "Ctrl-U")
                .type("1 jan");

        assertThat(((Settings) ((WriteDown) recorded()).entity()).seasonStart()).isEqualTo(MonthDay.of(1, 1));
    }

    @Test
    void theDayOfAnEntryIsCorrected() {
        Event potted = journal()
                .history(journal().pot(new Season(2026), "T4").orElseThrow().id())
                .get(0);
        open(Entry.correct(desk.state(), potted)).press("Ctrl-U").type("19 sep");

        Event corrected = ((CorrectEvent) recorded()).corrected();
        assertThat(corrected.day()).isEqualTo(Day.on(LocalDate.of(2026, 9, 19)));
        assertThat(corrected.what()).isEqualTo(potted.what());
    }

    @Test
    void aMoveIsCorrectedToAnotherPlaceWithItsStage() {
        Event moved = journal()
                .history(journal().pot(new Season(2026), "T4").orElseThrow().id())
                .get(1);
        open(Entry.correct(desk.state(), moved)).press("Tab", "Ctrl-U").type("stair window");

        Happening.Moved now =
                (Happening.Moved) ((CorrectEvent) recorded()).corrected().what();
        assertThat(now.stage()).isEqualTo(Stage.COOL_ROOM);
    }

    @Test
    void theCautionOfTheKindStandsInTheFormOnceItsVarietyIsNamed() {
        Desk form = Desk.over(journal()).press("2", "n").type("Linen");
        assertThat(form.press("Tab").line(23)).contains("▴ It is a daffodil: every part is poisonous");
        assertThat(form.press("Tab", "Tab").line(23)).as("at the potting mix").contains("▴ Wear gloves");

        Desk made =
                Desk.over(journal()).press("2", "n").type("Blue Button (tulip)").press("Tab");
        assertThat(made.line(23)).contains("▴ Harms cats and dogs, the bulb most.");
    }

    @Test
    void theCautionOfPottingStandsWhereOnePots() {
        Journal journal = GrowersWinter.told().journal();

        for (String key : List.of("n", "s")) {
            assertThat(Desk.over(journal).press("2", key).line(23)).contains("▴ Wear gloves and wet the potting mix");
        }
        assertThat(Desk.over(journal).press("3", "n").line(23)).doesNotContain("▴");
    }
}
