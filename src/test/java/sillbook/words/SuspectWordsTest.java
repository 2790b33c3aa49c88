// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.model.Band;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Journal;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.CauseFit;
import sillbook.season.Clue;
import sillbook.season.StoodThrough;
import sillbook.season.Suspect;
import sillbook.season.Suspect.Verdict;

class SuspectWordsTest {
    private static final Journal JOURNAL = Shelves.bench().journal();
    private static final Place PLACE = JOURNAL.places().all().iterator().next();
    private static final SourceWords SOURCES = new SourceWords(Handbook.standard(), JOURNAL.settings());
    private static final LocalDate DAY = LocalDate.of(2027, 1, 6);
    private static final StoodThrough READING =
            new StoodThrough(PLACE.id(), DaySpan.ofInclusive(DAY.minusDays(7), DAY), Band.ofCelsius(-1.4, 11), DAY);
    private static final FigureInForce WEEKS =
            new FigureInForce(FigureName.COLD, new Range(14, 15, 17), Origin.ASSUMED, Optional.empty());
    private static final FigureInForce DAYS =
            new FigureInForce(FigureName.COOL_ROOM, new Range(4, 5, 7), Origin.ASSUMED, Optional.empty());

    private static Findings seen() {
        return Findings.NOTHING
                .withMoisture(Findings.Moisture.WET)
                .with(Findings.Trouble.FROST)
                .withNote("two noses soft");
    }

    static Stream<Arguments> clues() {
        String place = PLACE.name();
        return Stream.of(
                arguments(new Clue.TooCold(READING), "Wed  6 Jan  " + place + ": -1.4 C (reading)"),
                arguments(
                        new Clue.TooWarm(READING, Temperature.ofCelsius(9)),
                        "Wed  6 Jan  " + place + ": 11 C (reading)"),
                arguments(new Clue.Jotted(DAY, "frost all week"), "Wed  6 Jan  jotted: frost all week"),
                arguments(new Clue.Found(DAY, seen()), "Wed  6 Jan  seen: wet, frost, two noses soft"),
                arguments(
                        new Clue.WeeksIn(84, 77, 105, WEEKS, false),
                        "still counting: 12 weeks in, about 11 cold enough of ?15"),
                arguments(new Clue.WeeksIn(84, 84, 105, WEEKS, true), "12 weeks in of ?15"),
                arguments(new Clue.Beside(PLACE.id()), "fruit is kept in the " + place),
                arguments(new Clue.CoolRoom(DAY, 1, DAYS), "Wed  6 Jan  brought in; 1 day in a cool room of ?5"),
                arguments(
                        new Clue.NotChecked(PLACE.id(), DAY),
                        "not checked in the " + place + " since it went in, Wed 6 Jan"),
                arguments(
                        new Clue.NeverRead(List.of(PLACE.id())), "no reading from while it stood there: the " + place),
                arguments(new Clue.NeverRead(List.of()), "no reading from while it stood there"),
                arguments(
                        new Clue.ReadBetween(Temperature.ofCelsius(9), false, DAY), "no reading over 9 C since 6 Jan"),
                arguments(
                        new Clue.ReadBetween(Temperature.ofCelsius(0), true, DAY), "no reading under 0 C since 6 Jan"),
                arguments(new Clue.NothingNoted(List.of(PLACE.id())), "none noted in the " + place),
                arguments(new Clue.FoundMoist(0), "nobody wrote whether it was dry or wet"),
                arguments(new Clue.FoundMoist(3), "neither dry nor wet at 3 checks"),
                arguments(new Clue.NeverBroughtIn(), "never brought in from the cold"),
                arguments(new Clue.NeedsNoCold(), "it needs no cold"));
    }

    @ParameterizedTest
    @MethodSource("clues")
    void saysEveryClueAsALine(Clue clue, String said) {
        assertThat(new ClueWords(JOURNAL).say(clue)).isEqualTo(said);
    }

    @Test
    void noClueIsLeftOut() {
        assertThat(clues().map(each -> each.get()[0].getClass().getSimpleName()).distinct())
                .containsExactlyInAnyOrderElementsOf(Stream.of(Clue.class.getPermittedSubclasses())
                        .map(Class::getSimpleName)
                        .toList());
    }

    @Test
    void saysACauseOnOneLine() {
        Suspect suspect = new Suspect(
                Cause.FROZEN,
                Verdict.SPEAKS_FOR,
                List.of(new Clue.Jotted(DAY, "frost"), new Clue.Jotted(DAY.plusDays(1), "ice")),
                List.of());

        assertThat(new SuspectWords(JOURNAL).line(suspect))
                .isEqualTo("frozen (speaks for): Wed 6 Jan jotted: frost; Thu 7 Jan jotted: ice");
        assertThat(SuspectWords.fits(suspect)).isEmpty();
        assertThat(SuspectWords.found(suspect, SOURCES))
                .containsExactly("nothing that was marked fits it or speaks against it");
    }

    @Test
    void saysWhatFitsACauseAndWhatSpeaksAgainstIt() {
        List<CauseFit> fits = CauseFit.TABLE.stream()
                .filter(fit -> fit.cause() == Cause.FROZEN)
                .filter(fit -> fit.sign().filter(Failure.Sign.ROT::equals).isPresent()
                        || fit.roots().filter(Failure.Roots.WHITE::equals).isPresent())
                .toList();
        Suspect suspect =
                new Suspect(Cause.FROZEN, Verdict.NOTHING_SPEAKS_FOR, List.of(new Clue.NothingNoted(List.of())), fits);

        assertThat(SuspectWords.fits(suspect))
                .contains("Fits it: rot (▫). Speaks against it: roots white (common practice).");
        assertThat(new SuspectWords(JOURNAL).line(suspect))
                .endsWith(". Fits it: rot (▫). Speaks against it: roots white " + "(common practice).");
        assertThat(SuspectWords.found(suspect, SOURCES))
                .containsExactly(
                        "fits it: rot, ▫ New Mexico State University",
                        "speaks against it: roots white, common practice");
    }

    @Test
    void saysOfAFailureWhatWasWritten() {
        Failure failure = Failure.NONE
                .withSigns(Set.of(Failure.Sign.ROT))
                .withRoots(Optional.of(Failure.Roots.BROWN))
                .withCutBud("soft and grey")
                .withCause(Optional.of(Cause.FROZEN));

        assertThat(OutcomeWords.failure(failure))
                .containsExactly("rot", "roots brown", "cut bud \"soft and grey\"", "cause: frozen");
        assertThat(OutcomeWords.failure(Failure.NONE)).isEmpty();
    }
}
