// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
