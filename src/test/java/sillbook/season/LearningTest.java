// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.model.PastWindows;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;
import sillbook.reckon.stages.Widening;

/** What the grower's own pots teach, and when it holds. */
class LearningTest {
    private static final Kind TULIP = Kind.of("tulip");

    private static Window bloom(Winter winter) {
        PotNow pot = winter.on("12 jan").pot(winter.id("T6"));
        return pot.ahead().stream()
                .filter(ahead -> ahead.stage() == Stage.IN_BLOOM)
                .map(Ahead::window)
                .findFirst()
                .orElseThrow();
    }

    /** Why the figures of the sixth tulip are what the five before it taught. */
    static List<WhyLearnt> learnt() {
        Winter winter = FiveTulips.sixth(FiveTulips.told());
        return winter.on("12 jan").whys(winter.id("T6")).stream()
                .filter(WhyLearnt.class::isInstance)
                .map(WhyLearnt.class::cast)
                .toList();
    }

    private static FigureInForce figure(Winter winter, FigureName name) {
        Outlook outlook = winter.on("12 jan");
        return outlook.pot(winter.id("T6")).figures().find(name).orElseThrow();
    }

    @Test
    void after_five_tulips_of_ones_own_the_sixth_is_foretold_by_them() {
        Window published = bloom(FiveTulips.sixth(winter().place("cellar", Sort.CELLAR)
                .place("stair window", Sort.COOL_ROOM)
                .place("kitchen sill", Sort.WARM_SILL)));
        Window learnt = bloom(FiveTulips.sixth(FiveTulips.told()));

        assertThat(published.likely()).isEqualTo(LocalDate.of(2027, 1, 31));
        assertThat(learnt.likely()).isAfter(published.likely());
        assertThat(learnt.width()).isLessThan(published.width());
        FigureInForce figure = figure(FiveTulips.sixth(FiveTulips.told()), FigureName.AFTER_COLD);
        assertThat(figure.origin()).isEqualTo(Origin.LEARNT_FOR_VARIETY);
        assertThat(figure.pots()).isEqualTo(5);
        assertThat(figure.sources()).isEmpty();
    }

    @Test
    void two_are_too_few_and_what_still_waits_is_none() {
        Winter winter = FiveTulips.sixth(FiveTulips.tulips(2)
                .of(2025)
                .pot("X9", "Marrow Lane", "tulip/Triumph")
                .potted("20 sep", "cellar")
                .moved("1 jan", "stair window")
                .of(2026));

        assertThat(figure(winter, FigureName.AFTER_COLD).origin()).isEqualTo(Origin.HANDBOOK_GENERAL);
    }

    @Test
    void another_variety_learns_from_those_of_its_kind() {
        Winter winter = FiveTulips.told()
                .pot("T6", "Night Marbles", "tulip/Triumph")
                .potted("21 sep", "cellar")
                .moved("10 jan", "stair window");

        assertThat(figure(winter, FigureName.AFTER_COLD).origin()).isEqualTo(Origin.LEARNT_FOR_KIND);
        assertThat(figure(winter, FigureName.IN_BLOOM).origin()).isEqualTo(Origin.LEARNT_FOR_KIND);
        assertThat(figure(winter, FigureName.COLD).origin().isLearnt()).isFalse();
    }

    @Test
    void what_is_typed_for_the_kind_gives_way_to_what_was_learnt_for_the_variety() {
        Winter winter = FiveTulips.sixth(FiveTulips.told()).own(TULIP, FigureName.AFTER_COLD, 2, 2.5, 3);

        assertThat(figure(winter, FigureName.AFTER_COLD).origin()).isEqualTo(Origin.LEARNT_FOR_VARIETY);
    }

    @Test
    void the_handbook_can_be_asked_for_instead() {
        Winter winter = FiveTulips.sixth(FiveTulips.told()).handbookFor(TULIP, FigureName.AFTER_COLD);

        assertThat(figure(winter, FigureName.AFTER_COLD).origin()).isEqualTo(Origin.HANDBOOK_GENERAL);
        assertThat(figure(winter, FigureName.IN_BLOOM).origin()).isEqualTo(Origin.LEARNT_FOR_VARIETY);
    }

