// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.season.Lever;
import sillbook.season.Why;
import sillbook.season.WhyClimate;
import sillbook.season.WhyDrift;
import sillbook.season.Winter;
import sillbook.words.Explanation.Line;

class ClimateWhyTest {
    private static List<Why<?>> whys(Winter told) {
        Place cellar = told.journal().places().all().iterator().next();
        return told.on("12 jan").whys(cellar);
    }

    private static Explanation page(Winter told) {
        Journal journal = told.journal();
        return whys(told).get(0).fold(new WhyWords(journal, Handbook.standard()));
    }

    private static Winter cellar() {
        return winter().place("cellar", Sort.CELLAR);
    }

    @Test
    void eachDayOutOfTheBandIsNamed() {
        Explanation page =
                page(cellar().usually(2, 9).logged("1 jan", "10 jan", 8).logged("11 jan", "12 jan", 9.6));

        assertThat(page.title()).isEqualTo("over its band since Mon 11 Jan");
        assertThat(page.sum())
                .contains(new Line("Tue 12 Jan", "9.6 C, 24 h known", "mean 9.6 C"))
                .hasSize(2);
        assertThat(page.total()).isEqualTo("48 h, 9.6 C on the average");
        assertThat(page.from()).contains("▪ what is usual there, as written: 2 to 9 C");
        assertThat(page.wouldChange()).anyMatch(sentence -> sentence.contains("what is read there"));
    }

    @Test
    void ofManyDaysTheLastAreNamedAndTheBandOfAColdPlaceIsAssumed() {
        Explanation page = page(cellar().logged("1 jan", "12 jan", 1));

        assertThat(page.title()).isEqualTo("under its band since Fri 1 Jan");
        assertThat(page.sum()).first().isEqualTo(new Line("1-5 Jan", "5 days", ""));
        assertThat(page.sum()).hasSize(8);
        assertThat(page.from()).anyMatch(line -> line.startsWith("? of a place for the cold: 2 to 9 C"));
    }

    @Test
    void whatIsShownIsWorkedOutAgain() {
        Why<?> why = whys(cellar().logged("1 jan", "12 jan", 10)).get(0);

        assertThat((Object) why.recomputed()).isEqualTo(why.result());
        assertThat(why.levers()).containsExactly(Lever.READINGS);
        assertThat(why.sources()).containsExactly("common-practice");
    }

    @Test
    void inItsBandOrKnownByLowestAndHighestOnlyThereIsNothingToExplain() {
        assertThat(whys(held(cellar()).logged("1 dec", "12 jan", 5))).noneMatch(WhyClimate.class::isInstance);
        assertThat(whys(cellar().read("2 jan", "9 jan", 10, 12))).isEmpty();
        assertThat(whys(cellar())).isEmpty();
    }

    private static Winter held(Winter told) {
        return told.pot("T1", "Tuesday Coat", "tulip").potted("1 dec", "cellar");
    }

    @Test
    void theLineThroughTheLastMeansIsNamed() {
        Winter told = held(cellar().usually(2, 9));
        for (int day = 1; day <= 12; day++) {
            told = told.logged(day + " jan", day + " jan", 5 + 0.3 * day);
        }
        Explanation page = page(told);

        assertThat(page.title()).isEqualTo("over its band by Thu 14 Jan at this pace");
        assertThat(page.rule()).contains("our judgement");
        assertThat(page.sum()).hasSize(7).last().extracting(Line::comes).isEqualTo("mean 8.6 C");
        assertThat(page.total()).isEqualTo("+0.3 C a day");
        assertThat(page.from()).contains("▪ what is usual there, as written: 2 to 9 C");
        Why<?> why = whys(told).get(0);
        assertThat((Object) why.recomputed()).isEqualTo(why.result());
        assertThat(why.levers()).containsExactly(Lever.READINGS);
    }

