// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;
import sillbook.season.Deadline;
import sillbook.season.Outlook;
import sillbook.season.RoundDue;
import sillbook.season.Why;
import sillbook.season.WhyOfYear;
import sillbook.words.Explanation.Line;
import sillbook.words.line.Bench;

class WhyWordsTest {
    private final Bench bench = Shelves.bench();
    private final WhyWords words = new WhyWords(bench.journal(), bench.handbook());

    private Pot pot(String label) {
        return bench.journal().pot(Shelves.SEASON, label).orElseThrow();
    }

    private List<Explanation> whys(String label) {
        return bench.outlook().whys(pot(label).id()).stream().map(words::say).toList();
    }

    @Test
    void theColdSoFarIsCountedStayByStay() {
        assertThat(whys("D1").get(0))
                .isEqualTo(new Explanation(
                        "13 and a half weeks in",
                        "A day counts when the pot was potted and watered and stood in the cold, at a place that is cold on "
                                + "that day. Seven days make a week.",
                        List.of("? rule: common practice"),
                        List.of(new Line("1 Oct-3 Jan", "cellar, cold all year: all of it", "95 days")),
                        "95 days by 7 is 13.6 wk",
                        List.of(
                                "It moves with the days written: a wrong one can be corrected.",
                                "It follows the days on which its place is cold.")));
    }

    @Test
    void aStageToComeIsTheSumOfWhatHasBegunAndTheLengthsAfterIt() {
        Explanation bloom = whys("T4").stream()
                .filter(why -> why.title().startsWith("in bloom"))
                .findFirst()
                .orElseThrow();

        assertThat(bloom.title()).isEqualTo("in bloom about Tue 2 Feb");
        assertThat(bloom.sum())
                .containsExactly(
                        new Line("potted", "", "Mon 21 Sep"),
                        new Line("cold", "has begun", "Mon 21 Sep"),
                        new Line("and", "in the cold, dry weeks with it", "12, 15, 17 wk"),
                        new Line("and", "out of the cold, to the first flower", "2, 3, 4 wk"),
                        new Line("not before", "today", "Tue 12 Jan"));
        assertThat(bloom.total()).isEqualTo("26 Jan, 2 Feb, 15 Feb");
        assertThat(bloom.from())
                .contains(
                        "▫ handbook, tulip: weeks of cold 12, 15, 17 wk (well borne out)",
                        "? assumed, as for hardy bulbs: days in bloom 7, 10, 14 days");
    }

    @Test
    void comingInIsJudgedByWeeksRootsAndShoot() {
        Explanation judged = whys("T4").get(2);

        assertThat(judged.title()).isEqualTo("check first");
        assertThat(judged.sum())
                .containsExactly(
                        new Line("weeks", "cold enough on", "Mon 4 Jan"),
                        new Line("roots", "nobody looked", ""),
                        new Line("shoot", "nobody looked", ""));
        assertThat(judged.from())
                .last()
                .isEqualTo("▫ rule: Missouri Botanical Garden, Kemper Center; Which? Gardening; common practice");
    }

    @Test
    void everyWhyOfEveryPotAndPlaceHasAllItsParts() {
        Outlook outlook = bench.outlook();
        Stream<Why<?>> ofPots = bench.journal().pots().all().stream().flatMap(pot -> outlook.whys(pot.id()).stream());
        Stream<Why<?>> ofPlaces = bench.journal().places().all().stream().flatMap(place -> outlook.why(place).stream());

        Set<Class<?>> seen = new HashSet<>();
        Stream.concat(ofPots, ofPlaces).forEach(why -> {
            seen.add(why.getClass());
            assertThat(words.say(why)).satisfies(page -> {
                assertThat(page.title()).isNotBlank();
                assertThat(page.rule()).endsWith(".");
                assertThat(page.from()).isNotEmpty().allMatch(line -> "▫▪?".indexOf(line.charAt(0)) >= 0);
                assertThat(page.sum()).isNotEmpty();
                assertThat(page.total()).isNotBlank();
                assertThat(page.wouldChange()).isNotEmpty().allMatch(line -> line.endsWith("."));
            });
        });
        assertThat(seen)
                .contains(
                        Why.ColdSoFar.class,
                        Why.ColdNeeded.class,
                        Why.MayComeIn.class,
                        Why.UseBy.class,
                        Why.StageBegins.class,
                        RoundDue.class);
    }

