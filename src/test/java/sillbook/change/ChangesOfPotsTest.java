// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.change.Bench.day;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Variety;

class ChangesOfPotsTest {
    private final Bench bench = new Bench();

    @BeforeEach
    void pots() {
        bench.done(Bench.tulips(4, "T"));
    }

    private List<Id<Pot>> pots(String... labels) {
        return List.of(labels).stream().map(bench::pot).toList();
    }

    private Happening last(String label) {
        List<Event> history = bench.journal.history(bench.pot(label));
        return history.get(history.size() - 1).what();
    }

    @Test
    void aMoveRecordsPlaceAndStage() {
        Step step = bench.done(new Move(pots("T1", "T2", "T4"), Bench.SILL.id(), Stage.WARM_ROOM, day(1, 10)));

        assertThat(step.name()).isEqualTo("T1-T2 T4 into the warm room, kitchen sill");
        assertThat(last("T4")).isEqualTo(new Happening.Moved(Bench.SILL.id(), Stage.WARM_ROOM));
        assertThat(last("T3")).isEqualTo(new Happening.Moved(Bench.CELLAR.id(), Stage.COLD));
    }

    @Test
    void eachStageHasItsWords() {
        Map<Stage, String> words = Map.of(
                Stage.WAITING, "back to waiting",
                Stage.COLD, "into the cold",
                Stage.COOL_ROOM, "into the cool room",
                Stage.WARM_ROOM, "into the warm room",
                Stage.IN_BLOOM, "in bloom",
                Stage.AFTER_BLOOM, "after bloom",
                Stage.DONE, "done");
        words.forEach((stage, said) -> assertThat(bench.done(new Move(pots("T1"), Bench.SILL.id(), stage, day(1, 10)))
                        .name())
                .isEqualTo("T1 " + said + ", kitchen sill"));
    }

    @Test
    void aRoundAnswersEveryPotInOneStep() {
        Map<Id<Pot>, Findings> found = new LinkedHashMap<>();
        pots("T1", "T2", "T3").forEach(pot -> found.put(pot, Findings.ALL_WELL));

        assertThat(bench.done(new Check(found, Optional.of(Bench.CELLAR.id()), day(1, 12)))
                        .name())
                .isEqualTo("round of cellar, 3 pots");
        assertThat(last("T3")).isEqualTo(new Happening.Checked(Findings.ALL_WELL));
    }

    @Test
    void aCheckOfOnePotSaysWhose() {
        assertThat(bench.done(new Check(Map.of(bench.pot("T2"), Findings.ALL_WELL), Optional.empty(), day(1, 12)))
                        .name())
                .isEqualTo("T2 checked");
    }

    @Test
    void bloomCareAndEndHaveTheirNames() {
        assertThat(bench.done(new Flower(pots("T1"), BloomPoint.FIRST_FLOWER, Optional.empty(), day(1, 11)))
                        .name())
                .isEqualTo("T1 first flower");
        assertThat(bench.done(new Flower(
                                pots("T1"), BloomPoint.PAST_BLOOM, Optional.of(Bench.MARROW_LANE.id()), day(1, 12)))
                        .name())
                .isEqualTo("T1 past bloom of 'Marrow Lane'");
        assertThat(bench.done(new CareFor(pots("T1"), Care.STAKED, day(1, 12))).name())
                .isEqualTo("T1 staked");
        assertThat(bench.done(new Display(pots("T1", "T2"), Optional.of("hall table"), day(1, 12)))
                        .name())
                .isEqualTo("T1-T2 into display hall table");
        assertThat(last("T2")).isEqualTo(new Happening.Displayed(Optional.of("hall table")));
        assertThat(bench.done(new Display(pots("T2"), Optional.empty(), day(1, 12)))
                        .name())
                .isEqualTo("T2 out of the display");
        assertThat(bench.done(new Close(pots("T1", "T2"), End.USED_UP, "for the fair", day(1, 12)))
                        .name())
                .isEqualTo("T1-T2 used up");
        assertThat(last("T2")).isEqualTo(new Happening.Closed(End.USED_UP, "for the fair"));
    }

