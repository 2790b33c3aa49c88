// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Warning;

/** Which figure holds, and where it comes from. Numbers are those of the handbook's data, each with its source there. */
class FiguresTest {
    private static final Kind TRIUMPH = new Kind("tulip", "Triumph");

    private static PotFigures ofPot(Winter winter) {
        return winter.on("1 nov").pot(winter.id("T1")).figures();
    }

    private static FigureInForce cold(Winter winter) {
        return ofPot(winter).find(FigureName.COLD).orElseThrow();
    }

    private static Winter tulip() {
        return winter().pot("T1", "Marrow Lane", "tulip/Triumph");
    }

    @Test
    void theHandbooksFigureIsTheLastThatIsAsked() {
        assertThat(cold(tulip()).range()).isEqualTo(new Range(12, 15, 17));
        assertThat(cold(tulip()).origin()).isEqualTo(Origin.HANDBOOK_KIND);
        assertThat(cold(tulip()).sources()).contains("colorado-state");
    }

    @Test
    void ofTheGrowersOwnTheNarrowestComesFirst() {
        Winter winter = tulip().houseRule(FigureName.COLD, 9, 10, 11);
        assertThat(cold(winter).origin()).isEqualTo(Origin.OWN_FOR_HARDY);
        winter.own(Kind.of("tulip"), FigureName.COLD, 10, 11, 12);
        assertThat(cold(winter).range().typical()).isEqualTo(11);
        winter.own(TRIUMPH, FigureName.COLD, 11, 12, 13);
        assertThat(cold(winter).range().typical()).isEqualTo(12);
        assertThat(cold(winter).origin()).isEqualTo(Origin.OWN_FOR_KIND);
        winter.ownFor("Marrow Lane", FigureName.COLD, 12, 13, 14);
        assertThat(cold(winter).range().typical()).isEqualTo(13);
        assertThat(cold(winter).origin()).isEqualTo(Origin.OWN_FOR_VARIETY);
    }

    @Test
    void theHouseRuleIsForKindsThatNeedCold() {
        Winter winter = winter().houseRule(FigureName.COLD, 9, 10, 11).pot("T1", "Linen Parade", "paperwhite");
        assertThat(ofPot(winter).find(FigureName.COLD)).isEmpty();
        assertThat(ofPot(winter).needsCold()).isFalse();
    }

    @Test
    void aKindOfTheGrowersOwnBorrowsFromTheOneItIsLike() {
        Winter winter = winter().ownKind("Star Squill", Optional.of(Kind.of("hyacinth")))
                .pot("T1", "Bluejar", "star squill");
        assertThat(cold(winter).range()).isEqualTo(new Range(10, 12, 15));
        assertThat(winter.on("1 nov").pot(winter.id("T1")).concerns()).isEmpty();
    }

    @Test
    void anUnknownKindIsTakenForAHardyOneAndThatIsSaid() {
        Winter winter = winter().pot("T1", "Bluejar", "moonflower");
        assertThat(cold(winter).origin()).isEqualTo(Origin.ASSUMED);
        assertThat(winter.on("1 nov").pot(winter.id("T1")).concerns())
                .contains(new Concern.AssumedFigures(Kind.of("moonflower")));
    }

    @Test
    void howLongFlowersLastIsTakenForGrantedWhereNobodyPublishedIt() {
        assertThat(ofPot(tulip()).find(FigureName.IN_BLOOM).orElseThrow().origin())
                .isEqualTo(Origin.ASSUMED);
        Figures figures = Figures.of(winter().journal(), Handbook.standard(), LocalDate.EPOCH);
        assertThat(figures.find(Kind.of("amaryllis"), FigureName.IN_BLOOM)
                        .orElseThrow()
                        .origin())
                .isEqualTo(Origin.HANDBOOK_KIND);
    }

    @Test
    void aMixedPotTakesTheGreatestMinimumAndTheShortestMaximum() {
        Winter winter = winter().mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth");
        assertThat(ofPot(winter).cold()).contains(DayCount.ofWeeks(12, 15, 15));
        assertThat(ofPot(winter).warnings()).isEmpty();
        assertThat(cold(winter).range().typical()).isEqualTo(15);
    }

    @Test
    void varietiesWithNoCommonTimeAreWarnedOf() {
        Winter winter = winter().mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth")
                .ownFor("Inkwell", FigureName.COLD, 6, 7, 8);
        assertThat(ofPot(winter).warnings())
                .hasOnlyElementsOfType(Warning.NoCommonTime.class)
                .hasSize(1);
        assertThat(winter.on("1 nov").pot(winter.id("T1")).concerns())
                .extracting(Concern::code)
                .contains("no-common-time");
    }

    @Test
    void coldAndNoColdInOnePotIsWarnedOf() {
        Winter winter = winter().mixed("T1", "Linen Parade", "paperwhite", "Inkwell", "hyacinth");
        assertThat(winter.on("1 nov").pot(winter.id("T1")).concerns())
                .extracting(Concern::code)
                .contains("cold-and-no-cold");
    }

    @ParameterizedTest
    @CsvSource({"-5, 0", "100000, 3640", "1, 7"})
    void aSenselessFigureIsReadAsTheNearestSensibleOne(double weeks, int days) {
        Winter winter = tulip().own(TRIUMPH, FigureName.COLD, weeks, weeks, weeks);
        assertThat(ofPot(winter).cold()).contains(DayCount.of(days));
    }

    @Test
    void everyKindOfTheHandbookCanBeReckonedWith() {
        Figures figures = Figures.of(winter().journal(), Handbook.standard(), LocalDate.EPOCH);
        assertThat(Handbook.standard().kinds()).allSatisfy(entry -> {
            assertThat(figures.isKnown(entry.kind())).isTrue();
            assertThat(figures.find(entry.kind(), FigureName.AFTER_COLD)).isPresent();
            assertThat(figures.find(entry.kind(), FigureName.COLD).isPresent()).isEqualTo(entry.needsCold());
            assertThat(figures.find(entry.kind(), FigureName.READY_SHOOT).isPresent())
                    .isEqualTo(entry.needsCold());
        });
    }
}
