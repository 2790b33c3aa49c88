// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the lines that {@link BufferedReader} reads, which ends them alike. */
class LinesTest {
    private static final List<String> ENDS = List.of("\n", "\r\n", "\r", "\n\n", "\r\r\n");

    /** Gives no more than a few bytes at once. */
    private static InputStream slow(String text, SplittableRandom random) {
        return new ByteArrayInputStream(text.getBytes(ISO_8859_1)) {
            @Override
            public synchronized int read(byte[] bytes, int offset, int length) {
                return super.read(bytes, offset, Math.min(length, 1 + random.nextInt(5000)));
            }
        };
    }

    private static List<String> lines(InputStream in) throws IOException {
        List<String> found = new ArrayList<>();
        try (Lines lines = new Lines(in)) {
            while (lines.advance()) {
                found.add(new String(lines.copy(), ISO_8859_1));
                assertThat(lines.number()).isEqualTo(found.size());
            }
        }
        return found;
    }

    private static List<String> expected(String text) {
        return new BufferedReader(new StringReader(text)).lines().toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "\n", "a", "a\n", "a\nb", "a\r\nb", "a\rb\r", "\na", "heading\n1,5\n2,6\n3,9", "a\r\n\r\nb"})
    void shortOnes(String text) throws IOException {
        assertThat(lines(new ByteArrayInputStream(text.getBytes(ISO_8859_1)))).isEqualTo(expected(text));
    }

    static List<Integer> seeds() {
        return List.of(1, 2, 3, 4, 5, 6);
    }

    /** Longer than what is held of it at once, with and without an end of the last line. */
    @ParameterizedTest
    @MethodSource("seeds")
    void longOnes(int seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder();
        while (text.length() < 700_000) {
            text.append("x".repeat(random.nextInt(300)))
                    .append(random.nextInt())
                    .append(ENDS.get(random.nextInt(ENDS.size())));
        }
        assertThat(lines(slow(text.toString(), random))).isEqualTo(expected(text.toString()));
        text.append("the last");
        assertThat(lines(slow(text.toString(), random))).isEqualTo(expected(text.toString()));
    }
}