    @Test
    void whatStandsInTheColdAndNeverFloweredIsNotPastBloom() {
        Flower past = new Flower(pots("T2"), BloomPoint.PAST_BLOOM, Optional.empty(), day(1, 12));
        assertThat(bench.refused(past))
                .isEqualTo(
                        "T2 stands in the cold, and no flower of it is written. Name another pot, or write first that"
                                + " it flowered.");
        bench.done(new Flower(pots("T2"), BloomPoint.FIRST_FLOWER, Optional.empty(), day(1, 10)));
        assertThat(bench.done(past).name()).isEqualTo("T2 past bloom");
        bench.done(new Move(pots("T3"), Bench.SILL.id(), Stage.WARM_ROOM, day(1, 11)));
        assertThat(bench.done(new Flower(pots("T3"), BloomPoint.PAST_BLOOM, Optional.empty(), day(1, 12)))
                        .name())
                .as("out of the cold a first flower may have been forgotten")
                .isEqualTo("T3 past bloom");
    }

    @Test
    void aShootTallerThanBulbsGrowIsASlip() {
        Findings tall = Findings.ALL_WELL.withShoot(new Length(25_000, "250 cm"));
        assertThat(bench.refused(new Check(Map.of(bench.pot("T1"), tall), Optional.empty(), day(1, 12))))
                .isEqualTo("A shoot of 250 cm is taller than bulbs in pots grow. Write it again, as 2.5 cm.");
    }

    @Test
    void whatHappenedCannotLieAhead() {
        Day tomorrow = day(1, 13);
        List<Change> changes = List.of(
                new Move(pots("T1"), Bench.SILL.id(), Stage.WARM_ROOM, tomorrow),
                new Check(Map.of(bench.pot("T1"), Findings.ALL_WELL), Optional.empty(), tomorrow),
                new Flower(pots("T1"), BloomPoint.FULL_BLOOM, Optional.empty(), tomorrow),
                new CareFor(pots("T1"), Care.FED, tomorrow),
                new Close(pots("T1"), End.SOLD, "", tomorrow));
        changes.forEach(change -> assertThat(bench.refused(change)).contains("Wed 13 Jan 2027 is still to come"));
    }

    @Test
    void aDayAboutTodayMayReachAhead() {
        Day about = Day.about(LocalDate.of(2027, 1, 14), 3);

        bench.done(new CareFor(pots("T1"), Care.FED, about));
    }

    @Test
    void nothingHappensToAPotBeforeItIsPotted() {
        assertThat(bench.refused(new Move(pots("T1"), Bench.SILL.id(), Stage.WARM_ROOM, day(10, 1))))
                .isEqualTo("T1 was potted on Wed 14 Oct 2026, after Thu 1 Oct 2026."
                        + " Write a later day, or correct the potting day.");
        bench.done(Bench.pots(1, "W", Optional.empty(), Optional.empty()));
        assertThat(bench.refused(new CareFor(pots("W1"), Care.FED, day(1, 12))))
                .isEqualTo("W1 is not potted yet. Write first when it was potted.");
    }

    @Test
    void whatBloomsIsInThePot() {
        Variety other = Variety.of(new Id<>(1, 9), "Inkwell", new Kind("hyacinth", ""));
        bench.done(new WriteDown(other));

        assertThat(bench.refused(new Flower(pots("T1"), BloomPoint.FIRST_FLOWER, Optional.of(other.id()), day(1, 11))))
                .isEqualTo("There is no 'Inkwell' in T1. Name a variety that is.");
    }

    @Test
    void whatAnotherWindowRemovedIsNamedInVain() {
        Id<Place> nowhere = new Id<>(9, 9);
        Subject place = new Subject.OfPlace(nowhere);
        List<Change> changes = List.of(
                new Move(pots("T1"), nowhere, Stage.WARM_ROOM, day(1, 10)),
                new Plant(pots("T1"), Optional.of(nowhere), day(1, 10)),
                new Check(Map.of(bench.pot("T1"), Findings.ALL_WELL), Optional.of(nowhere), day(1, 10)),
                new Answer(List.of(place), JobKind.CHECK, Optional.empty(), ""),
                new Jot(List.of(place), "draughty", day(1, 10)),
                new RemovePots(List.of(new Id<>(9, 9))),
                Bench.pots(1, "T", Optional.empty(), Optional.of(nowhere)));
        changes.forEach(change -> assertThat(bench.refused(change)).isEqualTo(Bench.GONE));
    }

    @Test
    void somethingMustBeAnsweredOrJottedOn() {
        assertThat(bench.refused(new Answer(List.of(), JobKind.CHECK, Optional.empty(), "")))
                .startsWith("Nothing was named.");
        assertThat(bench.refused(new Jot(List.of(), "draughty", day(1, 10)))).startsWith("Nothing was named.");
    }

