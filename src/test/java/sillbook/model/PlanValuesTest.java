// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlanValuesTest {
    private static final LocalDate DAY = LocalDate.of(2027, 12, 20);

    private static Variety variety(Kind kind, String colour, Variety.Scent scent, Optional<Length> height) {
        return new Variety(
                new Id<>(1, 1),
                "Marrow Lane",
                "",
                kind,
                height,
                Variety.BloomSeason.NOT_SAID,
                colour,
                scent,
                Variety.PacketForcing.NOT_STATED,
                Variety.ForPots.NOT_MARKED,
                "");
    }

    private static WishedFor wished(Optional<Kind> kind, String colour, boolean scented, Optional<Length> tallest) {
        return new WishedFor(
                WishedFor.Manner.SOME_DAY, 1, Optional.empty(), kind, colour, scented, tallest, Optional.empty());
    }

    @Test
    void aPlanBesideAnotherIsNotAdoptedAndOneThatIsFoundSaysHowGoodItIs() {
        SeasonPlan.Rule rule = new SeasonPlan.Rule(2, 12, DAY, DAY.plusDays(60), 6, Set.of());
        SeasonPlan adopted = new SeasonPlan(
                new Id<>(5, 1),
                new Season(2027),
                "A",
                rule,
                List.of(),
                Optional.empty(),
                Optional.of(DAY),
                "for the stair");
        SeasonPlan.Search known = new SeasonPlan.Search(0, 7, 3);
        Optional<LocalDate> never = Optional.empty();

        SeasonPlan found = adopted.found(List.of(), known);
        assertThat(found)
                .isEqualTo(new SeasonPlan(
                        adopted.id(),
                        adopted.season(),
                        "A",
                        rule,
                        List.of(),
                        Optional.of(known),
                        never,
                        adopted.note()));
        Id<SeasonPlan> other = new Id<>(5, 2);
        assertThat(found.unadopted(other, "B"))
                .isEqualTo(new SeasonPlan(
                        other, adopted.season(), "B", rule, List.of(), Optional.of(known), never, adopted.note()));
        assertThat(adopted.unadopted(other, "B").adopted()).isEmpty();
    }

    @Test
    void aWishIsForWhatItNames() {
        Variety tulip = variety(
                new Kind("tulip", "Triumph"),
                "Cream flamed green",
                Variety.Scent.LIGHT,
                Optional.of(Length.ofCentimetres(45)));
        Optional<Kind> any = Optional.empty();
        assertThat(WishedFor.one(any).suits(tulip)).isTrue();
        assertThat(WishedFor.one(Optional.of(Kind.of("tulip"))).suits(tulip)).isTrue();
        assertThat(WishedFor.one(Optional.of(new Kind("tulip", "Triumph"))).suits(tulip))
                .isTrue();
        assertThat(WishedFor.one(Optional.of(new Kind("tulip", "Single Early"))).suits(tulip))
                .isFalse();
        assertThat(WishedFor.one(Optional.of(Kind.of("crocus"))).suits(tulip)).isFalse();
        assertThat(wished(any, "cream", true, Optional.of(Length.ofCentimetres(45)))
                        .suits(tulip))
                .isTrue();
        assertThat(wished(any, "blue", false, Optional.empty()).suits(tulip)).isFalse();
        assertThat(wished(any, "", false, Optional.of(Length.ofCentimetres(30))).suits(tulip))
                .isFalse();
    }

    @Test
    void aScentThatIsAskedForMustBeKnown() {
        WishedFor scented = wished(Optional.empty(), "", true, Optional.of(Length.ofCentimetres(30)));
        assertThat(scented.suits(variety(Kind.of("tulip"), "", Variety.Scent.NOT_SAID, Optional.empty())))
                .isFalse();
        assertThat(scented.suits(variety(Kind.of("tulip"), "", Variety.Scent.NONE, Optional.empty())))
                .isFalse();
        assertThat(scented.suits(variety(Kind.of("tulip"), "", Variety.Scent.STRONG, Optional.empty())))
                .isTrue();
    }

    @Test
    void aWishIsForAtLeastOnePotAndNotForAHundred() {
        for (int pots : List.of(0, 100)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new WishedFor(
                            WishedFor.Manner.EVERY_DAY,
                            pots,
                            Optional.empty(),
                            Optional.empty(),
                            "",
                            false,
                            Optional.empty(),
                            Optional.empty()));
        }
        assertThat(WishedFor.one(Optional.empty()).isEveryDay()).isFalse();
    }

    @Test
    void aRuleNamesItsPottingDaysOrHasThemAll() {
        SeasonPlan.Rule sundays = new SeasonPlan.Rule(2, 12, DAY, DAY, 3, Set.of(DayOfWeek.SUNDAY));
        assertThat(sundays.isPottingDay(LocalDate.of(2027, 10, 3))).isTrue();
        assertThat(sundays.isPottingDay(LocalDate.of(2027, 10, 4))).isFalse();
        assertThat(new SeasonPlan.Rule(2, 12, DAY, DAY, 3, Set.of()).isPottingDay(DAY))
                .isTrue();
    }

    @Test
    void aRuleThatCannotBeIsNone() {
        for (int[] numbers : new int[][] {{0, 1, 1}, {1, 0, 1}, {1, 1, 0}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new SeasonPlan.Rule(numbers[0], numbers[1], DAY, DAY, numbers[2], Set.of()));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SeasonPlan.Rule(1, 1, DAY, DAY.minusDays(1), 1, Set.of()));
    }

    @Test
    void aProposedPotHasBulbsAndIsPottedBeforeItComesIn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Proposal.Course(DAY, Optional.empty(), DAY.minusDays(1), Optional.empty()));
        Proposal.Course course = new Proposal.Course(DAY, Optional.empty(), DAY, Optional.empty());
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new Proposal(new Id<>(1, 1), 0, Optional.empty(), Optional.empty(), Optional.empty(), course));
    }

    @Test
    void aPlanThatIsChangedByHandIsNoLongerTheOneThatWasSearchedFor() {
        Proposal pot = new Proposal(
                new Id<>(1, 1),
                5,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Proposal.Course(DAY, Optional.empty(), DAY, Optional.empty()));
        SeasonPlan plan = new SeasonPlan(
                new Id<>(3, 1),
                new Season(2027),
                "A",
                new SeasonPlan.Rule(1, 12, DAY, DAY, 3, Set.of()),
                List.of(),
                Optional.of(new SeasonPlan.Search(0, 3, 9)),
                Optional.of(DAY),
                "");
        SeasonPlan changed = plan.withPots(
                List.of(pot.on(new Proposal.Course(DAY, Optional.empty(), DAY.plusDays(1), Optional.empty()))));
        assertThat(changed.search()).isEmpty();
        assertThat(changed.pots())
                .singleElement()
                .satisfies(one -> assertThat(one.course().in()).isEqualTo(DAY.plusDays(1)));
        assertThat(plan.laidAside(List.of()).adopted()).isEmpty();
        assertThat(plan.laidAside(List.of()).search()).isPresent();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SeasonPlan(
                        plan.id(), plan.season(), " ", plan.rule(), List.of(), Optional.empty(), Optional.empty(), ""));
    }

    @Test
    void aShelfHasAWidthAndADepth() {
        Length none = Length.ofCentimetres(0);
        Length some = Length.ofCentimetres(60);
        assertThatIllegalArgumentException().isThrownBy(() -> new Space.Surface(none, some));
        assertThatIllegalArgumentException().isThrownBy(() -> new Space.Surface(some, none));
        Place cellar = Place.of(new Id<>(4, 1), "cellar", Place.Sort.CELLAR);
        Space space = new Space(
                new Id<>(5, 1),
                cellar.id(),
                Optional.of(new Space.Surface(some, some)),
                Optional.empty(),
                new Place.ColdDays(MonthDay.of(10, 1), MonthDay.of(4, 1)));
        Journal journal = Journal.of(List.of(Settings.initial(java.time.ZoneOffset.UTC), cellar, space));
        assertThat(Space.of(cellar.id(), journal)).contains(space);
        assertThat(Space.of(new Id<>(4, 2), journal)).isEmpty();
    }

    @Test
    void thereAreNotFewerContainersThanNone() {
        for (int[] numbers : new int[][] {{-1, 0}, {1, -1}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Container(
                            new Id<>(6, 1),
                            "pan",
                            Container.Shape.PAN,
                            Optional.empty(),
                            Optional.empty(),
                            numbers[0],
                            numbers[1],
                            ""));
        }
    }
}
