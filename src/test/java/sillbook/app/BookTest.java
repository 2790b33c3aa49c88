// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sillbook.change.Change;
import sillbook.change.Close;
import sillbook.change.CorrectEvent;
import sillbook.change.Flower;
import sillbook.change.Jot;
import sillbook.change.Move;
import sillbook.change.PotUp;
import sillbook.change.Refusal;
import sillbook.change.Step;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Kind;
import sillbook.model.PastWindows;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.store.MemoryStorage;
import sillbook.store.Steps;

/** What a book does, over the double in memory. */
class BookTest {
    private static final Path FILE = Path.of("journal.sillbook");
    private static final Variety INKWELL = Variety.of(new Id<>(1, 1), "Inkwell", Kind.of("hyacinth"));
    private static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);

    private final SetClock clock = new SetClock("2027-01-12T22:30:00.123456789Z");
    private final List<Id<Pot>> foretold = new ArrayList<>();
    private final MemoryStorage storage = new MemoryStorage();
    private long lastId = 100;
    private final Bookshelf shelf = new Bookshelf(storage, clock, () -> lastId++, (journal, pots, madeOn) -> {
        foretold.addAll(pots);
        return pots.stream().map(pot -> window(journal, pot, madeOn)).toList();
    });
    private Book book;

    private static KeptWindow window(Journal journal, Id<Pot> pot, LocalDate madeOn) {
        LocalDate likely = madeOn.plusDays(journal.history(pot).size());
        return new KeptWindow(pot, Stage.IN_BLOOM, madeOn, likely, likely, likely, "so many entries");
    }

    @BeforeEach
    void begin() {
        book = shelf.begin(FILE);
        done(new WriteDown(INKWELL));
        done(new WriteDown(CELLAR));
    }

    private Result.Done done(Change change) {
        return done(book.carryOut(change));
    }

    private static Result.Done done(Result result) {
        assertThat(result).isInstanceOf(Result.Done.class);
        return (Result.Done) result;
    }

    private static PotUp potUp(int howMany) {
        return potUp(2026, howMany);
    }

    private static PotUp potUp(int season, int howMany) {
        return new PotUp(
                new Season(season),
                List.of(new Pot.Planting(INKWELL.id(), 3, Optional.empty())),
                howMany,
                "H",
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.of(Day.on(LocalDate.of(season, 10, 14))),
                Optional.of(CELLAR.id()),
                Optional.empty(),
                "");
    }

    private Id<Pot> pot(String label) {
        return book.journal().pot(new Season(2026), label).orElseThrow().id();
    }

    @Test
    void aShelfKnowsWhereAJournalIs() {
        assertThat(shelf.has(FILE)).isTrue();
        assertThat(shelf.has(Path.of("none"))).isFalse();
        assertThat(book.file()).isEqualTo(FILE);
        assertThat(shelf.open(FILE).journal()).isEqualTo(book.journal());
    }

    @Test
    void randomIdsDiffer() {
        assertThat(Bookshelf.randomIds().<Pot>next())
                .isNotEqualTo(Bookshelf.randomIds().<Pot>next());
    }

    @Test
    void beginsInTheZoneOfItsClock() {
        assertThat(book.journal().settings()).isEqualTo(Settings.initial(clock.getZone()));
    }

    @Test
    void anActIsOneStepAndSeenAtOnce() {
        Result.Done result = done(potUp(2));

        assertThat(result.step()).isEqualTo("H1-H2 'Inkwell' potted, cellar");
        assertThat(result.journal().pots().size()).isEqualTo(2);
        assertThat(book.journal()).isEqualTo(result.journal());
        assertThat(book.steps(0, 1))
                .isEqualTo(new Steps(List.of(new Steps.Listed(result.step(), book.now(), false)), 3, 0));
    }

    @Test
    void theMomentIsAsFineAsAJournalKeepsIt() {
        assertThat(book.now()).isEqualTo(Instant.parse("2027-01-12T22:30:00.123Z"));
        done(potUp(1));
        assertThat(book.journal().history(pot("H1")).get(0).writtenAt()).isEqualTo(book.now());
        assertThat(shelf.open(FILE).readAll()).isEqualTo(book.journal());
    }

    @Test
    void theDayIsThatOfTheJournalsZone() {
        assertThat(book.today()).isEqualTo(LocalDate.of(2027, 1, 12));
        done(new WriteDown(settings("Pacific/Auckland")));
        assertThat(book.today()).isEqualTo(LocalDate.of(2027, 1, 13));
        clock.pass(Duration.ofDays(2));
        assertThat(book.today()).isEqualTo(LocalDate.of(2027, 1, 15));
    }

    private static Settings settings(String zone) {
        return new Settings(
                ZoneId.of(zone),
                MonthDay.of(7, 1),
                TemperatureUnit.CELSIUS,
                LengthUnit.CENTIMETRES,
                Colours.NONE,
                true);
    }

    @Test
    void whatIsRefusedChangesNothing() {
        Journal before = book.journal();

        assertThat(book.carryOut(new Jot(List.of(new Subject.OfPlace(CELLAR.id())), " ", Day.on(book.today()))))
                .isInstanceOf(Result.Refused.class);

        assertThat(book.journal()).isEqualTo(before);
        assertThat(book.steps(0, 9).all()).isEqualTo(2);
    }

    @Test
    void decidingDoesNothing() {
        Journal before = book.journal();

        assertThat(book.decide(potUp(1))).isInstanceOf(Step.class);
        assertThat(book.decide(potUp(0))).isInstanceOf(Refusal.class);

        assertThat(book.journal()).isEqualTo(before);
        assertThat(book.steps(0, 9).all()).isEqualTo(2);
    }

    @Test
    void takesBackAndPutsBack() {
        Journal before = book.journal();
        Result.Done potted = done(potUp(1));

        assertThat(done(book.takeBack())).isEqualTo(new Result.Done(potted.step(), before));
        assertThat(done(book.putBack())).isEqualTo(potted);
        assertThat(book.putBack()).isEqualTo(new Result.Refused("There is nothing to put back."));

        done(book.takeBack());
        done(book.takeBack());
        done(book.takeBack());
        assertThat(book.takeBack()).isEqualTo(new Result.Refused("There is nothing to take back."));
    }

    @Test
    void keepsWhatWasForetoldAtPottingAndAtEachMove() {
        done(potUp(2));
        clock.pass(Duration.ofDays(1));
        done(new Move(List.of(pot("H2")), CELLAR.id(), Stage.COOL_ROOM, Day.on(book.today())));
        done(new Jot(List.of(new Subject.OfPot(pot("H1"))), "a mouse", Day.on(book.today())));

        assertThat(foretold).containsExactly(pot("H1"), pot("H2"), pot("H2"));
        assertThat(book.keptWindows(pot("H2")))
                .extracting(KeptWindow::madeOn, KeptWindow::likely)
                .containsExactly(
                        tuple(LocalDate.of(2027, 1, 12), LocalDate.of(2027, 1, 14)),
                        tuple(LocalDate.of(2027, 1, 13), LocalDate.of(2027, 1, 16)));
    }

    @Test
    void withTheFirstThatIsForetoldInASeasonIsSettledHowTrueTheWindowsBeforeWere() {
        Season second = new Season(2027);
        List<Boolean> settledWhenForetold = new ArrayList<>();
        Bookshelf learning = new Bookshelf(storage, clock, () -> lastId++, (journal, pots, madeOn) -> {
            settledWhenForetold.add(journal.pastWindows(second).isPresent());
            LocalDate likely = madeOn.plusDays(10);
            return List.of(new KeptWindow(
                    pots.iterator().next(),
                    Stage.IN_BLOOM,
                    madeOn,
                    likely,
                    likely,
                    likely,
                    "begun, after-cold (learnt)"));
        });
        book = learning.open(FILE);
        done(potUp(1));
        clock.pass(Duration.ofDays(11));
        done(new Flower(List.of(pot("H1")), BloomPoint.FIRST_FLOWER, Optional.empty(), Day.on(book.today())));
        clock.pass(Duration.ofDays(270));
        done(new WriteDown(Variety.of(new Id<>(1, 2), "Bluejar", Kind.of("iris"))));
        assertThat(book.journal().pastWindows(second))
                .as("nothing was foretold")
                .isEmpty();

        done(potUp(2027, 1));
        assertThat(book.journal().pastWindows(second))
                .get()
                .extracting(PastWindows::held, PastWindows::of, PastWindows::reach)
                .as("a day late, of half a day")
                .containsExactly(0, 1, 200);
        assertThat(settledWhenForetold).containsExactly(false, true);
        PastWindows settled = book.journal().pastWindows(second).orElseThrow();
        done(potUp(2027, 1));
        assertThat(book.journal().pastWindows(second)).as("once").contains(settled);

        done(book.takeBack());
        done(book.takeBack());
        assertThat(book.journal().pastWindows(second)).isEmpty();
    }

    @Test
    void aCorrectionForetellsNothing() {
        done(potUp(1));
        foretold.clear();
        Event potted = book.journal().history(pot("H1")).get(0);
        Event earlier = new Event(
                potted.id(),
                potted.subject(),
                Day.on(LocalDate.of(2026, 10, 12)),
                0,
                potted.writtenAt(),
                Optional.empty(),
                new Happening.Potted());

        done(new CorrectEvent(earlier));

        assertThat(foretold).isEmpty();
    }

    @Test
    void opensWithTheCurrentSeasonAndReadsTheRestWhenItIsNeeded() {
        done(potUp(1));
        Season old = new Season(2020);
        Pot pot = book.journal().pots().get(pot("H1"));
        Pot finished = new Pot(
                new Id<>(7, 7),
                old,
                "H9",
                pot.plantings(),
                pot.way(),
                pot.container(),
                pot.across(),
                pot.pottingMix(),
                pot.potting(),
                pot.batch(),
                pot.parent(),
                "");
        done(new WriteDown(finished));
        done(new Close(List.of(finished.id()), Happening.End.FINISHED, "", Day.on(LocalDate.of(2021, 4, 1))));

        Book again = shelf.open(FILE);
        assertThat(again.isWhole()).isFalse();
        assertThat(again.journal().potsOf(old)).isEmpty();
        assertThat(again.journal().potsOf(new Season(2026))).hasSize(1);

        assertThat(again.readAll()).isEqualTo(book.journal());
        assertThat(again.isWhole()).isTrue();
        assertThat(shelf.open(FILE).decide(new WriteDown(finished))).isEqualTo(book.decide(new WriteDown(finished)));
    }

    @Test
    void seesWhatAnotherWindowWrote() {
        Book other = shelf.open(FILE);
        assertThat(other.refresh()).isFalse();

        done(potUp(1));

        assertThat(other.refresh()).isTrue();
        assertThat(other.journal()).isEqualTo(book.journal());
        assertThat(other.refresh()).isFalse();
    }

    @Test
    void decidesAnewWhenAnotherWindowWroteMeanwhile() {
        Book other = shelf.open(FILE);
        other.readAll();
        done(potUp(2));

        assertThat(done(other.carryOut(potUp(1))).step()).isEqualTo("H3 'Inkwell' potted, cellar");
        assertThat(done(book.takeBack()).step()).isEqualTo("H3 'Inkwell' potted, cellar");
        assertThat(done(book.takeBack()).journal().pots().isEmpty()).isTrue();
    }

    @Test
    void tellsWhatTheStoreFinds() {
        assertThat(book.verify()).isEmpty();
        assertThat(book.isReadOnly()).isFalse();
        book.close();
    }
}
