// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.PottingMix;
import sillbook.plan.Supplies;
import sillbook.plan.SuppliesReading;

class SuppliesWordsTest {
    private final AugustHouse house = AugustHouse.usual();

    private String toBuy() {
        return new SuppliesWords(house.journal()).toBuy(SuppliesReading.of(house.journal(), house.plan()));
    }

    @Test
    void whatIsToBuyIsOneLine() {
        assertThat(toBuy()).isEqualTo("14 bulbs of 1 sort, 8 x pan 15 cm, 12 labels, 14.3 L of potting mix");
    }

    @Test
    void aMixOfOnesOwnIsSaidInItsParts() {
        PottingMix mix = new PottingMix(
                house.id(), "sill mix", List.of(new PottingMix.Part(3, "loam"), new PottingMix.Part(1, "sand")), "");
        house.put(mix);
        SuppliesWords words = new SuppliesWords(house.journal());
        assertThat(words.mix(new Supplies.Mix(10.2, Optional.of(mix.id()), List.of(7.7, 0.4), 0)))
                .isEqualTo("10.2 L of sill mix: 7.7 L loam, 0.4 L sand");
        assertThat(words.mix(new Supplies.Mix(10.2, Optional.empty(), List.of(), 0)))
                .isEqualTo("10.2 L of potting mix");
    }

    @Test
    void whereNothingIsToBuyItSaysSo() {
        Supplies none = new Supplies(List.of(), List.of(), List.of(), Optional.empty(), 0);
        assertThat(new SuppliesWords(house.journal()).toBuy(none)).isEqualTo("nothing");
    }

    @Test
    void containersInStockAreNotBought() {
        assertThat(new Supplies.Pots(house.id(), 3, 4, 1).toBuy()).isZero();
        house.write("container pan 15 cm, pan, 40 of them");
        assertThat(toBuy()).doesNotContain("pan");
    }
}
