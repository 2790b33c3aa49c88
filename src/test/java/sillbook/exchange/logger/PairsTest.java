// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.exchange.logger.SeriesWriter.Habit;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.words.logger.Understood.Question;

/**
 * One series of readings, written with every pair of the habits that go together: it comes back as it was, or something is asked; other numbers
 * never come.
 */
class PairsTest {
    private static final int READINGS = 40;

    /** From the 13th to the 31st of a month, over the night in which clocks are put back. */
    private static List<Taken> series(Random random) {
        List<Taken> series = new ArrayList<>();
        Instant at = Instant.parse("2026-10-24T20:00:00Z");
        int milli = 6000;
        for (int i = 0; i < READINGS; i++) {
            series.add(new Taken(at, milli, false));
            at = at.plusSeconds(3600 - 1200 * (i % 2));
            milli += (random.nextInt(161) - 90) * 10;
        }
        return series;
    }

    static Stream<Set<Habit>> pairs() {
        return SeriesWriter.pairs().stream();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void theSeriesComesBackOrSomethingIsAsked(Set<Habit> habits) {
        for (long seed = 1; seed <= 3; seed++) {
            Random random = new Random(seed);
            List<Taken> series = series(random);
            Source source = Source.of(new SeriesWriter(habits, Fixture.HOME, random).write(series));
            if (habits.contains(Habit.CUT_BY_COMMAS) && habits.size() > 1) {
                assertThat(new HashSet<>(series))
                        .as("%s, seed %d", habits, seed)
                        .containsAll(sure(source, habits));
            } else {
                LoggerFile file = look(source, LoggerFormat.OPEN);
                assertThat(read(look(source, answered(habits, file))))
                        .as("%s, seed %d", habits, seed)
                        .isEqualTo(new HashSet<>(series));
            }
        }
    }

    /** Where commas stand for two things lines may be unreadable, or all of it; but no number is another. */
    private static Set<Taken> sure(Source source, Set<Habit> habits) {
        return LoggerFile.look(source, LoggerFormat.OPEN, List.of(), Fixture.HOME)
                .map(file -> read(look(source, answered(habits, file))))
                .value()
                .orElse(Set.of());
    }

    private static LoggerFormat answered(Set<Habit> habits, LoggerFile file) {
        LoggerFormat told = LoggerFormat.OPEN;
        for (Question question : file.understood().questions()) {
            told = answered(question, told, habits, file);
        }
        return told;
    }

    private static LoggerFile look(Source source, LoggerFormat told) {
        return LoggerFile.look(source, told, List.of(), Fixture.HOME).value().orElseThrow();
    }

    /** Only what is truly open may be asked. */
    private static LoggerFormat answered(Question question, LoggerFormat told, Set<Habit> habits, LoggerFile file) {
        return switch (question) {
            case DATES -> {
                assertThat(habits).contains(Habit.TWO_DIGIT_YEARS);
                yield told.withDates(DateOrder.YEAR_MONTH_DAY);
            }
            case COLUMN -> {
                assertThat(habits).contains(Habit.SECOND_SENSOR);
                yield told.withColumn(file.understood().temperatures().get(0).number());
            }
            case DEVICE -> {
                assertThat(habits).contains(Habit.TWO_DEVICES);
                yield told.withDevice("box A");
            }
        };
    }

    private static Set<Taken> read(LoggerFile file) {
        Set<Taken> found = new HashSet<>();
        try (LoggerFeed feed = file.feed()) {
            while (feed.advance()) {
                found.add(new Taken(Instant.ofEpochSecond(feed.at()), feed.milli(), feed.isSuspicious()));
            }
        }
        return found;
    }

    @Test
    void thereAreManyPairs() {
        assertThat(SeriesWriter.pairs()).hasSizeGreaterThan(350);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14})
    void severalHabitsAtOnceGiveNoOtherNumbers(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 400; i++) {
            Set<Habit> habits = some(random);
            List<Taken> series = series(random);
            byte[] bytes = new SeriesWriter(habits, Fixture.HOME, random).write(series);
            LoggerFile.look(Source.of(bytes), LoggerFormat.OPEN, List.of(), Fixture.HOME)
                    .value()
                    .filter(file -> file.understood().questions().isEmpty())
                    .ifPresent(file ->
                            assertThat(new HashSet<>(series)).as("%s", habits).containsAll(read(file)));
        }
    }

    private static Set<Habit> some(Random random) {
        Set<Habit> habits = new HashSet<>();
        for (int i = 2 + random.nextInt(6); i > 0; i--) {
            List<Habit> all = List.of(Habit.values());
            Habit one = all.get(random.nextInt(all.size()));
            if (habits.stream().allMatch(one::goesWith)) {
                habits.add(one);
            }
        }
        return habits;
    }
}
