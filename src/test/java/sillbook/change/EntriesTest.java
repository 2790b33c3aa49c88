// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static sillbook.change.Bench.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.model.Arrival;
import sillbook.model.Band;
import sillbook.model.Choice;
import sillbook.model.Container;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Failure;
import sillbook.model.Id;
import sillbook.model.Impression;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Outcome;
import sillbook.model.OwnFigure;
import sillbook.model.OwnKind;
import sillbook.model.PastWindows;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.ReadingSource;
import sillbook.model.Settings;
import sillbook.model.Space;
import sillbook.model.SpanReading;
import sillbook.model.Subject;
import sillbook.model.Trench;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;

class EntriesTest {
    private final Bench bench = new Bench();

    private static Purchase purchase(Id<Variety> variety) {
        return new Purchase(
                new Id<>(3, 1),
                variety,
                Bench.WINTER,
                day(9, 1),
                30,
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.of(Bench.CELLAR.id()),
                Purchase.Cooled.UNKNOWN,
                Purchase.State.IN_HAND,
                "");
    }

    private static OwnFigure figure(OwnFigure.Scope scope) {
        return new OwnFigure(new Id<>(5, 1), scope, "cold", Optional.of(new OwnFigure.Range(12, 15, 17)), "");
    }

    private static Wish wish(String feast, int to, Set<Id<Pot>> pots) {
        return new Wish(
                new Id<>(6, 1),
                Bench.WINTER,
                LocalDate.of(2027, 1, 30),
                LocalDate.of(2027, 1, to),
                feast,
                WishedFor.one(Optional.of(Kind.of("tulip"))),
                pots,
                "");
    }

    private static Trench buried(long number, Place place) {
        Trench.Air air = new Trench.Read(Bench.CELLAR.id());
        return new Trench(
                new Id<>(11, number),
                place.id(),
                Length.ofCentimetres(25),
                Trench.Soil.SAND,
                Optional.empty(),
                air,
                Optional.empty());
    }

    private Outcome outcome(Optional<Integer> score) {
        return outcome(Optional.empty(), score);
    }

    private Outcome outcome(Optional<Id<Variety>> variety, Optional<Integer> score) {
        return new Outcome(
                new Id<>(7, 1),
                bench.pot("T1"),
                variety,
                day(1, 12),
                score,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Failure.NONE,
                Impression.NONE,
                "");
    }

    @Test
    void everyEntryHasANameInItsStep() {
        bench.done(Bench.tulips(1, "T"));
        PottingMix mix = new PottingMix(new Id<>(8, 1), "sill mix", List.of(), "");
        Container pan =
                new Container(new Id<>(8, 2), "pan", Container.Shape.PAN, Optional.empty(), Optional.empty(), 6, 0, "");
        SpanReading reading =
                new SpanReading(new Id<>(8, 3), Bench.CELLAR.id(), day(1, 1), day(1, 8), Band.ofCelsius(3, 8));

        assertThat(named(Settings.initial(java.time.ZoneOffset.UTC))).isEqualTo("settings corrected");
        assertThat(named(new OwnKind(new Id<>(4, 1), "fritillary", "F", Optional.empty())))
                .isEqualTo("kind fritillary written down");
        assertThat(named(figure(OwnFigure.Scope.of(Kind.of("tulip")))))
                .isEqualTo("own figure, cold of tulip written down");
        assertThat(named(figure(OwnFigure.Scope.of(Bench.MARROW_LANE.id()))))
                .isEqualTo("own figure, cold of 'Marrow Lane' corrected");
        assertThat(named(figure(OwnFigure.Scope.ofAllHardy())))
                .isEqualTo("own figure, cold of all hardy kinds corrected");
        assertThat(named(Bench.MARROW_LANE)).isEqualTo("variety 'Marrow Lane' corrected");
        assertThat(named(purchase(Bench.MARROW_LANE.id()))).isEqualTo("purchase, 30 'Marrow Lane' written down");
        assertThat(named(mix)).isEqualTo("potting mix sill mix written down");
        assertThat(named(pan)).isEqualTo("container pan written down");
        assertThat(named(Bench.SILL)).isEqualTo("place kitchen sill corrected");
        assertThat(named(buried(1, Bench.SILL))).isEqualTo("ground of kitchen sill written down");
        assertThat(named(bench.journal.pots().get(bench.pot("T1")))).isEqualTo("pot T1 corrected");
        assertThat(named(reading)).isEqualTo("reading of cellar written down");
        assertThat(named(outcome(Optional.of(4)))).isEqualTo("outcome 4 of 5 of T1 written down");
        assertThat(named(outcome(Optional.empty()))).isEqualTo("outcome of T1 corrected");
        assertThat(named(outcome(Optional.of(Bench.MARROW_LANE.id()), Optional.of(2))))
                .isEqualTo("outcome 2 of 5 of T1, 'Marrow Lane' corrected");
        assertThat(named(wish("", 30, Set.of()))).isEqualTo("wish for Sat 30 Jan 2027 written down");
        assertThat(named(wish("", 31, Set.of()))).isEqualTo("wish for Sat 30 Jan 2027 to Sun 31 Jan 2027 corrected");
        assertThat(named(wish("Easter", 30, Set.of()))).isEqualTo("wish for Easter corrected");
        assertThat(named(
                        new Choice(new Id<>(8, 4), Bench.MARROW_LANE.id(), Bench.WINTER.next(), new Choice.Chosen(10))))
                .isEqualTo("choice of 'Marrow Lane' for 2027-28 written down");
        assertThat(named(new PastWindows(new Id<>(8, 5), Bench.WINTER, 13, 22, 160)))
                .isEqualTo("windows before 2026-27 written down");
    }

