// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Settings;
import sillbook.model.Wish;
import sillbook.model.WishedFor;

class WishChecksTest {
    private static final LocalDate VALENTINE = LocalDate.of(2027, 2, 14);
    private final WishChecks checks = new WishChecks(Handbook.standard(), Settings.initial(ZoneOffset.UTC));

    private static Wish wish(WishedFor asks) {
        return new Wish(new Id<>(1, 1), AugustHouse.SEASON, VALENTINE, VALENTINE, "", asks, Set.of(), "");
    }

    private List<WishCheck> of(Optional<Kind> kind, LocalDate today) {
        return checks.of(wish(WishedFor.one(kind)), today);
    }

    @Test
    void thereAreLooksTwoWeeksOneWeekAndThreeDaysBefore() {
        assertThat(of(Optional.empty(), AugustHouse.TODAY))
                .extracting(WishCheck::day)
                .containsExactly(LocalDate.of(2027, 1, 31), LocalDate.of(2027, 2, 7), LocalDate.of(2027, 2, 11));
        assertThat(of(Optional.empty(), LocalDate.of(2027, 2, 7))).hasSize(2);
    }

    /** 60 to 70 F and 50 to 60 F: Iowa State University Extension; 72 F: University of Illinois Extension. */
    @Test
    void eachHasItsLeversWithTheirSource() {
        assertThat(of(Optional.empty(), AugustHouse.TODAY).stream().flatMap(check -> check.lines().stream()))
                .containsExactly(
                        "Sun 31 Jan: buds above the leaves?",
                        "  behind: warmer, 15.5 to 21 C; by how many days is unknown",
                        "  ahead: cooler, 10 to 15.5 C; by how many days is unknown",
                        "  (Iowa State University Extension; Rutgers Cooperative Extension, Union County; "
                                + "the day of the look: common practice)",
                        "Sun 7 Feb: colour in the buds?",
                        "  behind: warmer, at most 22 C; by how many days is unknown",
                        "  ahead: shade, out of direct sun; by how many days is unknown",
                        "  (University of Illinois Extension (Schuster); the day of the look: common practice)",
                        "Thu 11 Feb: first flower open?",
                        "  behind: a spare pot; what warmth does now is unknown",
                        "  ahead: hold it cold, not below 4.4 C, for 3 days at most",
                        "  (a florists' trade guide of 2014; the day of the look: common practice)");
    }

    @Test
    void whereNoFigureExistsItIsUnknown() {
        List<WishCheck> ofPaperwhite = of(Optional.of(Kind.of("paperwhite")), AugustHouse.TODAY);
        assertThat(ofPaperwhite.get(1).behind()).startsWith("warmer, at most ");
        List<WishCheck> ofAmaryllis = of(Optional.of(Kind.of("amaryllis")), AugustHouse.TODAY);
        assertThat(ofAmaryllis.get(0).ahead()).startsWith("cooler, how warm is unknown");
    }

    @Test
    void aWishForEveryDayIsNotLookedAtBefore() {
        WishedFor every = new WishedFor(
                WishedFor.Manner.EVERY_DAY,
                1,
                Optional.empty(),
                Optional.empty(),
                "",
                false,
                Optional.empty(),
                Optional.empty());
        assertThat(checks.of(wish(every), AugustHouse.TODAY)).isEmpty();
    }
}
