// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Variety;
import sillbook.plan.PlanNow;
import sillbook.plan.Trouble;
import sillbook.plan.Trouble.Cure;
import sillbook.plan.Trouble.Sort;
import sillbook.reckon.dates.DaySpan;

class TroubleWordsTest {
    /** What is left of a line of 80 columns beside the sign and the margin. */
    private static final int WIDTH = 76;

    private static final DaySpan GAP = DaySpan.ofInclusive(day("2027-02-21"), day("2027-02-27"));

    private final AugustHouse house = AugustHouse.usual();
    private final PlanNow now = house.now();
    private final TroubleWords words = new TroubleWords(now, house.journal());

    private static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }

    private Id<Place> place(String name) {
        return house.journal().places().all().stream()
                .filter(place -> place.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private Id<Variety> variety(String name) {
        return house.journal().varieties().all().stream()
                .filter(variety -> variety.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private List<String> said(Sort sort, String place, DaySpan days, int had, int needed, Cure... cures) {
        return words.lines(new Trouble(
                sort,
                Set.of(1),
                place.isEmpty() ? Optional.empty() : Optional.of(place(place)),
                Optional.of(days),
                had,
                needed,
                List.of(cures)));
    }

    @Test
    void ofAPotItSaysWhichAndWhatItLacks() {
        assertThat(said(Sort.COLD_TOO_SHORT, "cellar", GAP, 70, 98, new Trouble.PotBy(1, day("2026-09-13"))))
                .containsExactly(
                        "b 'Lantern Row': 10 weeks cold by 20 Dec, it needs about 14 weeks.",
                        "Cure: pot b by Sun 13 Sep.");
        assertThat(said(Sort.COLD_TOO_LONG, "cellar", GAP, 140, 119))
                .containsExactly(
                        "b 'Lantern Row': 20 weeks in the cold; more than 17 may harm it.",
                        "Cure: pot it later, or bring it in sooner.");
        assertThat(said(Sort.NO_COLD_PLACE, "", GAP, 0, 98, new Trouble.StandAt(1, place("garage fridge"))))
                .containsExactly(
                        "b 'Lantern Row': no place for its 14 weeks of cold.", "Cure: b to the garage fridge.");
        assertThat(said(Sort.WOULD_FREEZE, "cellar", GAP, 0, -20))
                .containsExactly(
                        "b 'Lantern Row': the cellar may get below -2 C.",
                        "Cure: another place in the cold, or one that is warmed in frost.");
        assertThat(said(Sort.BULBS_SHORT, "cellar", GAP, 3, 5))
                .containsExactly(
                        "'Lantern Row' x5 are planned, and 3 are to be had.",
                        "Cure: plan anew with the bulbs that are here, or buy the rest.");
        assertThat(said(Sort.NOT_THERE, "cellar", GAP, 0, 0))
                .containsExactly(
                        "b 'Lantern Row': the cellar is not there all of 21-27 Feb.",
                        "Cure: another place, or other days.");
    }

    @Test
    void whatIsPottedTooLateSaysWhenItCanBe() {
        assertThat(said(Sort.POTTED_TOO_LATE, "cellar", GAP, 0, 0, new Trouble.BringIn(1, day("2027-01-05"))))
                .containsExactly(
                        "b 'Lantern Row': should be potted Sun 13 Sep, and cannot be before 3 Sep.",
                        "Cure: bring b in on Tue 5 Jan, not before.");
        assertThat(said(Sort.POTTED_TOO_LATE, "cellar", GAP, 0, 0, new Trouble.BringIn(1, day("2026-12-18"))))
                .last()
                .isEqualTo("Cure: bring b in on Fri 18 Dec.");
        assertThat(said(Sort.COLD_TOO_SHORT, "cellar", GAP, 0, 98, new Trouble.BringIn(2, day("2027-01-05"))))
                .last()
                .isEqualTo("Cure: bring c in on Tue 5 Jan.");
    }

    @Test
    void ofAPlaceItSaysHowManyFindRoom() {
        assertThat(said(Sort.NO_ROOM, "kitchen sill", GAP, 4, 7, new Trouble.MoreRoom(place("kitchen sill"), 3)))
                .containsExactly(
                        "Kitchen sill 21-27 Feb: 7 pots, and room for 4.",
                        "Cure: room for 3 more at the kitchen sill, or another place or day.");
    }

    @Test
    void ofAPottingDayItSaysHowManyHandsThereAre() {
        DaySpan day = DaySpan.ofInclusive(day("2026-10-03"), day("2026-10-03"));
        assertThat(said(Sort.POTTING_DAY, "", day, 4, 6))
                .containsExactly(
                        "Sat 3 Oct: 6 pots to be potted, and hands for 4 a day.",
                        "Cure: bring some in on another day, or allow more pots on a day.");
        assertThat(said(Sort.POTTING_DAY, "", day, 0, 1))
                .containsExactly(
                        "Sat 3 Oct: 1 pot to be potted, on a day that is not for potting.",
                        "Cure: bring it in on another day, or pot on that day too.");
    }

    @Test
    void ofAGapItSaysWhatWouldFlowerThen() {
        assertThat(said(
                        Sort.GAP,
                        "",
                        GAP,
                        0,
                        7,
                        new Trouble.Buy(variety("Lantern Row"), 5, day("2026-10-25"), day("2027-01-31"))))
                .containsExactly(
                        "Gap 21-27 Feb, 7 days: a pot cold by 25 Oct would flower then; no bulbs left.",
                        "Cure: buy 'Lantern Row' x5, pot them by Sun 25 Oct, bring them in on 31 Jan.");
        assertThat(said(
                        Sort.GAP,
                        "",
                        GAP,
                        0,
                        7,
                        new Trouble.Buy(variety("Linen Parade"), 5, day("2027-01-10"), day("2027-01-10"))))
                .as("what needs no cold")
                .containsExactly(
                        "Gap 21-27 Feb, 7 days: a pot potted by 10 Jan would flower then; no bulbs left.",
                        "Cure: buy 'Linen Parade' x5, pot them by Sun 10 Jan.");
        assertThat(said(Sort.GAP, "", GAP, 0, 7, new Trouble.OneMore(variety("Lantern Row"), 5, day("2027-01-31"))))
                .containsExactly(
                        "Gap 21-27 Feb, 7 days: 'Lantern Row' x5 are in no pot yet.",
                        "Cure: one more pot, 'Lantern Row' x5, brought in on Sun 31 Jan.");
        assertThat(said(Sort.GAP, "", GAP, 0, 7, new Trouble.MoreRoom(place("cellar"), 1)))
                .startsWith("Gap 21-27 Feb, 7 days: no room for one more pot at the cellar.");
    }

    @Test
    void ofAWishThatNothingMeetsItSaysSo() {
        DaySpan day = DaySpan.ofInclusive(day("2027-02-14"), day("2027-02-14"));
        assertThat(said(Sort.WISH, "", day, 1, 3, new Trouble.Choose()))
                .containsExactly(
                        "Wish 14 Feb, 2 short: no bulbs that suit it can flower then.",
                        "Cure: choose another sort for it, or wish for other days.");
        assertThat(said(Sort.GAP, "", GAP, 0, 7, new Trouble.Choose()))
                .startsWith("Gap 21-27 Feb, 7 days: no bulbs of the season can flower then.");
    }

    @ParameterizedTest
    @EnumSource
    void everySortSaysSomethingThatFitsALine(Sort sort) {
        assertThat(said(sort, "garage fridge", GAP, 4, 7))
                .allSatisfy(
                        line -> assertThat(line).hasSizeLessThanOrEqualTo(WIDTH).endsWith("."));
    }

    @Test
    void whatThePlanFindsIsSaidOfEach() {
        assertThat(now.troubles())
                .isNotEmpty()
                .allSatisfy(trouble -> assertThat(words.lines(trouble))
                        .hasSize(2)
                        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(WIDTH)));
    }

    @Test
    void whatHasNoDaysStillSaysWhoseItIs() {
        Trouble without = new Trouble(Sort.POTTING_DAY, Set.of(1), Optional.empty(), Optional.empty(), 0, 2, List.of());
        assertThat(words.says(without)).isEqualTo(": 2 pots to be potted, on a day that is not for potting.");
    }
}
