// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.logger.Counted;
import sillbook.words.logger.CountedWords;
import sillbook.words.logger.UnderstoodWords;

/** Files that were damaged: none is too broken to be looked at, and each comes to an end. */
class MutationsTest {
    private static final int FILES_A_SEED = 500;
    private static final String[] PIECES = {
        "\"",
        ",",
        ";",
        "\t",
        "\n",
        "\r",
        "-",
        ".",
        "\u00B0C",
        "F",
        "31/12/2026",
        "99",
        "25:61",
        "NaN",
        "\u0000",
        "\u00FF\u00FE",
        "999999999999999",
        "1e9",
        "UTC-19:99",
        "sep=",
        " AM",
        "00",
        "Date,Temp",
        "\u00E2\u0088\u0092"
    };

    private static final List<String> ORIGINALS =
            Fixture.all().stream().map(MutationsTest::text).toList();

    private static String text(Fixture fixture) {
        try {
            return new String(Files.readAllBytes(fixture.file()), ISO_8859_1);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noFileIsTooBroken(long seed) {
        Random random = new Random(seed);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            for (int i = 0; i < FILES_A_SEED; i++) {
                String file = damaged(random);
                LoggerFormat told = random.nextBoolean()
                        ? LoggerFormat.OPEN
                        : LoggerFormat.OPEN
                                .withDates(List.of(DateOrder.values()).get(random.nextInt(3)))
                                .withColumn(1 + random.nextInt(4));
                look(file, told);
            }
        });
    }

    private static String damaged(Random random) {
        StringBuilder text = new StringBuilder(any(random));
        for (int times = 1 + random.nextInt(6); times > 0; times--) {
            damage(text, random);
        }
        return text.toString();
    }

    private static String any(Random random) {
        return ORIGINALS.get(random.nextInt(ORIGINALS.size()));
    }

    private static void damage(StringBuilder text, Random random) {
        int from = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + random.nextInt(30));
        switch (random.nextInt(6)) {
            case 0 -> text.delete(from, to);
            case 1 -> text.insert(from, text.substring(from, to));
            case 2 -> text.insert(from, PIECES[random.nextInt(PIECES.length)]);
            case 3 -> text.replace(from, to, any(random));
            case 4 -> text.insert(from, (char) random.nextInt(256));
            default -> text.setLength(from);
        }
    }

    private static void look(String file, LoggerFormat told) {
        LoggerFile.look(Source.of(file.getBytes(ISO_8859_1)), told, List.of(), Fixture.HOME)
                .fold(
                        looked -> read(file, looked),
                        why -> assertThat(why.sentence()).as(file).endsWith("."));
    }

    /** Whatever is read is counted, and can be said. */
    private static Object read(String file, LoggerFile looked) {
        UnderstoodWords words = new UnderstoodWords(looked.understood());
        assertThat(words.facts())
                .as(file)
                .allSatisfy(fact -> assertThat(fact.says()).isNotBlank());
        if (!looked.understood().questions().isEmpty()) {
            return looked.understood().questions().stream().map(words::asks).toList();
        }
        List<Long> instants = new ArrayList<>();
        try (LoggerFeed feed = looked.feed()) {
            while (feed.advance()) {
                instants.add(feed.at());
                assertThat(feed.line()).as(file).isPositive();
            }
            return said(file, feed.counted(), instants);
        }
    }

    private static Object said(String file, Counted counted, List<Long> instants) {
        assertThat(counted.readings()).as(file).isEqualTo(instants.size());
        assertThat(counted.span().map(span -> span.first().getEpochSecond()))
                .as(file)
                .isEqualTo(instants.stream().min(Long::compare));
        return new CountedWords(counted, Fixture.HOME, TemperatureUnit.CELSIUS).lines(Optional.empty());
    }
}
