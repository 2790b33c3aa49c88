// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConfoundingTest {
    private static final List<String> VARIETY_PLACE = List.of("variety", "place");

    private static List<Observation> pots(String... levels) {
        return Arrays.stream(levels)
                .map(each -> Observation.of(each.length(), List.of(each.split(" "))))
                .toList();
    }

    private static Confounding of(List<Nested> nested, List<String> factors, String... levels) {
        return Confounding.of(Design.of(factors, pots(levels), nested));
    }

    /** Rank 9 of 12 columns is 1 + 4 + 2 + 2: all can be told apart (numpy's rank). */
    @Test
    void sixteenPotsAreNotConfounded() {
        Confounding found = Confounding.of(Reference.of("sixteen-pots").design("score", "cultivar", "mix", "spot"));
        assertThat(found).isEqualTo(new Confounding(12, 9, List.of()));
    }

    @Test
    void aVarietyAndAPlaceOfTheirOwnAreOneEvidence() {
        Confounding found = of(List.of(), VARIETY_PLACE, "coat fridge", "coat fridge", "lane cellar", "row cellar");
        assertThat(found.factors())
                .containsExactly(
                        new Confounded("variety", List.of(List.of("coat"), List.of("lane", "row")), List.of("place")),
                        new Confounded("place", List.of(List.of("fridge"), List.of("cellar")), List.of("variety")));
        assertThat(found.factors().get(0).parts("coat", "row")).isTrue();
        assertThat(found.factors().get(0).parts("lane", "row")).isFalse();
        assertThat(found.rank()).isEqualTo(3);
    }

    @Test
    void onePotElsewhereTies() {
        Confounding found =
                of(List.of(), VARIETY_PLACE, "coat fridge", "coat fridge", "coat cellar", "lane cellar", "row cellar");
        assertThat(found.factors()).isEmpty();
    }

    /** A chain ties as well: nothing stands in all places, and yet each step of the way can be told. */
    @Test
    void aChainTies() {
        assertThat(of(List.of(), VARIETY_PLACE, "a x", "a y", "b y", "b z", "c z")
                        .factors())
                .isEmpty();
    }

    @Test
    void kindsAboveVarietiesAreNotConfounded() {
        List<String> factors = List.of("kind", "variety");
        List<Nested> nature = List.of(new Nested("variety", "kind"));
        assertThat(of(nature, factors, "tulip coat", "tulip lane", "daffodil row")
                        .factors())
                .isEmpty();
    }

    /** All tulips in the fridge, all daffodils in the cellar: neither kinds nor varieties can be told from places. */
    @Test
    void aKindMayBeConfoundedThroughItsVarieties() {
        List<String> factors = List.of("kind", "variety", "place");
        List<Nested> nature = List.of(new Nested("variety", "kind"));
        Confounding found = of(nature, factors, "tulip coat fridge", "tulip lane fridge", "daffodil row cellar");
        assertThat(found.factors())
                .containsExactly(
                        new Confounded("kind", List.of(List.of("tulip"), List.of("daffodil")), List.of("place")),
                        new Confounded("variety", List.of(List.of("coat", "lane"), List.of("row")), List.of("place")),
                        new Confounded(
                                "place", List.of(List.of("fridge"), List.of("cellar")), List.of("kind", "variety")));
    }

    @Test
    void threeMayBeOneEvidence() {
        Confounding found = of(List.of(), List.of("variety", "mix", "place"), "a p x", "a p x", "b q y", "b q y");
        assertThat(found.factors())
                .extracting(Confounded::with)
                .containsExactly(List.of("mix", "place"), List.of("variety", "place"), List.of("variety", "mix"));
    }

    @Test
    void nestingIsFoundWhereItIsNotSaid() {
        List<Observation> pots = pots("coat fridge", "lane fridge", "row cellar");
        assertThat(Design.of(VARIETY_PLACE, pots).nested()).containsExactly(new Nested("variety", "place"));
        assertThat(Design.of(VARIETY_PLACE, pots("a x", "a y", "b y")).nested()).isEmpty();
    }

    @Test
    void sameGroupsTwiceAreConfoundedNotNested() {
        Design design = Design.of(VARIETY_PLACE, pots("a x", "a x", "b y"));
        assertThat(design.nested()).isEmpty();
        assertThat(Confounding.of(design).factors()).hasSize(2);
    }

    @Test
    void nestingThatIsSaidMustBeSo() {
        List<Nested> said = List.of(new Nested("variety", "place"));
        assertThatThrownBy(() -> of(said, VARIETY_PLACE, "a x", "a y"))
                .hasMessage("variety is not nested within place");
    }
}
