// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Step;
import sillbook.words.Shelves;

/** Lines as hands in a hurry write them: whatever is left out, doubled, swapped or put in, a reading comes out. */
class MutatedLinesTest {
    private static final List<String> PIECES = List.of(
            " ",
            ",",
            ", ",
            ":",
            "(",
            ")",
            "'",
            "\"",
            "x",
            "T4",
            "T1-T6",
            "99999999999",
            "-",
            "+10",
            "31 nov",
            "cellar",
            "é",
            "球根",
            "🌷",
            "\u202E",
            "\u0000",
            "note",
            "because",
            "0",
            "1/0",
            "....",
            "from",
            "\t");

    private final Bench bench = Shelves.bench();
    private final Bench bare = Shelves.bare();

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void noLineIsTooBroken(long seed) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        QuickLine.forms().forEach(form -> lines.addAll(form.examples()));
        for (int i = 0; i < 400; i++) {
            String line = lines.get(random.nextInt(lines.size()));
            for (int slip = random.nextInt(6); slip >= 0; slip--) {
                line = mutate(line, random);
            }
            assertSound(line, random.nextInt(line.length() + 1), bench);
            assertSound(line, line.length(), bare);
        }
    }

    private static void assertSound(String line, int caret, Bench bench) {
        LineReading reading = QuickLine.read(line, caret, bench);

        assertThat(reading.change().isPresent() && reading.complaint().isPresent())
                .as(line)
                .isFalse();
        reading.change()
                .ifPresent(change -> assertThat(change.on(bench.journal(), bench.hand()))
                        .as(line)
                        .isInstanceOf(Step.class));
        assertThat(reading.unknown()).allSatisfy(at -> assertThat(at.of(line)).isNotBlank());
        assertThat(reading.completions())
                .allSatisfy(completion -> assertThat(completion.applyTo(line)).contains(completion.text()));
    }

    private static String mutate(String line, Random random) {
        int at = random.nextInt(line.length() + 1);
        int end = Math.min(line.length(), at + 1 + random.nextInt(4));
        return switch (random.nextInt(4)) {
            case 0 -> line.substring(0, at) + PIECES.get(random.nextInt(PIECES.size())) + line.substring(at);
            case 1 -> line.substring(0, at) + line.substring(end);
            case 2 -> line.substring(0, end) + line.substring(at, end) + line.substring(end);
            default -> line.substring(end) + line.substring(0, end);
        };
    }
}
