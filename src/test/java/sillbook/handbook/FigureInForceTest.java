// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureInForce.Bulb;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.Variety;

/** Which figure wins: the more particular before the more general, the grower's own before the handbook's. */
class FigureInForceTest {
    private static final Id<Variety> MARROW_LANE = new Id<>(1, 2);
    private static final Kind TULIP = Kind.of("tulip");
    private static final Kind TRIUMPH = new Kind("tulip", "Triumph");
    private static final Kind CAMAS = Kind.of("camas");

    private final Map<Scope, Range> own = new HashMap<>();

    private Optional<FigureInForce> cold(Bulb bulb) {
        return FigureInForce.find(
                Handbook.standard(),
                (scope, name) -> name == FigureName.COLD ? Optional.ofNullable(own.get(scope)) : Optional.empty(),
                bulb,
                FigureName.COLD);
    }

    private static FigureInForce handbook(Bulb bulb, FigureName name) {
        return FigureInForce.find(Handbook.standard(), OwnFigures.NONE, bulb, name)
                .orElseThrow();
    }

    @Test
    void the_more_particular_own_figure_wins() {
        own.put(Scope.ofAllHardy(), Range.of(10));
        Bulb bulb = Bulb.of(MARROW_LANE, TRIUMPH);
        assertThat(cold(bulb).orElseThrow().range()).isEqualTo(Range.of(10));
        assertThat(cold(bulb).orElseThrow().origin()).isEqualTo(Origin.OWN_FOR_HARDY);

        own.put(Scope.of(TULIP), Range.of(11));
        assertThat(cold(bulb).orElseThrow().range()).isEqualTo(Range.of(11));
        assertThat(cold(bulb).orElseThrow().origin()).isEqualTo(Origin.OWN_FOR_KIND);

        own.put(Scope.of(TRIUMPH), Range.of(12));
        assertThat(cold(bulb).orElseThrow().range()).isEqualTo(Range.of(12));
        assertThat(cold(bulb).orElseThrow().origin()).isEqualTo(Origin.OWN_FOR_KIND);

        own.put(Scope.of(MARROW_LANE), Range.of(13));
        assertThat(cold(bulb).orElseThrow().range()).isEqualTo(Range.of(13));
        assertThat(cold(bulb).orElseThrow().origin()).isEqualTo(Origin.OWN_FOR_VARIETY);
        assertThat(cold(Bulb.of(TRIUMPH)).orElseThrow().range()).isEqualTo(Range.of(12));
    }

    @Test
    void an_own_figure_has_no_published_source() {
        own.put(Scope.of(TULIP), Range.of(11));

        assertThat(cold(Bulb.of(TULIP)).orElseThrow().sources()).isEmpty();
        assertThat(cold(Bulb.of(TULIP)).orElseThrow().figure()).isEmpty();
    }

    @Test
    void an_own_figure_for_a_class_does_not_hold_for_another() {
        own.put(Scope.of(TRIUMPH), Range.of(12));

        assertThat(cold(Bulb.of(new Kind("tulip", "Parrot"))).orElseThrow().origin())
                .isEqualTo(Origin.HANDBOOK_KIND);
    }

    @Test
    void the_house_rule_is_not_for_kinds_without_cold() {
        own.put(Scope.ofAllHardy(), Range.of(10));

        assertThat(cold(Bulb.of(Kind.of("paperwhite")))).isEmpty();
        assertThat(cold(Bulb.of(CAMAS)).orElseThrow().origin()).isEqualTo(Origin.OWN_FOR_HARDY);
    }

    @Test
    void the_handbook_says_for_what_its_figure_was_published() {
        assertThat(handbook(Bulb.of(TRIUMPH), FigureName.HEIGHT).origin()).isEqualTo(Origin.HANDBOOK_CLASS);
        assertThat(handbook(Bulb.of(TRIUMPH), FigureName.COLD).origin()).isEqualTo(Origin.HANDBOOK_KIND);
        assertThat(handbook(Bulb.of(TRIUMPH), FigureName.COLD).range()).isEqualTo(new Range(12, 15, 17));
        assertThat(handbook(Bulb.of(TRIUMPH), FigureName.COLD).sources()).contains("colorado-state");
        assertThat(handbook(Bulb.of(TRIUMPH), FigureName.AFTER_COLD).origin()).isEqualTo(Origin.HANDBOOK_GENERAL);
    }

    @Test
    void a_kind_of_the_growers_own_borrows_from_the_kind_it_is_like() {
        Bulb borrowing = new Bulb(Optional.empty(), CAMAS, TULIP);
        own.put(Scope.of(TULIP), Range.of(11));

        assertThat(cold(borrowing).orElseThrow().range()).isEqualTo(new Range(12, 15, 17));
        assertThat(cold(borrowing).orElseThrow().origin()).isEqualTo(Origin.HANDBOOK_KIND);
        own.put(Scope.of(CAMAS), Range.of(9));
        assertThat(cold(borrowing).orElseThrow().range()).isEqualTo(Range.of(9));
    }

    @Test
    void for_a_kind_nobody_knows_the_general_figures_are_assumed() {
        FigureInForce assumed = handbook(Bulb.of(CAMAS), FigureName.COLD);

        assertThat(assumed.origin()).isEqualTo(Origin.ASSUMED);
        assertThat(assumed.range()).isEqualTo(new Range(12, 13, 16));
        assertThat(assumed.sources()).isNotEmpty();
    }

    @Test
    void a_gap_stays_a_gap_even_for_a_kind_nobody_knows() {
        assertThat(FigureInForce.find(Handbook.standard(), OwnFigures.NONE, Bulb.of(TULIP), FigureName.IN_BLOOM))
                .isEmpty();
        assertThat(FigureInForce.find(Handbook.standard(), OwnFigures.NONE, Bulb.of(CAMAS), FigureName.IN_BLOOM))
                .isEmpty();
    }

    @Test
    void an_origin_is_said_in_one_of_four_words() {
        assertThat(Origin.values())
                .extracting(Origin::word)
                .containsExactly(
                        "own", "learnt", "own", "learnt", "own", "handbook", "handbook", "handbook", "assumed");
    }
}