    @Test
    void theDaysOfAFrostAreNamedAndWhatIsMadeOfIt() {
        Winter told = held(cellar().logged("20 dec", "12 jan", 5)
                .logged("1 jan", "1 jan", -9.2, 1)
                .logged("2 jan", "10 jan", -2.9, 1));
        Explanation page = page(told);

        assertThat(page.title()).isEqualTo("froze to -9.2 C on 1 Jan, last on 10 Jan");
        assertThat(page.rule()).contains("From -2 C down");
        assertThat(page.sum())
                .hasSize(8)
                .startsWith(new Line("1-3 Jan", "3 days", ""), new Line("Mon 4 Jan", "lowest", "-2.9 C"));
        assertThat(page.total()).isEqualTo("look for softness Sun 24 Jan (?)");
        assertThat(whys(told).get(0).sources()).contains("louisiana-2017");

        Explanation slight = page(held(cellar().logged("20 dec", "12 jan", 5).logged("10 jan", "10 jan", -1, 1)));
        assertThat(slight.title()).isEqualTo("down to -1 C on 10 Jan");
        assertThat(slight.total()).isEqualTo("noted only");
    }

    @Test
    void whatTellsNothingIsSaidInTheUnitOfTheJournal() {
        Winter told = held(cellar().usually(2, 9));
        for (int day = 1; day <= 12; day++) {
            told = told.logged(day + " jan", day + " jan", 5 + 0.3 * day);
        }
        WhyDrift drift = (WhyDrift) whys(told).get(0);
        assertThat(new ClimateWhy(Fahrenheit.SETTINGS).drift(drift).rule()).contains("less than 0.2 F a day");
        assertThat(page(told).rule()).contains("less than 0.1 C a day");
    }

    @Test
    void sinceWhenAPlaceIsUnreadAndWhatIsBridgedThere() {
        Winter told = held(cellar().logged("1 dec", "31 dec", 5));
        Explanation page = page(told);

        assertThat(page.title()).isEqualTo("unread 12 days");
        assertThat(page.from()).contains("readings up to 10 days apart are joined");
        assertThat(page.sum())
                .containsExactly(new Line("last day known", "", "Thu 31 Dec"), new Line("today", "", "Tue 12 Jan"));
        assertThat(page.total()).isEqualTo("12 days");
        Why<?> why = whys(told).get(0);
        assertThat((Object) why.recomputed()).isEqualTo(why.result());
        assertThat(why.levers()).containsExactly(Lever.A_READING);
    }

    @Test
    void eachDayOfATrialIsInOrOut() {
        Winter begun = cellar().usually(2, 9).logged("9 jan", "10 jan", 5).logged("11 jan", "11 jan", -1, 8);
        Explanation page = page(begun.logged("12 jan", "12 jan", 5));

        assertThat(page.title()).isEqualTo("on trial: 4 of 7 days");
        assertThat(page.sum())
                .hasSize(4)
                .contains(new Line("Mon 11 Jan", "-1 to 8 C", "out"))
                .last()
                .extracting(Line::comes)
                .isEqualTo("in");
        assertThat(page.total()).isEqualTo("3 of 4 in the band");
        Why<?> why = whys(begun.logged("12 jan", "12 jan", 5)).get(0);
        assertThat((Object) why.recomputed()).isEqualTo(why.result());
    }

    @Test
    void ofADayThatDoesNotCountItIsSaidHowManyHoursAreKnown() {
        Winter told = cellar().logged("5 jan", "10 jan", 5)
                .loggedHours("11 jan", 2.4, 5)
                .loggedHours("12 jan", 0.5, 5);
        Explanation page = page(told);

        assertThat(page.title()).isEqualTo("on trial: 6 of 7 days");
        assertThat(page.rule()).contains("fewer than 20 hours");
        assertThat(page.sum())
                .hasSize(8)
                .contains(
                        new Line("Sun 10 Jan", "5 C", "in"),
                        new Line("Mon 11 Jan", "5 C, 2 h known", "does not count"));
        assertThat(page.total()).isEqualTo("6 of 6 in the band");
    }

    @Test
    void whatBecameOfATrialRestsOnItsLastSevenDays() {
        Explanation passed = page(cellar().logged("3 jan", "5 jan", -3).logged("6 jan", "12 jan", 5));
        assertThat(passed.title()).isEqualTo("passed its trial of 7 days");
        assertThat(passed.sum()).hasSize(8).first().isEqualTo(new Line("3-5 Jan", "read, and before the seven", ""));
        assertThat(passed.total()).isEqualTo("7 of 7 in the band");
        assertThat(page(cellar().logged("3 jan", "11 jan", 5).logged("12 jan", "12 jan", -0.5, 9))
                        .title())
                .isEqualTo("failed its trial of 7 days");
    }
}