    @Test
    void latenessCountsFromTheLastGoodDay() {
        LocalDate lastGood = LocalDate.of(2027, 1, 11);
        Wish wish = new Wish(
                new Id<>(1, 1),
                Shelves.SEASON,
                LocalDate.of(2027, 1, 30),
                LocalDate.of(2027, 1, 30),
                "",
                WishedFor.one(Optional.empty()),
                Set.of(),
                "");

        Explanation late = words.say(new Why.Late(new Deadline.ForWish(lastGood, wish), Shelves.TODAY, 1));

        assertThat(late.title()).isEqualTo("1 day late");
        assertThat(late.sum())
                .containsExactly(
                        new Line("last good day", "for its wish on Sat 30 Jan", "Mon 11 Jan"),
                        new Line("today", "", "Tue 12 Jan"));
    }

    @Test
    void aRoundFallsDueAfterItsInterval() {
        Id<Pot> pot = pot("T1").id();
        LocalDate last = LocalDate.of(2027, 1, 2);
        Place cellar = bench.journal().places().all().stream()
                .filter(place -> place.name().equals("cellar"))
                .findFirst()
                .orElseThrow();

        Explanation due = words.say(new RoundDue(
                Map.of(pot, last),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                cellar.checkEveryDays(),
                last.plusDays(10)));

        assertThat(due.title()).isEqualTo("round due Tue 12 Jan");
        assertThat(due.sum())
                .containsExactly(
                        new Line("last", "not every pot was looked at since", "Sat 2 Jan"),
                        new Line("every", "the place's own interval", "10 days"));
        assertThat(due.total()).isEqualTo("Tue 12 Jan 2027");
    }

    @Test
    void aRoundWithDryBulbsIsWeekly() {
        LocalDate last = LocalDate.of(2027, 1, 2);

        Explanation due = words.say(new RoundDue(
                Map.of(),
                Map.of(new Id<>(7, 7), last),
                Optional.empty(),
                Optional.of(last.plusDays(3)),
                7,
                last.plusDays(3)));

        assertThat(due.sum())
                .containsExactly(
                        new Line("last", "not all there was looked at since", "Sat 2 Jan"),
                        new Line("every", "with dry bulbs weekly, or the place's own interval", "7 days"),
                        new Line("or sooner", "two weeks after frost (?): any soft?", "Tue 5 Jan"));
    }

    /** From 3 January on so many days; the sources are the handbook's. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            FEED         | feed about Sun 24 Jan                  | fed, or past bloom | While it is in leaf
            WAKE         | wake: water, warm about Sun 24 Jan     | at rest since      | So many weeks of rest
            PUT_OUTDOORS | put outdoors about Sun 24 Jan          | season or bloom    | Outdoors from late May
            TAKE_INDOORS | take indoors about Sun 24 Jan          | season or bloom    | In, and to rest, by the middle or end
            START_REST   | start its rest about Sun 24 Jan        | season or bloom    | In, and to rest, by the middle or end
            REPOT        | repot about Sun 24 Jan                 | woken              | On waking, once it has been 3 years
            """)
    void aJobOfAPlantThatLivesOnSaysFromWhenItIsCounted(JobKind job, String title, String from, String rule) {
        LocalDate day = LocalDate.of(2027, 1, 3);
        Explanation said = words.say(new WhyOfYear(
                job,
                day,
                DayCount.of(14, 21, 28),
                List.of(),
                new Window(day.plusDays(14), day.plusDays(21), day.plusDays(28))));

        assertThat(said.title()).isEqualTo(title);
        assertThat(said.rule()).startsWith(rule);
        assertThat(said.sum()).first().isEqualTo(new Line(from, "", "Sun 3 Jan"));
        assertThat(said.total()).isEqualTo("17 Jan, 24 Jan, 31 Jan");
    }
}
