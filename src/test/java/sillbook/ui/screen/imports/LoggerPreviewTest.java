// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sillbook.model.DateOrder;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.words.logger.Compared;
import sillbook.words.logger.Compared.Difference;
import sillbook.words.logger.Counted;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.Counted.Strange;
import sillbook.words.logger.Looked;
import sillbook.words.logger.Understood;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Clock;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Dates;
import sillbook.words.logger.Understood.Form;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;
import sillbook.words.logger.Understood.TextCode;
import sillbook.words.logger.Understood.When;

class LoggerPreviewTest {
    private static final String FILE = "~/porch-winter.csv";
    private static final Dates CLEAR = new Dates(
            Optional.of(new Found<>(DateOrder.DAY_MONTH_YEAR, Basis.SEEN)),
            Optional.of(new Proof(241, "13.11.2026 00:00", Optional.empty())),
            EnumSet.of(DateOrder.DAY_MONTH_YEAR));
    private static final Dates OPEN = new Dates(
            Optional.empty(), Optional.empty(), EnumSet.of(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR));
    private static final Compared NEWS = new Compared(
            4495,
            118,
            0,
            2,
            0,
            false,
            List.of(new Difference(88, 9100, 9400, true), new Difference(89, 9000, 9200, true)));

    private static Understood understood(Dates dates) {
        return new Understood(
                TextCode.UTF_8,
                1,
                true,
                new Found<>(Separator.SEMICOLON, Basis.SEEN),
                new Found<>(DecimalSign.COMMA, Basis.SEEN),
                new When(Form.TOGETHER, List.of(new Column(1, "Time"))),
                dates,
                new Clock(new Found<>(ZoneOffset.UTC, Basis.ASSUMED), false, false, false),
                Optional.of(new Column(2, "Temp, C")),
                List.of(new Column(2, "Temp, C")),
                new Found<>(TemperatureUnit.CELSIUS, Basis.STATED),
                false,
                List.of("LOG-2"),
                Optional.of("LOG-2"),
                LoggerFormat.OPEN);
    }

    private static Counted counted() {
        NavigableMap<LocalDate, Integer> days = new TreeMap<>();
        LocalDate first = LocalDate.of(2026, 10, 8);
        for (int day = 0; day < 97; day++) {
            days.put(first.plusDays(day), 12_500 - day * 95);
        }
        return new Counted(
                4615,
                5,
                0,
                1,
                0,
                1,
                List.of(
                        new Strange(1034, "03.11.2026 04:30;85,0", Optional.of(85_000)),
                        new Strange(2087, "(Parameter changed)", Optional.empty())),
                Optional.of(new Span(Instant.parse("2026-10-08T00:00:00Z"), Instant.parse("2027-01-12T08:30:00Z"))),
                days,
                List.of());
    }

    private static Looked looked(LoggerFormat told, Compared compared) {
        return new Looked(
                FILE,
                "porch-winter.csv",
                214_300,
                told,
                understood(CLEAR),
                Optional.of(counted()),
                Optional.of(compared));
    }

    private static Looked unclear() {
        return new Looked(
                FILE,
                "porch-winter.csv",
                214_300,
                LoggerFormat.OPEN,
                understood(OPEN),
                Optional.empty(),
                Optional.empty());
    }

    private static Desk asked() {
        return Desk.over(GrowersWinter.told().journal())
                .press("3", "Home", "i")
                .type(FILE)
                .press("Enter");
    }

    private static Id<Place> place(Desk desk) {
        return ((Effect.LookAtLogger) desk.effects().get(0)).place();
    }

    private static Desk seen(Looked looked) {
        return asked().tell(new Message.LoggerLookedAt(looked));
    }

    private static Desk clear() {
        return seen(looked(LoggerFormat.OPEN, NEWS));
    }

    @Test
    void theFileIsAskedFor() {
        Desk desk = Desk.over(GrowersWinter.told().journal()).press("3", "Home", "i");

        Golden.check("import-logger-file", desk.state());
        assertThat(desk.press("Enter").line(22)).contains("no file is named yet");
        assertThat(asked().effects()).singleElement().isInstanceOfSatisfying(Effect.LookAtLogger.class, effect -> {
            assertThat(effect.file()).isEqualTo(FILE);
            assertThat(effect.told()).isEqualTo(LoggerFormat.OPEN);
        });
    }