    @Test
    void somePotMustBeNamedAndThere() {
        assertThat(bench.refused(new CareFor(List.of(), Care.FED, day(1, 12)))).startsWith("No pot was named.");
        assertThat(bench.refused(new Close(List.of(new Id<>(9, 9)), End.SOLD, "", day(1, 12))))
                .isEqualTo(Bench.GONE);
    }

    @Test
    void eventsOfADayKeepTheOrderTheyWereWrittenIn() {
        bench.done(new CareFor(pots("T1"), Care.FED, day(1, 12)));
        bench.done(new CareFor(pots("T1"), Care.TURNED, day(1, 12)));
        bench.done(new CareFor(pots("T1"), Care.STAKED, day(1, 11)));

        assertThat(bench.journal.history(bench.pot("T1")))
                .extracting(Event::what)
                .endsWith(
                        new Happening.Cared(Care.STAKED),
                        new Happening.Cared(Care.FED),
                        new Happening.Cared(Care.TURNED));
    }

    @Test
    void aJobIsPutOffOrLeftOut() {
        List<Subject> both = List.of(new Subject.OfPot(bench.pot("T1")), new Subject.OfPlace(Bench.CELLAR.id()));

        assertThat(bench.done(new Answer(both, JobKind.CHECK, Optional.of(LocalDate.of(2027, 1, 15)), "away"))
                        .name())
                .isEqualTo("T1 cellar: check put off to Fri 15 Jan 2027");
        assertThat(bench.done(new Answer(both.subList(0, 1), JobKind.BRING_IN, Optional.empty(), "no room"))
                        .name())
                .isEqualTo("T1: bring in left out");
        assertThat(last("T1")).isEqualTo(new Happening.LeftOut(JobKind.BRING_IN, "no room"));
        assertThat(bench.refused(new Answer(both, JobKind.CHECK, Optional.of(Bench.TODAY), "")))
                .startsWith("Tue 12 Jan 2027 is not after today.");
    }

    @Test
    void aNoteIsJottedOnWhateverItIsAbout() {
        List<Subject> subjects = List.of(
                new Subject.OfPot(bench.pot("T1")),
                new Subject.OfVariety(Bench.MARROW_LANE.id()),
                new Subject.OfSeason(Bench.WINTER));

        assertThat(bench.done(new Jot(subjects, "flat sides to the rim", day(1, 12)))
                        .name())
                .isEqualTo("jotted: flat sides to the rim");
        assertThat(bench.journal.history(new Subject.OfSeason(Bench.WINTER))).hasSize(1);
        assertThat(bench.refused(new Jot(subjects, "  ", day(1, 12)))).startsWith("The note is empty.");
    }

    @ParameterizedTest
    @EnumSource(End.class)
    void aPotThatIsDoneIsNotCarriedLookedAtOrSeenToFlower(End end) {
        bench.done(new Close(pots("T2"), end, "", day(1, 5)));
        Journal before = bench.journal;
        String said = "T2 is done since Tue 5 Jan 2027 (" + Said.words(end)
                + "); nothing more happens to it on Sun 10 Jan 2027."
                + " Write an earlier day, name another pot, or correct that entry in its history.";
        List<Id<Pot>> pots = pots("T1", "T2");
        Map<Id<Pot>, Findings> found = Map.of(bench.pot("T2"), Findings.ALL_WELL);

        assertThat(bench.refused(new Move(pots, Bench.SILL.id(), Stage.WARM_ROOM, day(1, 10))))
                .isEqualTo(said);
        assertThat(bench.refused(new Check(found, Optional.empty(), day(1, 10))))
                .isEqualTo(said);
        assertThat(bench.refused(new Flower(pots, BloomPoint.FIRST_FLOWER, Optional.empty(), day(1, 10))))
                .isEqualTo(said);
        assertThat(bench.refused(new Move(pots, Bench.SILL.id(), Stage.WARM_ROOM, day(1, 5))))
                .contains("on Tue 5 Jan 2027. Write an earlier day");
        assertThat(bench.journal).isEqualTo(before);
    }

    @Test
    void whatHappenedBeforeAPotsEndCanBeWrittenAndCorrectedAfterwards() {
        bench.done(new Close(pots("T2"), End.GIVEN, "to the neighbours", day(1, 5)));

        bench.done(new Check(Map.of(bench.pot("T2"), Findings.ALL_WELL), Optional.empty(), day(1, 4)));
        Event moved = bench.journal.history(bench.pot("T2")).get(1);
        bench.done(new CorrectEvent(corrected(moved, day(10, 20), moved.what())));
        Event given = bench.journal.history(bench.pot("T2")).get(3);
        bench.done(new CorrectEvent(corrected(given, day(1, 8), new Happening.Closed(End.SOLD, ""))));

        assertThat(bench.journal.history(bench.pot("T2")))
                .extracting(Event::day)
                .containsExactly(day(10, 14), day(10, 20), day(1, 4), day(1, 8));
        bench.done(new Remove(bench.journal.history(bench.pot("T2")).get(3)));
        bench.done(new Move(pots("T2"), Bench.SILL.id(), Stage.WARM_ROOM, day(1, 10)));
    }

