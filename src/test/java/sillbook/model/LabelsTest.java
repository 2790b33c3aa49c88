// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelsTest {
    @ParameterizedTest
    @CsvSource({"T3,T,3", "sill,sill,0", "12,'',12", "T3b,T,0", "T1234567,T,0", "'','',0"})
    void aLabelIsLettersAndANumber(String label, String letters, int number) {
        assertThat(Labels.letters(label)).isEqualTo(letters);
        assertThat(Labels.number(label)).isEqualTo(number);
    }

    @Test
    void theNextFreeFollowTheHighestOfTheirLetters() {
        assertThat(Labels.nextFree("t", 2, List.of("T1", "T9", "H30"))).containsExactly("T10", "T11");
        assertThat(Labels.nextFree("D", 1, List.of())).containsExactly("D1");
    }

    @Test
    void aRowBeginsWithTheFirst() {
        assertThat(Labels.from("T9", 3)).containsExactly("T9", "T10", "T11");
        assertThat(Labels.from("blue pan", 1)).containsExactly("blue pan");
    }

    @ParameterizedTest
    @CsvSource({"'T1 T2 T3',T1-T3", "'T10 T9 T2',T2 T9-T10", "'T1 T1',T1", "'H1 T1 T3',H1 T1 T3", "'box T1',T1 box"})
    void runsAreDrawnTogether(String labels, String said) {
        assertThat(Labels.say(List.of(labels.split(" ", -1)))).isEqualTo(said);
    }

    /** {@code T01} is a label of its own, and no part of a run. */
    @Test
    void aRunNamesOnlyLabelsThatAreInIt() {
        assertThat(Labels.say(List.of("T01", "T2", "T3"))).isEqualTo("T01 T2-T3");
        assertThat(Labels.say(List.of("T1", "t2"))).isEqualTo("T1 t2");
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatIsSaidNamesEveryLabelAndNoOther(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            Set<String> labels = new TreeSet<>();
            for (int count = 1 + random.nextInt(12); count > 0; count--) {
                String zero = random.nextInt(8) == 0 ? "0" : "";
                labels.add(List.of("T", "H", "t", "AB").get(random.nextInt(4)) + zero + (1 + random.nextInt(14)));
            }
            assertThat(named(Labels.say(labels))).as("%s", labels).containsExactlyInAnyOrderElementsOf(labels);
        }
    }

    /** The labels a saying names: {@code T1-T3 H9} is four. */
    private static List<String> named(String said) {
        List<String> named = new ArrayList<>();
        for (String part : said.split(" ", -1)) {
            String[] ends = part.split("-", -1);
            int last = Labels.number(ends[ends.length - 1]);
            named.addAll(ends.length == 1 ? List.of(part) : Labels.from(ends[0], last - Labels.number(ends[0]) + 1));
        }
        return named;
    }
}
