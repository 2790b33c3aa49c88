// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.ThreePoints;

class CoveringTest {
    /** One or the other of two days. */
    private static DayChances coin(int day) {
        return DayChances.of(new ThreePoints(day, day + 0.5, day + 1).triangular());
    }

    /** From day 1 or 2 on, for one day or two: on day 1 with a chance of one in two, on day 2 of three in four, on day 3 of one in four. */
    @Test
    void twoCoinsByHand() {
        Spell spell = Spell.of(coin(1), coin(1));
        assertThat(IntStream.rangeClosed(0, 4).mapToDouble(spell::chanceOn).toArray())
                .containsExactly(0, .5, .75, .25, 0);
        Covering one = Covering.of(List.of(spell), 0, 5);
        assertThat(one.chances()).containsExactly(0.0, .5, .75, .25, 0.0);
        assertThat(one.bareDays()).isEqualTo(3.5);
        Covering two = Covering.of(List.of(spell, spell.later(1)), 1, 4);
        assertThat(two.chances()).containsExactly(.5, 1 - .25 * .5, 1 - .75 * .25, .25);
        assertThat(two.on(3)).isEqualTo(1 - .75 * .25);
    }

    @Test
    void nothingBloomsOfNothing() {
        assertThat(Covering.of(List.of(), 7, 3).chances()).containsExactly(0.0, 0.0, 0.0);
        assertThat(Covering.of(List.of(), 7, 3).bareDays()).isEqualTo(3);
        assertThat(Covering.of(List.of(), 7, 0).chances()).isEmpty();
    }

    @Test
    void aDayThatIsKnownIsCertain() {
        Spell spell = Spell.of(DayChances.on(10), DayChances.on(3));
        assertThat(Covering.of(List.of(spell), 9, 5).chances()).containsExactly(0.0, 1.0, 1.0, 1.0, 0.0);
        assertThat(Spell.of(DayChances.on(10), DayChances.on(0)).chanceOn(10)).isEqualTo(1);
        assertThat(Spell.days(new ThreePoints(4.5, 4.5, 4.5)).chanceOn(5)).isEqualTo(1);
        assertThat(Spell.days(new ThreePoints(2, 5, 14)).mean()).isCloseTo(6, within(.01));
    }

    /** Worked out in numpy 2.4: two triangles, 10 14 21 and 5 7 12, to the first flower, 8 days in bloom, pots at +0, +7 and +14. */
    @ParameterizedTest
    @CsvSource({"26, 0.864425", "30, 0.813049", "40, 0.878056"})
    void threePotsAWeekApartAsWorkedOutElsewhere(int day, double expected) {
        DayChances first = DayChances.of(new ThreePoints(10, 14, 21).triangular())
                .plus(DayChances.of(new ThreePoints(5, 7, 12).triangular()));
        Spell spell = Spell.of(first, DayChances.on(8));
        Covering season = Covering.of(Stream.of(0, 7, 14).map(spell::later).toList(), 22, 25);
        assertThat(season.on(day)).isCloseTo(expected, within(5e-7));
        assertThat(25 - season.bareDays()).isCloseTo(18.926176, within(5e-7));
    }

    static IntStream seeds() {
        return IntStream.range(0, 40);
    }

    /** Against every first day of every pot with every length. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void asAllWintersTogether(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<DayChances[]> pots = IntStream.range(0, 1 + random.nextInt(3))
                .mapToObj(pot -> new DayChances[] {some(random, random.nextInt(6)), some(random, 1)})
                .toList();
        Covering season =
                Covering.of(pots.stream().map(pot -> Spell.of(pot[0], pot[1])).toList(), 2, 10);
        for (int day = 2; day < 12; day++) {
            assertThat(season.on(day)).isCloseTo(inAnyWinter(pots, day, new ArrayList<>(), 1), within(1e-12));
        }
    }

    private static DayChances some(SplittableRandom random, int least) {
        int usual = least + random.nextInt(3);
        return DayChances.of(new ThreePoints(least, usual, usual + 1 + random.nextInt(2)).triangular());
    }

    /** Of all winters those in which a pot is in bloom on a day, by how likely each is. */
    private static double inAnyWinter(List<DayChances[]> pots, int day, List<int[]> days, double likely) {
        if (days.size() == pots.size()) {
            return days.stream().anyMatch(pot -> pot[0] <= day && day < pot[0] + pot[1]) ? likely : 0;
        }
        DayChances[] pot = pots.get(days.size());
        double sum = 0;
        for (int first = 0; first <= 12; first++) {
            for (int lasts = 0; lasts <= 12; lasts++) {
                double chance = pot[0].chanceOn(first) * pot[1].chanceOn(lasts);
                if (chance > 0) {
                    days.add(new int[] {first, lasts});
                    sum += inAnyWinter(pots, day, days, likely * chance);
                    days.remove(days.size() - 1);
                }
            }
        }
        return sum;
    }
}
