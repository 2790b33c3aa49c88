// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.ThreePoints;

class SparesTest {
    /** With like chances it is the binomial distribution, here of the Hipparchus library. */
    @ParameterizedTest
    @CsvSource({"1, 1, 0.3", "5, 1, 0.3", "5, 3, 0.7", "5, 5, 0.7", "12, 4, 0.45", "3, 4, 0.9", "4, 0, 0.5"})
    void likeChancesAreBinomial(int pots, int wanted, double chance) {
        double expected = 1 - new BinomialDistribution(pots, chance).cumulativeProbability(wanted - 1);
        assertThat(Several.atLeast(wanted, Collections.nCopies(pots, chance))).isCloseTo(expected, within(1e-12));
    }

    /** Against every way in which each does or does not happen. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void unlikeChancesAreSummedOverAllWays(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Double> chances = random.doubles(seed).boxed().toList();
        for (int wanted = 0; wanted <= seed + 1; wanted++) {
            double sum = 0;
            for (int ways = 0; ways < 1 << seed; ways++) {
                double likely = 1;
                for (int i = 0; i < seed; i++) {
                    likely *= (ways >> i & 1) == 1 ? chances.get(i) : 1 - chances.get(i);
                }
                sum += Integer.bitCount(ways) >= wanted ? likely : 0;
            }
            assertThat(Several.atLeast(wanted, chances)).isCloseTo(sum, within(1e-12));
        }
    }

    /** In flower for two days from the 20th, 21st or 22nd on, with 1, 2 and 1 chances in 4: 21 or 22 days after it came in with 3 in 4, and three days beside that with none. So of two on one day and one beside, 15 in 16. */
    @Test
    void threeByHand() {
        DayChances coin = DayChances.of(new ThreePoints(10, 10.5, 11).triangular());
        Spares spares = Spares.fewest(Spell.of(coin.plus(coin), DayChances.on(2)), 100, 1)
                .orElseThrow();
        assertThat(spares.pulls()).hasSize(3);
        assertThat(spares.chance()).isCloseTo(15 / 16.0, within(1e-9));
        assertThat(spares.pulls().get(0)).isEqualTo(spares.pulls().get(1)).isBetween(78, 79);
        assertThat(spares.pulls().get(2) - spares.pulls().get(1)).isBetween(3, 5);
    }

    /** Long in flower and sure of its day: no spare is wanted, and it comes in so that the day is well inside. */
    @Test
    void whatIsSureWantsNoSpare() {
        Spell spell = Spell.of(Spell.days(new ThreePoints(16, 21, 28)), DayChances.on(14));
        Spares spares = Spares.fewest(spell, 100, 1).orElseThrow();
        assertThat(spares.pulls()).hasSize(1);
        assertThat(spares.chance()).isGreaterThan(.99);
        assertThat(spell.later(spares.pulls().get(0)).chanceOn(100)).isCloseTo(spares.chance(), within(1e-12));
    }

    /** Three hyacinths at first flower: what it answers is sure enough by counting anew, and no fewer pots 3 to 5 days apart are. */
    @ParameterizedTest
    @CsvSource({"1, 4", "1, 6", "2, 6", "3, 7"})
    void noFewerAreSureEnough(int wanted, int lasts) {
        Spell spell = Spell.of(Spell.days(new ThreePoints(14, 19, 26)), DayChances.on(lasts));
        Spares spares = Spares.fewest(spell, 60, wanted).orElseThrow();
        assertThat(chance(spell, spares.pulls(), wanted)).isCloseTo(spares.chance(), within(1e-9));
        assertThat(spares.chance()).isGreaterThanOrEqualTo(Spares.SURE);
        IntStream.range(1, spares.pulls().size())
                .forEach(fewer -> assertThat(surest(spell, fewer, wanted)).isLessThan(Spares.SURE));
    }

    /** Beside three that are there with even chances each, of which three are wanted: sure enough by counting anew, and no fewer are. */
    @Test
    void whatIsThereCountsWithItsChance() {
        Spell spell = Spell.of(Spell.days(new ThreePoints(14, 19, 26)), DayChances.on(7));
        List<Double> there = List.of(.5, .5, .5);
        Spares more = Spares.more(there, spell, 60, 3).orElseThrow();

        assertThat(chance(spell, more.pulls(), 3, there)).isCloseTo(more.chance(), within(1e-9));
        assertThat(more.chance()).isGreaterThanOrEqualTo(Spares.SURE);
        IntStream.range(1, more.pulls().size())
                .forEach(fewer -> assertThat(surest(spell, fewer, 3, there)).isLessThan(Spares.SURE));
        assertThat(Spares.more(List.of(.99, .99, .99, .99), spell, 60, 3)
                        .orElseThrow()
                        .pulls())
                .as("one is the fewest that can be said")
                .hasSize(1);
    }

    /** Of so many pots, as equally many as can be on each of two to five days, 3 to 5 apart; or as many as are wanted on one. */
    private static double surest(Spell spell, int pots, int wanted) {
        return surest(spell, pots, wanted, List.of());
    }

    private static double surest(Spell spell, int pots, int wanted, List<Double> there) {
        double[] chances = IntStream.range(0, 200)
                .mapToDouble(pull -> spell.later(pull).chanceOn(60))
                .toArray();
        double surest = 0;
        for (int days = pots == (there.isEmpty() ? wanted : 1) ? 1 : 2; days <= Math.min(pots, 5); days++) {
            for (int apart = 3; apart <= 5; apart++) {
                for (int first = 0; first <= 60; first++) {
                    List<Double> these = new ArrayList<>(there);
                    for (int pot = 0; pot < pots; pot++) {
                        these.add(chances[first + pot * days / pots * apart]);
                    }
                    surest = Math.max(surest, Several.atLeast(wanted, these));
                }
            }
        }
        return surest;
    }

    private static double chance(Spell spell, List<Integer> pulls, int wanted) {
        return chance(spell, pulls, wanted, List.of());
    }

    private static double chance(Spell spell, List<Integer> pulls, int wanted, List<Double> there) {
        return Several.atLeast(
                wanted,
                Stream.concat(
                                there.stream(),
                                pulls.stream().map(pull -> spell.later(pull).chanceOn(60)))
                        .toList());
    }

    @Test
    void whatCannotBeMadeSureIsNotAnswered() {
        Spell spell = Spell.of(Spell.days(new ThreePoints(0, 50, 100)), DayChances.on(1));
        assertThat(Spares.fewest(spell, 60, 1)).isEmpty();
        assertThat(Spares.fewest(spell, 60, Spares.MOST_WANTED)).isEmpty();
        assertThatThrownBy(() -> Spares.fewest(spell, 60, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Spares.fewest(spell, 60, Spares.MOST_WANTED + 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
