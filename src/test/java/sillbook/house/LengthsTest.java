// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sillbook.house.Lengths.Length;

class LengthsTest {
    private static final SourceText SHED = new SourceText("Shed.java", """
            // A comment alone is no code.
            class Shed {
                /**
                 * Nor is this.
                 */
                String door() {

                    return "/* open"; // but this line is
                }

                abstract static class Bench {
                    abstract int legs();

                    Bench() { /* code */ }
                }

                String sign = \"""
                    // these two
                    /* are code */
                    \""";
            }
            """);

    @Test
    void blankLinesAndCommentsAreNotCounted() {
        assertThat(SHED.codeLines()).isEqualTo(13);
    }

    @Test
    void methodsWithABodyAreFoundInTheirClass() {
        assertThat(Lengths.ofMethods(List.of(SHED)).all())
                .containsExactly(new Length("Shed.door", 3), new Length("Bench.<init>", 1));
    }

    @Test
    void aShareKeepsToALength() {
        Lengths tenths = new Lengths(IntStream.rangeClosed(1, 10)
                .mapToObj(lines -> new Length("method", lines))
                .toList());
        assertThat(tenths.atMostAmong(0.5)).isEqualTo(5);
        assertThat(tenths.atMostAmong(0.9)).isEqualTo(9);
        assertThat(tenths.atMostAmong(1)).isEqualTo(10);
        assertThat(tenths.longerThan(8)).extracting(Length::lines).containsExactly(10, 9);
    }

    @Test
    void theWorstAreNamed() {
        assertThat(Lengths.ofMethods(List.of(SHED)).worst("methods"))
                .isEqualTo("the longest methods: [Shed.door 3, Bench.<init> 1]");
    }
}
