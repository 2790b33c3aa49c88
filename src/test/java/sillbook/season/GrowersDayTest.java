// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Stage;

/**
 * Today over a whole winter of 150 pots in 12 batches, day by day from the first potting to the end of bloom, as the seed
 * tells it. An ordinary day is one on which no pots wait to be potted, and that follows a day on which the grower was there:
 * after an absence the lines of all its days stand together.
 */
class GrowersDayTest {
    private static final int MOST_LINES = 15;
    private static final int SHORT_ABSENCES = 12;
    private static final int LONG_ABSENCES = 60;
    private static final int LONG_ABSENCE_DAYS = 5;

    static LongStream someWinters() {
        return LongStream.range(0, 6);
    }

    static LongStream manyWinters() {
        return LongStream.range(6, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("someWinters")
    void everyDayIsShortAndAnswered(long seed) {
        live(seed);
    }

    @Tag("slow")
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("manyWinters")
    void everyDayIsShortAndAnsweredInManyWinters(long seed) {
        live(seed);
    }

    private static void live(long seed) {
        Random random = new Random(seed);
        LivedWinter winter = new LivedWinter(random);
        int absentFor = 0;
        int answers = 0;
        for (LocalDate day = LivedWinter.FIRST; !day.isAfter(LivedWinter.LAST); day = day.plusDays(1)) {
            boolean wasThere = absentFor == 0;
            Outlook morning = winter.on(day);
            nothingIsLostOrDoubled(morning);
            if (wasThere && !isPottingDay(morning)) {
                assertThat(Asked.of(morning.today())).as("lines of %s", day).hasSizeLessThanOrEqualTo(MOST_LINES);
            }
            absentFor = wasThere ? absence(random) : absentFor - 1;
            if (absentFor == 0) {
                answers += answered(winter, new Grower(winter, random, day, morning), day);
            }
        }
        assertThat(answers).as("a winter is kept by answering").isGreaterThan(LivedWinter.POTS);
        assertThat(winter.on(LivedWinter.LAST).pots(winter.season()))
                .as("the end of bloom")
                .allSatisfy(pot -> assertThat(pot.life().stage()).isIn(Stage.AFTER_BLOOM, Stage.DONE));
    }

    private static int absence(Random random) {
        if (random.nextInt(LONG_ABSENCES) == 0) {
            return LONG_ABSENCE_DAYS;
        }
        return random.nextInt(SHORT_ABSENCES) == 0 ? 1 : 0;
    }

    private static boolean isPottingDay(Outlook morning) {
        return morning.pots(morning.today().season()).stream()
                .anyMatch(pot -> pot.life().stage() == Stage.WAITING);
    }

    /** Each line that was answered is gone, or asks something else. */
    private static int answered(LivedWinter winter, Grower grower, LocalDate day) {
        List<Asked> answered = grower.live();
        List<Asked> evening = Asked.of(winter.on(day).today());
        assertThat(answered)
                .as("answered on %s", day)
                .allSatisfy(line -> assertThat(evening).noneMatch(line::isSame));
        return answered.size();
    }

    private static void nothingIsLostOrDoubled(Outlook morning) {
        List<Id<Pot>> shown = shown(morning.today());
        assertThat(shown).as("jobs of %s", morning.day()).doesNotHaveDuplicates();
        Set<Id<Pot>> heard = new HashSet<>(shown);
        morning.today().opening().forEach(opening -> heard.addAll(opening.pots()));
        List<PlaceNow> places = morning.places();
        assertThat(morning.pots(morning.today().season()))
                .as("silent on %s", morning.day())
                .filteredOn(pot -> pot.life().stage() != Stage.DONE
                        && !heard.contains(pot.life().pot().id()))
                .allMatch(pot -> isLookComing(pot, places));
    }

    /** Every pot that has a job on Today, as often as it has. */
    private static List<Id<Pot>> shown(Today today) {
        List<Id<Pot>> shown = new ArrayList<>();
        Stream.of(today.late(), today.ready(), today.due(), today.soon(), today.later())
                .flatMap(List::stream)
                .forEach(job -> shown.addAll(job.pots()));
        today.checks().forEach(round -> shown.addAll(round.settles()));
        today.inBloom().stream().flatMap(bloom -> bloom.job().stream()).forEach(job -> shown.addAll(job.pots()));
        return shown;
    }

    /** Whether a round or the daily care will ask for the pot where it stands. */
    private static boolean isLookComing(PotNow pot, List<PlaceNow> places) {
        return places.stream()
                .filter(place -> place.pots().contains(pot.life().pot().id()))
                .anyMatch(place -> place.round().isPresent()
                        || (place.place().serves() != Stage.COLD
                                && place.place().checkEveryDays() == 1));
    }
}