    private static WhyLearnt whyLearnt(Winter winter, FigureName name) {
        return winter.on("12 jan").whys(winter.id("T6")).stream()
                .filter(WhyLearnt.class::isInstance)
                .map(WhyLearnt.class::cast)
                .filter(why -> why.length().span().figure().equals(Optional.of(name)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_was_learnt_is_still_known_where_the_handbook_was_asked_for() {
        Winter winter = FiveTulips.sixth(FiveTulips.told()).handbookFor(TULIP, FigureName.AFTER_COLD);
        WhyLearnt why = whyLearnt(winter, FigureName.AFTER_COLD);
        SetAside setAside = why.setAside().orElseThrow();

        assertThat(setAside.asked())
                .singleElement()
                .satisfies(own -> assertThat(own.scope().kind()).contains(TULIP));
        assertThat(why.length().scope().variety()).isPresent();
        assertThat(why.result()).isEqualTo(new Range(2, 3, 4)).isEqualTo(why.recomputed());
        assertThat(why.figures()).containsExactly(setAside.holds());
        assertThat(whyLearnt(winter, FigureName.IN_BLOOM).setAside()).isEmpty();
    }

    @Test
    void asking_for_the_handbook_where_nothing_was_learnt_has_nothing_to_say() {
        Winter winter = FiveTulips.sixth(FiveTulips.tulips(2)).handbookFor(TULIP, FigureName.AFTER_COLD);

        assertThat(winter.on("12 jan").whys(winter.id("T6"))).noneMatch(WhyLearnt.class::isInstance);
    }

    @Test
    void pots_made_together_and_brought_in_together_are_one_length() {
        Winter winter = FiveTulips.sixth(winter().place("cellar", Sort.CELLAR)
                .place("stair window", Sort.COOL_ROOM)
                .of(2025)
                .pots("X1-X6", "Marrow Lane", "tulip/Triumph")
                .potted("20 sep", "cellar")
                .moved("1 jan", "stair window")
                .flowered("27 jan")
                .of(2026));

        assertThat(figure(winter, FigureName.AFTER_COLD).origin()).isEqualTo(Origin.HANDBOOK_GENERAL);
    }

    @Test
    void why_says_the_pots_and_can_be_worked_out_again() {
        List<WhyLearnt> whys = learnt();

        assertThat(whys)
                .extracting(why -> why.length().span())
                .containsExactly(PlantSpan.TO_FIRST_FLOWER, PlantSpan.IN_BLOOM);
        assertThat(whys).allSatisfy(why -> assertThat(why.result()).isEqualTo(why.recomputed()));
        LearntLength length = whys.get(0).length();
        assertThat(length.own()).extracting(OwnLength::days).containsOnly(26.0);
        assertThat(length.outliers()).isEmpty();
        assertThat(length.pots()).isEqualTo(5);
        assertThat(length.asUsual().next().centre()).isBetween(24.0, 25.0);
        assertThatThrownBy(() -> new LearntLength(
                        length.scope(), length.span(), length.published(), List.of(), List.of(), Widening.NONE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_was_learnt_is_widened_where_the_windows_before_held_too_seldom() {
        Winter winter = FiveTulips.sixth(FiveTulips.told());
        Journal journal = winter.journal()
                .with(List.of(new Edit.Put(new PastWindows(new Id<>(7, 7), winter.season(), 13, 22, 160))));
        Outlook outlook = Outlook.of(journal, Handbook.standard(), winter.day("12 jan"));
        WhyLearnt why = outlook.whys(winter.id("T6")).stream()
                .filter(WhyLearnt.class::isInstance)
                .map(WhyLearnt.class::cast)
                .findFirst()
                .orElseThrow();
        LearntLength length = why.length();

        assertThat(length.widening().by()).isEqualTo(1.5);
        assertThat(length.asUsual().next().scale())
                .isEqualTo(1.5 * length.asUsual().asLearnt().scale());
        assertThat(why.recomputed()).isEqualTo(why.result());
        Range plain = learnt().get(0).result();
        assertThat(why.result().low()).isLessThan(plain.low());
        assertThat(why.result().typical()).isEqualTo(plain.typical());
        assertThat(why.result().high()).isGreaterThan(plain.high());
        assertThat(outlook.pot(winter.id("T6")).ahead().get(1).window().width())
                .isGreaterThan(bloom(winter).width());
    }

    @Test
    void the_sum_of_two_stages_is_less_doubtful_than_both_ends_together() {
        Winter winter = FiveTulips.sixth(FiveTulips.told());
        PotNow pot = winter.on("12 jan").pot(winter.id("T6"));
        Window past = pot.ahead().stream()
                .filter(ahead -> ahead.stage() == Stage.AFTER_BLOOM)
                .map(Ahead::window)
                .findFirst()
                .orElseThrow();
        Range bloom = figure(winter, FigureName.IN_BLOOM).range();

        assertThat(past.width()).isLessThan(bloom(winter).width() + (long) (bloom.high() - bloom.low()));
    }

    @Test
    void a_grower_without_any_flower_learns_nothing() {
        Winter winter = FiveTulips.sixth(winter().place("cellar", Sort.CELLAR).place("stair window", Sort.COOL_ROOM));

        assertThat(winter.on("12 jan").whys(winter.id("T6"))).noneMatch(WhyLearnt.class::isInstance);
        assertThat(Optional.of(figure(winter, FigureName.AFTER_COLD).pots())).contains(0);
    }
}
