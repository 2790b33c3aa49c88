// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StaysTest {
    private static final Pattern STAY = Pattern.compile("\\((\\d+) (\\d+) (\\d+)\\)");

    private static Stays stays(String text) {
        return new Stays(STAY.matcher(text)
                .results()
                .map(stay -> new Stay(
                        Long.parseLong(stay.group(1)), Long.parseLong(stay.group(2)), Integer.parseInt(stay.group(3))))
                .toList());
    }

    private static void hold(Stays stays, Stays.Allocation allocation) {
        for (int i = 0; i < stays.stays().size(); i++) {
            Stay stay = stays.stays().get(i);
            int offset = allocation.offsets().get(i);
            assertThat(offset).isBetween(0, (int) allocation.places() - stay.takes());
            for (int j = 0; j < i; j++) {
                Stay other = stays.stays().get(j);
                int beside = allocation.offsets().get(j);
                boolean isApart = offset + stay.takes() <= beside || beside + other.takes() <= offset;
                assertThat(isApart || !stay.meets(other)).isTrue();
            }
        }
    }

    /** Worked out by trying every placement, in a program of its own in Python. */
    @ParameterizedTest
    @CsvSource({
        "(0 5 1)(1 3 1)(2 8 1)(4 9 1)(6 10 1)(7 12 1), 4, 4",
        "(0 10 3)(0 4 2)(6 12 2)(4 6 2)(10 14 3)(3 7 1), 6, 6",
        "(4 6 1)(0 4 2)(6 9 2)(2 6 1)(2 5 1)(5 8 2)(0 2 2), 4, 5",
    })
    void loadAndPlaces(String text, long load, long places) {
        Stays stays = stays(text);

        Stays.Allocation allocation = stays.allocation();

        assertThat(stays.load()).isEqualTo(load);
        assertThat(allocation.places()).isEqualTo(places);
        assertThat(allocation.isProven()).isTrue();
        hold(stays, allocation);
    }

    /** Against every offset of every pot, tried without wit. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void smallOnesAgainstTryingEverything(long seed) {
        Stays stays = random(seed, 6, 3);

        Stays.Allocation allocation = stays.allocation();

        hold(stays, allocation);
        assertThat(allocation.isProven()).isTrue();
        assertThat(isPossible(stays.stays(), new ArrayList<>(), (int) allocation.places()))
                .isTrue();
        assertThat(isPossible(stays.stays(), new ArrayList<>(), (int) allocation.places() - 1))
                .isFalse();
    }

    private static Stays random(long seed, int count, int widest) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Stay> stays = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = random.nextInt(8);
            stays.add(new Stay(from, from + 1L + random.nextInt(5), 1 + random.nextInt(widest)));
        }
        return new Stays(stays);
    }

    private static boolean isPossible(List<Stay> stays, List<Integer> offsets, int height) {
        if (offsets.size() == stays.size()) {
            return true;
        }
        Stay next = stays.get(offsets.size());
        for (int at = 0; at + next.takes() <= height; at++) {
            int beginning = at;
            boolean isFree = true;
            for (int i = 0; i < offsets.size(); i++) {
                isFree &= !stays.get(i).meets(next)
                        || beginning + next.takes() <= offsets.get(i)
                        || offsets.get(i) + stays.get(i).takes() <= beginning;
            }
            offsets.add(at);
            if (isFree && isPossible(stays, offsets, height)) {
                return true;
            }
            offsets.remove(offsets.size() - 1);
        }
        return false;
    }

    /** Colouring of an interval graph: in the order of their coming, like pots never want more than the load. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void potsOfOneWidthWantJustTheLoad(long seed) {
        Stays stays = random(seed, 400, 1);

        assertThat(stays.allocation().places()).isEqualTo(stays.load());
        hold(stays, stays.allocation());
    }

    /** J. Gergov 1999: at most three times the load is ever needed. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void manyOfManyWidthsHaveABound(long seed) {
        Stays stays = random(seed, 250, 40);

        Stays.Allocation allocation = stays.allocation();

        hold(stays, allocation);
        assertThat(allocation.atLeast()).isBetween(stays.load(), allocation.places());
        assertThat(allocation.places()).isLessThanOrEqualTo(3 * stays.load());
    }

    @Test
    void whatLeavesFreesItsPlaceTheSameDay() {
        assertThat(stays("(0 5 2)(5 9 2)").allocation().places()).isEqualTo(2);
        assertThat(stays("(0 6 2)(5 9 2)").allocation().places()).isEqualTo(4);
        assertThat(stays("").load()).isZero();
        assertThat(stays("").allocation().isProven()).isTrue();
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Stay(5, 5, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Stay(5, 6, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
