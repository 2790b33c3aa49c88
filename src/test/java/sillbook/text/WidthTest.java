// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WidthTest {
    private record Range(int first, int last, boolean wide) {
        static Range parse(String line) {
            return new Range(
                    Integer.parseInt(line, 0, line.indexOf(".."), 16),
                    Integer.parseInt(line, line.indexOf("..") + 2, line.indexOf(';'), 16),
                    line.endsWith("W"));
        }
    }

    /** Against EastAsianWidth.txt of the Unicode Character Database 14.0, all of it. */
    @Test
    void wideIsWhatTheUnicodeDatabaseCallsWide() throws IOException {
        Path database = Path.of("src/test/resources/sillbook/text/east-asian-width-14.0.txt");
        List<Range> ranges = Files.readAllLines(database).stream()
                .filter(line -> !line.startsWith("#"))
                .map(Range::parse)
                .toList();

        assertThat(ranges).hasSizeGreaterThan(700);
        for (Range range : ranges) {
            for (int codePoint = range.first(); codePoint <= range.last(); codePoint++) {
                if (Width.of(codePoint) != 0) {
                    assertThat(Width.of(codePoint)).as("U+%04X", codePoint).isEqualTo(range.wide() ? 2 : 1);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} takes {1}")
    @CsvSource({
        "T4, 2",
        "Écru, 4",
        "'e\u0301', 1",
        "球根, 4",
        "한글, 4",
        "🌷, 2",
        "👩\u200D🌾, 2",
        "⚡, 2",
        "'⚡\uFE0F', 2",
        "🇳🇱, 2",
        "✿❀⎽⣀╎▸, 6",
        "'', 0"
    })
    void aTextIsAsWideAsItIsShown(String text, int columns) {
        assertThat(Width.of(text)).isEqualTo(columns);
    }

    @Test
    void marksAndFormatsTakeNothing() {
        assertThat(List.of(0x301, 0x20E3, 0x200B, 0x202E, 0xFE0F, 0x1160))
                .allMatch(codePoint -> Width.of(codePoint) == 0);
    }

    @Test
    void terminalsAreTrustedWithScriptsButNotWithEmoji() {
        assertThat(Width.isDoubtful(0x1F337)).isTrue();
        assertThat(Width.isDoubtful(0x26A1)).isTrue();
        assertThat(Width.isDoubtful('球')).isFalse();
        assertThat(Width.isDoubtful('✿')).isFalse();
        assertThat(Width.isDoubtful(0x20000)).isFalse();
    }
}
