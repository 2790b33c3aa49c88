// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Failure;
import sillbook.model.Failure.Sign;
import sillbook.model.Id;
import sillbook.model.Impression;
import sillbook.model.Outcome;
import sillbook.model.Place.Sort;
import sillbook.model.Variety;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Winter;

class OutcomesTest {
    /** Five of 'Marrow Lane' and three of 'Lantern Row' in M1, five of 'Marrow Lane' in T1. */
    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .mixed("M1", "Marrow Lane", "tulip", "Lantern Row", "daffodil")
            .potted("1 oct", "cellar")
            .pot("T1", "Marrow Lane", "tulip")
            .potted("1 oct", "cellar");

    private Optional<Id<Variety>> variety(String name) {
        return house.journal().varieties().all().stream()
                .filter(one -> one.name().equals(name))
                .map(Variety::id)
                .findFirst();
    }

    private Outcome of(int id, String pot, Optional<Id<Variety>> variety, Optional<Integer> flowers, Sign... signs) {
        return new Outcome(
                new Id<>(900, id),
                house.id(pot),
                variety,
                Day.on(house.day("5 feb")),
                Optional.of(3),
                flowers,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Failure.NONE.withSigns(Set.of(signs)),
                Impression.NONE,
                "");
    }

    private List<Grown> grown(Outcome... outcomes) {
        var journal = house.journal()
                .with(List.of(outcomes).stream().<Edit>map(Edit.Put::new).toList());
        return Winters.of(journal, house.day("1 mar")).all();
    }

    private List<Grown> ofMarrowLane(List<Grown> grown) {
        return grown.stream()
                .filter(one ->
                        variety("Marrow Lane").equals(Optional.of(one.planting().variety())))
                .toList();
    }

    @Test
    void theFlowersOfAMixedPotCountOnceForThePot() {
        List<Grown> grown =
                grown(of(1, "M1", Optional.empty(), Optional.of(7)), of(2, "T1", Optional.empty(), Optional.of(5)));
        assertThat(Outcomes.of(grown).flowered()).isEqualTo(new Proportion(12, 13));
        assertThat(Outcomes.of(ofMarrowLane(grown)).flowered())
                .as("whose the seven were nobody knows")
                .isEqualTo(new Proportion(5, 5));
    }

    @Test
    void thoseCountedByVarietyAreItsOwn() {
        List<Grown> grown = grown(
                of(1, "M1", variety("Marrow Lane"), Optional.of(4)),
                of(2, "M1", variety("Lantern Row"), Optional.of(3)));
        assertThat(Outcomes.of(ofMarrowLane(grown)).flowered()).isEqualTo(new Proportion(4, 5));
        assertThat(Outcomes.of(grown).flowered()).isEqualTo(new Proportion(7, 8));
    }

    @Test
    void moreFlowersThanBulbsAreAllOfThem() {
        assertThat(Outcomes.of(grown(of(1, "T1", Optional.empty(), Optional.of(9))))
                        .flowered())
                .isEqualTo(new Proportion(5, 5));
    }

    @Test
    void aSignIsCountedOnceForEachOutcomeOfThoseWritten() {
        List<Grown> grown = grown(
                of(1, "M1", Optional.empty(), Optional.empty(), Sign.FLOPPY),
                of(2, "T1", Optional.empty(), Optional.empty()));
        assertThat(Outcomes.of(grown).signs()).containsOnly(Map.entry(Sign.FLOPPY, new Proportion(1, 2)));
        assertThat(Outcomes.of(grown()).signs()).isEmpty();
        assertThat(Outcomes.of(grown()).flowered()).isEqualTo(new Proportion(0, 0));
    }
}
