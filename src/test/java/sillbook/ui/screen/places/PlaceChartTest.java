// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sillbook.model.ChartColumn;
import sillbook.model.DaysRead;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.model.Settings;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.season.Winter;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.ReadWinter;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.line.LineSlip;

class PlaceChartTest {
    private static final Size WIDE = new Size(120, 40);

    private static Desk over(Journal journal) {
        return Desk.over(new Snapshot(journal, ReadWinter.noon(), 412, 0)).press("3");
    }

    private static Desk told() {
        return over(ReadWinter.told());
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static Journal inFahrenheit(Journal journal) {
        Settings all = journal.settings();
        return journal.with(List.of(new Edit.Put(new Settings(
                all.zone(),
                all.seasonStart(),
                TemperatureUnit.FAHRENHEIT,
                all.lengths(),
                all.colours(),
                all.dailyCare()))));
    }

    @Test
    void aPlaceThatRanWarm() {
        Desk cellar = told().press("Down");

        Golden.check("places-read", cellar.state());
        Golden.check("places-read", cellar.state(), WIDE);
    }

    @Test
    void aPlaceThatFroze() {
        Golden.check("places-frost", told().press("Down", "Down").state());
    }

    @Test
    void aPlaceWithColdNightsShowsLowestAndHighest() {
        Desk porch = told().press("Down", "Down", "Down");

        Golden.check("places-swing", porch.state());
        Golden.check("places-swing", porch.state(), WIDE);
    }

    @Test
    void inFahrenheitTheScaleHasRoundDegreesOfItsOwn() {
        Golden.check(
                "places-fahrenheit",
                over(inFahrenheit(ReadWinter.told())).press("Down").state(),
                new Size(80, 24));
    }

    @Test
    void ofAPlaceWithLowestAndHighestOnlyNoMeanIsDrawn() {
        Desk desk = over(winter().place("crawl space", Sort.CRAWL_SPACE)
                .usually(2, 9)
                .read("1 nov", "8 nov", 5, 8)
                .read("8 nov", "15 nov", 4.5, 7)
                .read("22 nov", "29 nov", 3, 6.5)
                .read("29 nov", "6 dec", -1, 5)
                .read("3 jan", "10 jan", 9.5, 11)
                .journal());

        Golden.check("places-spans", desk.state(), new Size(80, 24));
        Golden.check("places-spans", desk.state(), WIDE);
    }

    /** Under 25 cm of soil, with the air of an invented cold valley. */
    private static Journal trench() {
        return winter().place("trench", Sort.TRENCH)
                .usually(2, 9)
                .ground(25, Optional.empty(), -6, -4, 1, 7, 13, 17, 19, 18, 13, 7, 1, -4)
                .journal();
    }

    @Test
    void aTrenchIsForetoldInDotsFromItsFirstDayOn() {
        Desk desk = over(trench());

        Golden.check("places-trench", desk.state());
        Golden.check("places-trench", desk.state(), WIDE);
    }

    @Test
    void whatWasReadInATrenchIsDrawnOverWhatWasForetold() {
        Desk desk = over(ReadWinter.at(trench())
                .warmth(
                        "trench",
                        0.7,
                        Map.of("2026-10-08", 12.0, "2026-11-10", 6.5, "2026-12-20", 2.4, "2027-01-12", 0.8))
                .last("trench", "2027-01-12T08:00:00Z", 0.9)
                .journal());

        Golden.check("places-trench-read", desk.state());
        Golden.check("places-trench-read", desk.state(), WIDE);
    }

    @Test
    void nearerTheChartHasAnAxisOfItsOwn() {
        Desk cellar = told().press("Down", "z");

        Golden.check("places-month", cellar.state());
        Golden.check("places-month", cellar.state(), WIDE);
        Golden.check("places-week", cellar.press("z").state(), new Size(80, 24));
        assertThat(all(cellar.press("z"))).contains(" cellar, 2 days");
        assertThat(all(cellar.press("z"))).contains(" cellar, season");
    }

    private static Effect.ReadChart asked(Desk desk) {
        return (Effect.ReadChart) desk.effects().get(0);
    }

    @Test
    void nearerThanByDaysTheReadingsThemselvesAreAskedFor() {
        Desk porch = told().press("Down", "Down", "Down");
        assertThat(porch.effects()).isEmpty();

        assertThat(porch.press("z").effects()).isEmpty();
        Effect.ReadChart week = asked(porch.press("z"));
        assertThat(week.columns()).isEqualTo(48);
        assertThat(week.from()).isEqualTo(Instant.parse("2027-01-05T00:00:00Z"));
        assertThat(week.toExclusive()).isEqualTo(Instant.parse("2027-01-13T00:00:00Z"));
        assertThat(porch.press("t", "Esc").effects()).isEmpty();

        Effect.ReadChart earlier = asked(porch.press("Left"));
        assertThat(earlier.from()).isEqualTo(Instant.parse("2027-01-03T00:00:00Z"));
        assertThat(asked(porch.press("Up")).place()).isNotEqualTo(earlier.place());
        assertThat(asked(porch.press("z")).columns()).isEqualTo(48);
        assertThat(porch.press("z", "z").effects()).isEmpty();
    }

    @Test
    void readingsAreDrawnWhenTheyComeAndAGapInThemStays() {
        Desk porch = told().press("Down", "Down", "Down", "z", "z");
        Effect.ReadChart asked = asked(porch);
        String byDays = all(porch);

        porch.tell(new Message.ChartRead(asked, nights(asked.columns())));

        assertThat(all(porch)).isNotEqualTo(byDays).contains("lowest  0.4");
        assertThat(porch.effects()).isEmpty();
        Golden.check("places-readings", porch.state(), new Size(80, 24));
        Golden.checkAscii("places-readings", porch.state());
    }

    /** A porch that cools each night, read every four hours but for a day. */
    private static List<ChartColumn> nights(int columns) {
        return IntStream.range(0, columns)
                .filter(column -> column < 20 || column >= 26)
                .mapToObj(column -> {
                    int mean = (int) Math.round(5500 - 4200 * Math.cos((column - 1) * Math.PI / 3) + 40 * column);
                    return new ChartColumn(column, mean - 900, mean, mean + 900);
                })
                .toList();
    }

    @Test
    void anAnswerToAnotherQuestionIsNotDrawn() {
        Desk porch = told().press("Down", "Down", "Down", "z", "z");
        Effect.ReadChart week = asked(porch);
        Desk days = porch.press("z");
        String byDays = all(days);

        assertThat(all(days.tell(new Message.ChartRead(week, nights(48))))).isEqualTo(byDays);
    }

    @Test
    void whatWasReadIsReadAnewWhenTheJournalChanges() {
        Desk porch = told().press("Down", "Down", "Down", "z", "z");
        Effect.ReadChart week = asked(porch);
        porch.tell(new Message.ChartRead(week, nights(48)));
        Snapshot now = porch.state().shown();
        Journal other = now.journal().with(DaysRead.NONE);

        assertThat(porch.tell(new Message.Changed(now)).effects()).doesNotContain(week);
        porch.tell(new Message.Changed(new Snapshot(other, ReadWinter.noon(), 1, 0)));
        assertThat(porch.effects()).hasAtLeastOneElementOfType(Effect.ReadChart.class);
    }

    @Test
    void leftAndRightMoveANearChartAndNoughtBringsTodayBack() {
        Desk cellar = told().press("Down", "z");
        String today = all(cellar);

        assertThat(all(cellar.press("Left"))).contains(" 11 Dec-5 Jan ").isNotEqualTo(today);
        assertThat(all(cellar.press("Right"))).isEqualTo(today);
        assertThat(all(cellar.press("Right", "Right"))).isNotEqualTo(today);
        assertThat(all(cellar.press("0"))).isEqualTo(today);
        assertThat(all(cellar.press("Esc"))).contains(" cellar, season");
    }

    @Test
    void whereNothingWasReadANearChartSaysSo() {
        Desk cellar = told().press("Down", "z", "z");

        for (int press = 0; press < 120; press++) {
            cellar.press("Left");
        }

        assertThat(all(cellar)).contains(" cellar, week").contains(" not read");
    }

    @Test
    void aChartOpensOnTheLastDayThatWasRead() {
        Desk loft = over(ReadWinter.at(winter().place("loft", Sort.OTHER).journal())
                .warmth("loft", 0.5, Map.of("2026-09-01", 12.0, "2026-10-01", 8.0))
                .journal());

        assertThat(all(loft.press("z")))
                .contains("loft, month")
                .contains("highest 1")
                .doesNotContain("not read");
    }

    @Test
    void ofAnotherSeasonItSaysWhatThatOneCameTo() {
        Journal journal = ReadWinter.at(
                        winter().place("loft", Sort.OTHER).usually(2, 9).journal())
                .warmth("loft", 0.5, Map.of("2025-11-01", 6.0, "2025-11-20", 6.5))
                .journal();
        Desk loft = over(journal);

        assertThat(all(loft)).contains(" loft  Not read in 2026-27.").doesNotContain("Never read");
        assertThat(all(loft.press("<")))
                .contains(" loft, season")
                .contains("read 8 %")
                .contains("since 1 Nov");
        assertThat(all(loft.press("<"))).contains(" loft  Not read in 2024-25.");
    }

    @Test
    void oneReadingIsNoCurveYet() {
        Desk loft = over(ReadWinter.at(winter().place("loft", Sort.OTHER).journal())
                .last("loft", "2027-01-12T11:00:00Z", 6.5)
                .journal());

        assertThat(loft.line(5)).contains("6.5         -       2- 9     1 h ago");
        assertThat(all(loft)).contains(" loft  Read once; the next reading begins its curve.");
        assertThat(all(loft.press("Enter"))).contains(" Read   6.5 C 1 h ago");
    }

    @Test
    void severalGapsAreCounted() {
        Journal journal = ReadWinter.at(
                        winter().place("loft", Sort.OTHER).usually(2, 9).journal())
                .day("loft", LocalDate.of(2026, 11, 1), 5, 1)
                .day("loft", LocalDate.of(2026, 11, 4), 5, 1)
                .day("loft", LocalDate.of(2026, 11, 8), 1, 1.5)
                .journal();

        assertThat(all(over(journal)))
                .contains(" 2 gaps, 5 days")
                .contains("❆ 1 d under 0")
                .contains("❆ 1 d under 2");
    }

    @Test
    void thePageAboutItShowsTheSamePicture() throws IOException {
        List<String> picture = told().press("Down").lines().subList(1, 21);

        assertThat(Files.readString(Path.of("docs/how-to/how-cold-a-place-is.md")))
                .contains(String.join("\n", picture));
    }

    @Test
    void tWritesATemperatureOfThePlace() {
        Desk desk = told().press("Down", "t");

        assertThat(desk.state().top()).isInstanceOf(LineSlip.class);
        assertThat(all(desk)).contains("    cellar ___").contains("cellar 3 to 8");
        assertThat(desk.press("Esc").state().layers().over()).isEmpty();
        assertThat(all(desk.press("t").type("3 to 8"))).contains("3 to 8 C");
    }

    @Test
    void theCardSaysHowWarmItHasBeenAndByWhichThermometer() {
        Journal journal = ReadWinter.at(winter().place("cellar", Sort.CELLAR)
                        .usually(2, 9)
                        .read("29 dec", "5 jan", 3, 8)
                        .read("5 jan", "12 jan", 4, 9.5)
                        .journal())
                .warmth("cellar", 0.5, Map.of("2026-12-01", 7.0, "2027-01-12", 9.6))
                .last("cellar", "2027-01-12T10:30:00Z", 9.6)
                .thermometer("cellar", "on the top shelf", 0.6)
                .journal();

        Golden.check("place-card-read", over(journal).press("Enter").state());
    }

    @Test
    void whyExplainsSinceWhenAPlaceIsOutOfItsBand() {
        assertThat(all(told().press("Down", "w")))
                .contains("over its band since Sat 9 Jan")
                .contains("24 h known");
    }

    @Test
    void whyExplainsTheTrialOfAPlaceWithoutPots() {
        Winter told = winter().place("cellar", Sort.CELLAR).logged("9 jan", "12 jan", 5);

        Golden.check("why-trial", over(told.journal()).press("w").state());
    }

    @Test
    void theCardSaysWhatTodaySays() {
        assertThat(all(told().press("Down", "Enter"))).contains(" Today  Cellar 9.6 C, over its 2-9 C for 4 days.");
    }

    @Test
    void ofManyReadingsTheCardNamesTheNewest() {
        Winter told = winter().place("cellar", Sort.CELLAR);
        for (int day = 1; day < 11; day++) {
            told.read(day + " dec", day + 1 + " dec", 0, day);
        }
        Desk card = over(told.journal()).press("Enter");

        assertThat(all(card)).contains("0 to 10 C since 10 Dec").contains("0 to 4 C since 4 Dec");
        assertThat(all(card)).doesNotContain("since 3 Dec").contains("        and 3 earlier ones");
    }

    @Test
    void howLongAgoGoesOnWhileThePageIsOpen() {
        Desk desk = told();

        assertThat(desk.line(5)).contains("2 h ago");
        assertThat(new Desk(desk.state().at(ReadWinter.noon().plusSeconds(3 * 3600))).line(5))
                .contains("5 h ago");
        assertThat(desk.state().at(ReadWinter.noon().plusSeconds(24 * 3600))).isEqualTo(desk.state());
    }
}
