// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.words.line.Bench;

class CautionWordsTest {
    private final Bench bench = Shelves.bench();
    private final CautionWords words =
            new CautionWords(Handbook.standard(), bench.journal().settings());

    @Test
    void aKindsOwnCautionsCarryTheSourcesMark() {
        assertThat(words.of(new Kind("tulip", "Triumph")))
                .hasSize(2)
                .allMatch(says -> says.endsWith(" (▫)"))
                .anyMatch(says -> says.contains("vet"))
                .anyMatch(says -> says.contains("rash"));
        assertThat(words.brief(Kind.of("crocus"))).isEqualTo("Upsets the stomach of cats and dogs. (▫)");
    }

    @Test
    void autumnCrocusIsToldFromCrocus() {
        assertThat(words.of(Kind.of("crocus"))).anyMatch(says -> says.contains("Autumn crocus"));
    }

    @Test
    void whatHoldsForEveryBulbIsSaidOnce() {
        assertThat(words.general())
                .doesNotHaveDuplicates()
                .anyMatch(says -> says.contains("poison centre"))
                .anyMatch(says -> says.contains("Legionella"))
                .noneMatch(says -> says.contains("fridge"));
    }

    @Test
    void whatNobodyPublishedDoesNotCarryTheHandbooksMark() {
        assertThat(words.of(Kind.of("squill")))
                .containsExactly(
                        "Nothing official was found on it: treat it as harmful, and keep pets away. (common practice)");
        assertThat(words.brief(Kind.of("squill"))).endsWith("(common practice)");
    }

    @Test
    void beforePottingOneLineIsEnough() {
        assertThat(words.beforePotting().orElseThrow())
                .contains("gloves", "wet the potting mix", "dust")
                .endsWith(" (▫)")
                .hasSizeLessThanOrEqualTo(72);
    }

    /** Of every kind of the handbook, with and without a class: it sends to those who know, or says that nobody does. */
    @Test
    void everyKindHasItsCaution() {
        List<Kind> kinds = new Kinds(bench.journal(), Handbook.standard()).all();

        assertThat(kinds).hasSizeGreaterThan(40).allSatisfy(kind -> {
            assertThat(String.join(" ", words.of(kind))).containsPattern("poison centre|vet|doctor|keep pets away");
            assertThat(words.brief(kind)).isNotBlank();
        });
    }

    @Test
    void aKindTheHandbookDoesNotHaveIsToBeKeptAway() {
        assertThat(words.of(Kind.of("sill lily")))
                .containsExactly(
                        "Not known to be harmless: keep it away from food, children and pets. (common practice)");
        assertThat(words.brief(Kind.of("sill lily"))).startsWith("Not known to be harmless: keep it away");
    }

    @ParameterizedTest
    @EnumSource
    void everyHazardOfAPlaceHasItsCaution(Hazard hazard) {
        assertThat(words.of(placeWith(hazard))).isNotEmpty().doesNotContain("");
    }

    @Test
    void petsAndChildrenAreSentToThoseWhoKnow() {
        assertThat(words.of(placeWith(Hazard.PETS))).singleElement().asString().contains("ask a vet");
        assertThat(words.of(placeWith(Hazard.CHILDREN)))
                .singleElement()
                .asString()
                .contains("poison centre");
        assertThat(words.of(placeWith(Hazard.FUMES))).singleElement().asString().endsWith("(common practice)");
    }

    @Test
    void foodAndFruitInTheFridgeAreTwoCautions() {
        assertThat(words.of(placeWith(Hazard.FOOD, Hazard.FRUIT)))
                .hasSize(2)
                .anyMatch(says -> says.contains("no food"))
                .anyMatch(says -> says.contains("ripening fruit"));
        assertThat(words.of(placeWith(Hazard.FROST)))
                .containsExactly(
                        "A pot freezes through where the ground does not: shelter it before it is under -2 C (▫).");
    }

    @Test
    void aPlaceWithoutHazardsHasNone() {
        assertThat(words.of(placeWith())).isEmpty();
    }

    private static Place placeWith(Hazard... hazards) {
        Place plain = Place.of(new Id<>(1, 1), "garage fridge", Sort.FRIDGE);
        Set<Hazard> all = EnumSet.noneOf(Hazard.class);
        all.addAll(List.of(hazards));
        return new Place(
                plain.id(),
                plain.name(),
                plain.sort(),
                plain.serves(),
                plain.usual(),
                plain.coldDays(),
                "",
                plain.room(),
                plain.checkEveryDays(),
                plain.bridges(),
                all,
                "");
    }
}