    @Test
    void aFinishedPotMayStillBePlantedOutButOneThatIsGoneMayNot() {
        bench.done(new Close(pots("T1"), End.FINISHED, "", day(1, 5)));
        bench.done(new Close(pots("T2"), End.SOLD, "", day(1, 5)));

        bench.done(new CareFor(pots("T1"), Care.PLANTED_OUT, day(1, 12)));
        assertThat(bench.refused(new CareFor(pots("T1", "T2"), Care.PLANTED_OUT, day(1, 12))))
                .startsWith("T2 is done since Tue 5 Jan 2027 (sold);");
    }

    @Test
    void aPotEndsOnceAndIsNotPottedAfterwards() {
        bench.done(Bench.pots(1, "W", Optional.empty(), Optional.empty()));
        bench.done(new Close(pots("W1"), End.USED_UP, "", day(1, 5)));

        assertThat(bench.refused(new Close(pots("W1"), End.BROKEN, "", day(1, 7))))
                .isEqualTo("W1 is done since Tue 5 Jan 2027 (used up) already."
                        + " To write it otherwise, correct that entry in its history.");
        assertThat(bench.refused(new Plant(pots("W1"), Optional.empty(), day(1, 8))))
                .startsWith("W1 is done since Tue 5 Jan 2027 (used up);");
        bench.done(new Plant(pots("W1"), Optional.empty(), day(1, 4)));
    }

    @Test
    void aCorrectionKeepsWhenItWasFirstWritten() {
        Event potted = bench.journal.history(bench.pot("T1")).get(0);
        Event earlier = new Event(
                potted.id(),
                potted.subject(),
                day(10, 12),
                0,
                bench.hand.now().plusSeconds(9),
                Optional.empty(),
                potted.what());

        assertThat(bench.done(new CorrectEvent(earlier)).name()).isEqualTo("entry of T1 corrected");
        Event now = bench.journal.events().get(potted.id());
        assertThat(now.day()).isEqualTo(day(10, 12));
        assertThat(now.writtenAt()).isEqualTo(potted.writtenAt());
        assertThat(now.revisedAt()).contains(bench.hand.now());
    }

    @Test
    void aCorrectionPutsNothingBeforeThePotting() {
        Event moved = bench.journal.history(bench.pot("T1")).get(1);

        assertThat(bench.refused(new CorrectEvent(corrected(moved, day(10, 1), moved.what()))))
                .startsWith("T1 was potted on Wed 14 Oct 2026, after Thu 1 Oct 2026.");
        bench.done(new CorrectEvent(corrected(moved, day(10, 20), moved.what())));
    }

    @Test
    void aCorrectionDoesNotUndoThePotting() {
        Event potted = bench.journal.history(bench.pot("T1")).get(0);

        assertThat(bench.refused(new CorrectEvent(corrected(potted, potted.day(), new Happening.Jotted("dug over")))))
                .startsWith("T1 has entries that only a potted pot can have.");
    }

    /** The place it went to on the day it was first said to be potted stays known. */
    @Test
    void thePottingDayMayBeCorrectedToALaterOne() {
        Event potted = bench.journal.history(bench.pot("T1")).get(0);

        bench.done(new CorrectEvent(corrected(potted, day(10, 20), potted.what())));

        assertThat(last("T1")).isEqualTo(new Happening.Potted());
    }

    private static Event corrected(Event event, Day day, Happening what) {
        return new Event(event.id(), event.subject(), day, 0, event.writtenAt(), Optional.empty(), what);
    }

    @Test
    void aCorrectionOfWhatIsGoneOrAheadIsRefused() {
        Event potted = bench.journal.history(bench.pot("T1")).get(0);
        Event ahead = new Event(
                potted.id(), potted.subject(), day(2, 1), 0, potted.writtenAt(), Optional.empty(), potted.what());
        assertThat(bench.refused(new CorrectEvent(ahead))).contains("still to come");

        bench.done(new RemovePots(pots("T1")));
        assertThat(bench.refused(new CorrectEvent(potted))).isEqualTo(Bench.GONE);
    }
}
