// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InitialTest {
    @ParameterizedTest
    @CsvSource({
        "'', '', ''",
        "cellar, Cellar, cellar",
        "Cellar, Cellar, cellar",
        "öland frame, Öland frame, öland frame",
        "$hed, $hed, $hed",
        "\\1, \\1, \\1",
        "𐐨 shelf, 𐐀 shelf, 𐐨 shelf",
        "'''Inkwell'' firm', '''Inkwell'' firm', '''Inkwell'' firm'"
    })
    void onlyTheFirstLetterChanges(String words, String large, String small) {
        assertThat(Initial.large(words)).isEqualTo(large);
        assertThat(Initial.small(words)).isEqualTo(small);
    }
}