    @Test
    void looksAsDrawn() {
        Golden.check("import-logger", clear().press("Down").state());
    }

    @Test
    void aQuestionIsSeenFirstAndNothingCanBeKeptBefore() {
        Desk desk = seen(unclear());

        Golden.check("import-logger-asks", desk.state());
        desk.press("k");
        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).contains("Keep it, one step is off just now: a question is open.");
    }

    @Test
    void theAnswerIsWrittenAndTheFileLookedAtAgain() {
        Desk desk = seen(unclear()).press("Enter");
        Golden.check("import-logger-correct", desk.state());

        desk.type("day first").press("Enter");
        assertThat(desk.line(22)).contains("'day first' is no order of dates.");
        desk.press(new Key.Control('u')).type("dmy").press("Enter");

        LoggerFormat told = LoggerFormat.OPEN.withDates(DateOrder.DAY_MONTH_YEAR);
        assertThat(desk.effects())
                .singleElement()
                .isInstanceOfSatisfying(
                        Effect.LookAtLogger.class,
                        effect -> assertThat(effect.told()).isEqualTo(told));
        desk.tell(new Message.LoggerLookedAt(looked(told, NEWS)));
        assertThat(desk.lines())
                .anyMatch(line -> line.contains("4 495") && line.contains("new, 8 Oct 2026 to 12 Jan 2027"));
        assertThat(desk.press("Esc", "Esc").state().layers().over()).isEmpty();
    }

    @Test
    void eachThingThatWasUnderstoodCanBeCorrected() {
        assertThat(clear().press("Enter").lines()).anyMatch(line -> line.contains("Correct: layout"));
        assertThat(clear().press("Down", "Down", "Enter").lines()).anyMatch(line -> line.contains("Correct: clock"));
        assertThat(clear().press("End", "Enter").lines()).anyMatch(line -> line.contains("Correct: suspicious"));
    }

    @Test
    void linesThatStandOutAreShownOneByOne() {
        Desk desk = clear().press("v");

        Golden.check("import-logger-lines", desk.state());
        assertThat(desk.press("Enter").line(22)).contains("there is nothing to correct here");
        assertThat(desk.press("v").lines()).anyMatch(line -> line.contains("Understood"));
    }

    @Test
    void whatIsKeptIsOneStepAndTellsHowFarItIs() {
        Desk desk = clear();
        Id<Place> place = place(asked());
        desk.press("k");

        assertThat(desk.effects()).containsExactly(new Effect.TakeInLogger(FILE, LoggerFormat.OPEN, place));
        desk.tell(new Message.TakingIn(1900, 4615, OptionalLong.of(6)));
        Golden.check("import-logger-taking", desk.state());

        desk.tell(
                new Message.Kept("4615 readings taken in.", false, desk.state().shown()));
        assertThat(desk.state().layers().over()).isEmpty();
        assertThat(desk.line(23)).contains("4615 readings taken in. U takes it back.");
    }

    @Test
    void escLeavesNothingOfIt() {
        Desk desk = clear().press("k").press("Esc");

        assertThat(desk.effects()).containsExactly(new Effect.StopTakingIn());
        desk.tell(new Message.NotTakenIn("It was left; nothing of it is kept."));
        assertThat(desk.lines()).anyMatch(line -> line.contains("Understood"));
        assertThat(desk.line(22)).contains("It was left; nothing of it is kept.");
    }

    @Test
    void whereNothingIsNewThereIsNothingToKeep() {
        Desk desk = seen(looked(LoggerFormat.OPEN, new Compared(0, 4615, 0, 0, 0, true, List.of())))
                .press("k");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).contains("all of it is in the book already");
    }

    @Test
    void aFileThatComesTooLateIsNothing() {
        Desk desk = asked().press("Esc").tell(new Message.LoggerLookedAt(unclear()));

        assertThat(desk.state().layers().over()).isEmpty();
    }

    @Test
    void theJournalMayChangeMeanwhile() {
        Desk desk = clear().press("End");
        List<String> before = desk.lines();

        assertThat(desk.tell(new Message.Changed(desk.state().shown())).lines()).isEqualTo(before);
    }
}