    @Test
    void theShelfOfAPlaceGoesWithIt() {
        Place shed = Place.of(new Id<>(2, 8), "shed", Place.Sort.GARAGE);
        bench.done(new WriteDown(shed));
        bench.done(new WriteDown(
                new Space(new Id<>(2, 7), shed.id(), Optional.empty(), Optional.empty(), Place.ColdDays.ALL_YEAR)));
        bench.done(new Remove(shed));
        assertThat(bench.journal.spaces().all()).isEmpty();
    }

    private String named(Entity<?> entity) {
        return bench.done(new WriteDown(entity)).name();
    }

    @Test
    void aNameIsGivenOnce() {
        Variety again = Variety.of(new Id<>(1, 2), "MARROW lane", Kind.of("tulip"));
        assertThat(bench.refused(new WriteDown(again))).startsWith("There is a tulip 'Marrow Lane' already.");
        bench.done(new WriteDown(Variety.of(new Id<>(1, 2), "Marrow Lane", Kind.of("crocus"))));
        bench.done(new WriteDown(Bench.MARROW_LANE));

        Place cellar = Place.of(new Id<>(2, 9), "Cellar", Place.Sort.GARAGE);
        assertThat(bench.refused(new WriteDown(cellar))).startsWith("There is a place cellar already.");
    }

    @Test
    void ownKindsMixesAndContainersHaveTheirNamesToThemselvesToo() {
        for (long number = 1; number <= 2; number++) {
            Optional<Length> unknown = Optional.empty();
            List<Entity<?>> alike = List.of(
                    new OwnKind(new Id<>(4, number), "fritillary", "F", Optional.empty()),
                    new PottingMix(new Id<>(5, number), "sill mix", List.of(), ""),
                    new Container(new Id<>(6, number), "pan", Container.Shape.PAN, unknown, unknown, 6, 0, ""));
            for (Entity<?> entity : alike) {
                WriteDown change = new WriteDown(entity);
                if (number == 1) {
                    bench.done(change);
                } else {
                    assertThat(bench.refused(change)).startsWith("There is a ").contains(" already.");
                }
            }
        }
    }

    @Test
    void aPotMayGoWithoutALabel() {
        bench.done(Bench.tulips(2, "T"));
        for (String label : List.of("T1", "T2")) {
            Pot pot = bench.journal.pots().get(bench.pot(label));
            bench.done(new WriteDown(new Pot(
                    pot.id(),
                    pot.season(),
                    "",
                    pot.plantings(),
                    pot.way(),
                    pot.container(),
                    pot.across(),
                    pot.pottingMix(),
                    pot.potting(),
                    pot.batch(),
                    pot.parent(),
                    pot.note())));
        }
        assertThat(bench.journal.potsOf(Bench.WINTER)).extracting(Pot::label).containsExactly("", "");
    }

