// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What has no meaning, or is too much, is said in a sentence. */
class TaskTest {
    private static final Season SEASON = new Season(1, 10);
    private static final PotGroup POT = PotGroup.of(0, 5, 3, 4, 1);

    private static Task task(List<PotGroup> pots, DayWish... wishes) {
        return new Task(SEASON, List.of(Room.of(2)), List.of(Room.of(3)), pots, List.of(wishes));
    }

    private static PotGroup pot(List<Integer> toBloom, List<Integer> sites, ColdStay... stay) {
        return new PotGroup(0, 5, toBloom, 4, 1, 1, sites, Stream.of(stay).findFirst());
    }

    private static Arguments refused(String sentence, ThrowingCallable asked) {
        return Arguments.of(sentence, asked);
    }

    static Stream<Arguments> senseless() {
        List<Integer> steady = PotGroup.steady(0, 5, 3);
        return Stream.of(
                refused("the season ends on day 9, before it starts on day 10", () -> new Season(10, 9)),
                refused("the season is longer than 400 days", () -> new Season(0, 400)),
                refused(
                        "the season's first day is 1000001; it must be -1000000 to 1000000",
                        () -> new Season(1_000_001, 1_000_002)),
                refused("the room is -1; it must be 0 to 1000000", () -> Room.of(-1)),
                refused("the latest day 4 is before the earliest, 5", () -> PotGroup.of(5, 4, 3, 4, 1)),
                refused("more than 400 days lie from the earliest to the latest", () -> PotGroup.of(0, 400, 3, 4, 1)),
                refused("the number of days in bloom is 0; it must be 1 to 400", () -> PotGroup.of(0, 5, 3, 0, 1)),
                refused("the room a pot takes is -2; it must be 1 to 1000", () -> PotGroup.of(0, 5, 3, 4, -2)),
                refused("the number of days to bloom is -3; it must be 0 to 400", () -> PotGroup.of(0, 5, -3, 4, 1)),
                refused(
                        "there are 2 numbers of days to bloom for 6 days to come in on; one is wanted, or one for each",
                        () -> pot(List.of(3, 3), List.of())),
                refused("the number of pots is 0; it must be 1 to 500", () -> POT.withCount(0)),
                refused(
                        "the number of pots is 10000; it must be 0 to 500",
                        () -> task(Collections.nCopies(10_000, POT))),
                refused("no cold place is named", () -> new ColdStay(0, List.of())),
                refused(
                        "the number of days in the cold is -1; it must be 0 to 1000",
                        () -> new ColdStay(0, -1, List.of(0))),
                refused(
                        "the first day in the cold is 6; it must be -1000 to 5",
                        () -> pot(steady, List.of(), new ColdStay(6, List.of(0)))),
                refused(
                        "the number of sites is 0; it must be 1 to 20",
                        () -> new Task(SEASON, List.of(), List.of(), List.of(), List.of())),
                refused(
                        "the cold place is 2; no cold place is given",
                        () -> new Task(
                                SEASON,
                                List.of(Room.of(1)),
                                List.of(),
                                List.of(pot(steady, List.of(), new ColdStay(0, List.of(1)))),
                                List.of())),
                refused("the site is 2; it must be 1 to 1", () -> task(List.of(pot(steady, List.of(1))))),
                refused(
                        "the cold place is 2; it must be 1 to 1",
                        () -> task(List.of(pot(steady, List.of(), new ColdStay(0, List.of(1)))))),
                refused(
                        "the day of a wish is 11; it must be 1 to 10",
                        () -> task(List.of(POT), new DayWish(11, 1, List.of()))),
                refused(
                        "the pot of a wish is 2; it must be 1 to 1",
                        () -> task(List.of(POT), new DayWish(5, 1, List.of(1)))),
                refused(
                        "the site of a wish is 2; it must be 1 to 1",
                        () -> task(List.of(POT), new DayWish(5, 1, List.of(), List.of(1)))),
                refused("the number of pots wished for is 0; it must be 1 to 500", () -> new DayWish(5, 0, List.of())),
                refused(
                        "the number of ways to bring a pot in is 3000000; it must be 0 to 200000",
                        () -> new Task(
                                SEASON,
                                Collections.nCopies(20, Room.ENDLESS),
                                List.of(),
                                Collections.nCopies(500, PotGroup.of(0, 299, 3, 4, 1)),
                                List.of())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("senseless")
    void isRefusedInASentence(String sentence, ThrowingCallable asked) {
        assertThatThrownBy(asked).isInstanceOf(Unreckonable.class).hasMessage(sentence);
    }

    @Test
    void placesAreNamedOnceAndInOrder() {
        assertThat(new ColdStay(0, List.of(2, 1, 2)).places()).containsExactly(1, 2);
        assertThat(new DayWish(1, 1, List.of(3, 3)).groups()).containsExactly(3);
    }

    @Test
    void aLatestDayFarAwayIsRefusedToo() {
        assertThatThrownBy(() -> new PotGroup(
                        Integer.MIN_VALUE, Integer.MAX_VALUE, List.of(), 1, 1, 1, List.of(), Optional.empty()))
                .isInstanceOf(Unreckonable.class);
    }
}