    @Test
    void aPotKeepsItsLabelToItself() {
        bench.done(Bench.tulips(2, "T"));
        Pot two = bench.journal.pots().get(bench.pot("T2"));
        Pot asOne = new Pot(
                two.id(),
                two.season(),
                "t1",
                two.plantings(),
                two.way(),
                two.container(),
                two.across(),
                two.pottingMix(),
                two.potting(),
                two.batch(),
                two.parent(),
                two.note());

        assertThat(bench.refused(new WriteDown(asOne))).startsWith("The label T1 is taken in season 2026-27.");
    }

    @Test
    void aPurchaseNeedsItsVariety() {
        assertThat(bench.refused(new WriteDown(purchase(new Id<>(9, 9))))).isEqualTo(Bench.GONE);
    }

    @Test
    void anEventIsNotWrittenDownAsAnEntry() {
        bench.done(Bench.tulips(1, "T"));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new WriteDown(bench.journal.history(bench.pot("T1")).get(0)));
    }

    @Test
    void whatIsStillUsedStays() {
        bench.done(Bench.tulips(1, "T"));

        assertThat(bench.refused(new Remove(Bench.MARROW_LANE)))
                .isEqualTo("The variety 'Marrow Lane' is still used by pot T1. Nothing was removed.");
        assertThat(bench.refused(new Remove(Bench.CELLAR))).contains("still used by entry of T1");
    }

    @Test
    void thereIsOneGroundOfAPlace() {
        bench.done(new WriteDown(buried(1, Bench.SILL)));

        assertThat(bench.done(new WriteDown(buried(1, Bench.SILL))).name())
                .isEqualTo("ground of kitchen sill corrected");
        assertThat(bench.refused(new WriteDown(buried(2, Bench.SILL))))
                .startsWith("There is a ground of kitchen sill already.");
        assertThat(bench.refused(new Remove(Bench.SILL))).contains("still used by ground of kitchen sill");
        assertThat(bench.refused(new Remove(Bench.CELLAR))).contains("still used by ground of kitchen sill");
        assertThat(bench.done(new Remove(buried(1, Bench.SILL))).name()).isEqualTo("ground of kitchen sill removed");
    }

    @Test
    void aNoteIsNoReasonToKeepAPlaceUnsaid() {
        bench.done(new Jot(List.of(new Subject.OfPlace(Bench.SILL.id())), "draughty", day(1, 12)));

        assertThat(bench.refused(new Remove(Bench.SILL))).contains("still used by entry of kitchen sill");
    }

    @Test
    void partsOfAPotStayWhileItIsThere() {
        PottingMix mix = new PottingMix(new Id<>(8, 1), "sill mix", List.of(), "");
        Container pan =
                new Container(new Id<>(8, 2), "pan", Container.Shape.PAN, Optional.empty(), Optional.empty(), 6, 0, "");
        Purchase bought = purchase(Bench.MARROW_LANE.id());
        List.of(mix, pan, bought).forEach(entity -> bench.done(new WriteDown(entity)));
        assertThat(bench.refused(new Remove(Bench.MARROW_LANE))).contains("purchase, 30");
        bench.done(new PotUp(
                Bench.WINTER,
                List.of(new Pot.Planting(Bench.MARROW_LANE.id(), 5, Optional.of(bought.id()))),
                1,
                "T",
                Pot.Way.DRAINED,
                Optional.of(pan.id()),
                Optional.empty(),
                Optional.of(mix.id()),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ""));

        for (Entity<?> entity : List.<Entity<?>>of(mix, pan, bought)) {
            assertThat(bench.refused(new Remove(entity))).contains("still used by pot T1");
        }
        bench.done(new RemovePots(List.of(bench.pot("T1"))));
        for (Entity<?> entity : List.<Entity<?>>of(mix, pan, bought)) {
            assertThat(bench.done(new Remove(entity)).name()).endsWith(" removed");
        }
    }

    @Test
    void ownFiguresOfAVarietyKeepIt() {
        bench.done(new WriteDown(figure(OwnFigure.Scope.of(Bench.MARROW_LANE.id()))));

        assertThat(bench.refused(new Remove(Bench.MARROW_LANE))).contains("own figure, cold of 'Marrow Lane'");
    }

    @Test
    void removingAPotTakesItsEntriesAndOutcomesButKeepsTheWish() {
        Journal before = bench.journal;
        bench.done(Bench.tulips(2, "T"));
        bench.done(new WriteDown(outcome(Optional.of(4))));
        bench.done(new WriteDown(wish("", 30, Set.of(bench.pot("T1"), bench.pot("T2")))));

        assertThat(bench.done(new RemovePots(List.of(bench.pot("T1")))).name()).isEqualTo("T1 removed");
        assertThat(bench.journal.outcomes().isEmpty()).isTrue();
        assertThat(bench.journal.wishes().all())
                .singleElement()
                .satisfies(wish -> assertThat(wish.pots()).containsExactly(bench.pot("T2")));
        bench.done(new RemovePots(List.of(bench.pot("T2"))));
        bench.done(new Remove(new ArrayList<>(bench.journal.wishes().all()).get(0)));
        assertThat(bench.journal).isEqualTo(before);
    }

    @Test
    void aPotWhosePlantLivesOnStays() {
        bench.done(Bench.tulips(1, "A"));
        Pot parent = bench.journal.pots().get(bench.pot("A1"));
        PotUp heir = new PotUp(
                Bench.WINTER.next(),
                parent.plantings(),
                1,
                "A",
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                Optional.of(parent.id()),
                "");
        bench.done(heir);

        assertThat(bench.refused(new RemovePots(List.of(parent.id()))))
                .isEqualTo("Its plant lives on as A1 of season 2027-28. Remove that pot first.");
    }

    @Test
    void aPlantMayGoWithAllThePotsItLivedIn() {
        bench.done(Bench.tulips(1, "A"));
        Pot parent = bench.journal.pots().get(bench.pot("A1"));
        Pot heir = new Pot(
                new Id<>(3, 1),
                Bench.WINTER.next(),
                "A1",
                parent.plantings(),
                parent.way(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.of(parent.id()),
                "");
        bench.done(new WriteDown(heir));

        bench.done(new RemovePots(List.of(parent.id(), heir.id())));

        assertThat(bench.journal.pots().isEmpty()).isTrue();
    }

    @Test
    void anEntryIsCalledByWhatItIsAbout() {
        Purchase bought = purchase(Bench.MARROW_LANE.id());
        bench.done(new WriteDown(bought));
        List<Subject> subjects = List.of(
                new Subject.OfPurchase(bought.id()),
                new Subject.OfVariety(Bench.MARROW_LANE.id()),
                new Subject.OfSeason(Bench.WINTER));
        bench.done(new Jot(subjects, "soft", day(1, 12)));

        assertThat(subjects)
                .extracting(subject -> bench.done(
                                new Remove(bench.journal.history(subject).get(0)))
                        .name())
                .containsExactly(
                        "entry of purchase of 'Marrow Lane' removed",
                        "entry of 'Marrow Lane' removed",
                        "entry of season 2026-27 removed");
    }

    @Test
    void aKindStaysWhileAVarietyIsOfIt() {
        OwnKind fritillary = new OwnKind(new Id<>(4, 1), "fritillary", "F", Optional.empty());
        Variety soot = Variety.of(new Id<>(1, 7), "Soot and Honey", Kind.of("fritillary"));
        bench.done(new WriteDown(fritillary));
        bench.done(new WriteDown(soot));

        assertThat(bench.refused(new Remove(fritillary))).contains("still used by variety 'Soot and Honey'");
        bench.done(new Remove(soot));
        bench.done(new Remove(fritillary));
    }

    @Test
    void potsAndSettingsAreNotRemovedAsEntries() {
        bench.done(Bench.tulips(1, "T"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Remove(bench.journal.settings()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Remove(bench.journal.pots().get(bench.pot("T1"))));
    }

    @Test
    void whatIsGoneCannotBeRemovedAgain() {
        bench.done(new Remove(Bench.SILL));

        assertThat(bench.refused(new Remove(Bench.SILL))).isEqualTo(Bench.GONE);
    }

    @Test
    void thePottingStaysAsLongAsThePotHasGrown() {
        bench.done(Bench.tulips(1, "T"));
        List<Event> history = bench.journal.history(bench.pot("T1"));

        assertThat(bench.refused(new Remove(history.get(0))))
                .isEqualTo(
                        "T1 has entries that only a potted pot can have." + " Remove those first, or correct the day.");
        bench.done(new Remove(history.get(1)));
        assertThat(bench.done(new Remove(history.get(0))).name()).isEqualTo("entry of T1 removed");
        assertThat(bench.journal.history(bench.pot("T1"))).isEmpty();
    }

    @Test
    void severalChangesAreOneStepEachSeeingTheLast() {
        Variety fresh = Variety.of(new Id<>(1, 5), "Night Marbles", Kind.of("grape hyacinth"));
        Together both = new Together("", List.of(new WriteDown(fresh), Bench.tulips(1, "T"), Bench.tulips(1, "T")));

        Step step = bench.done(both);

        assertThat(step.name()).isEqualTo("T2 'Marrow Lane' potted, cellar");
        assertThat(bench.journal.varieties().contains(fresh.id())).isTrue();
        assertThat(bench.done(new Together("a day's work", List.of(Bench.tulips(1, "T"))))
                        .name())
                .isEqualTo("a day's work");
    }

    @Test
    void ifOneOfSeveralIsRefusedNoneIsDone() {
        Journal before = bench.journal;

        assertThat(bench.refused(new Together("", List.of(Bench.tulips(1, "T1"), Bench.tulips(1, "T1")))))
                .contains("T1 is taken");
        assertThat(bench.journal).isEqualTo(before);
        assertThatIllegalArgumentException().isThrownBy(() -> new Together("", List.of()));
    }

    @Test
    void anOutcomeIsOfAVarietyThatIsInThePot() {
        bench.done(Bench.tulips(1, "T"));
        Variety other = Variety.of(new Id<>(1, 9), "Inkwell", new Kind("hyacinth", ""));
        bench.done(new WriteDown(other));

        assertThat(bench.refused(new WriteDown(outcome(Optional.of(other.id()), Optional.of(3)))))
                .isEqualTo("There is no 'Inkwell' in T1. Name a variety that is.");
    }

    private static ReadingSource file(Place place, int number, String first, String last) {
        String hash = Integer.toString(number).repeat(64);
        return new ReadingSource(
                ReadingSource.idOf(place.id(), hash),
                place.id(),
                number + ".csv",
                hash,
                2,
                0,
                Instant.parse(first + "T08:00:00Z"),
                Instant.parse(last + "T08:00:00Z"));
    }

    /** Which of two files brought what both have is not kept, so neither can go without the other. */
    @Test
    void aFileGoesUnlessReadingsOfAnotherLieAmongItsOwn() {
        ReadingSource first = file(Bench.CELLAR, 1, "2026-10-01", "2026-10-20");
        ReadingSource next = file(Bench.CELLAR, 2, "2026-10-21", "2026-11-20");
        ReadingSource beside = file(Bench.SILL, 3, "2026-10-01", "2026-11-20");
        Bench bench = new Bench();
        bench.journal = bench.journal.with(
                Stream.of(first, next, beside).<Edit>map(Edit.Put::new).toList());

        assertThat(new Remove(first).mingled(bench.journal)).isEmpty();
        assertThat(new Remove(next).mingled(bench.journal)).isEmpty();
        assertThat(new Remove(beside).mingled(bench.journal)).isEmpty();
        assertThat(new Remove(Bench.CELLAR).mingled(bench.journal)).isEmpty();
        ReadingSource among = file(Bench.CELLAR, 4, "2026-10-20", "2026-10-20");
        bench.journal = bench.journal.with(List.of(new Edit.Put(among)));
        assertThat(new Remove(among).mingled(bench.journal)).contains(first);
        assertThat(new Remove(first).mingled(bench.journal)).contains(among);
        assertThat(bench.done(new Remove(next)).name()).isEqualTo("readings of cellar from 2.csv removed");
        assertThat(bench.refused(new Remove(among)))
                .isEqualTo(
                        "The readings of cellar from 4.csv and those from 1.csv lie among each other, and what both had"
                                + " is not kept twice. Take them back by undo, the last first. Nothing was removed.");
    }
}
