// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.words.Complaint;
import sillbook.words.Shelves;

class FormsTest {
    static Stream<String> examples() {
        return QuickLine.forms().stream().flatMap(form -> form.examples().stream());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsUnderstoodToItsLastWord(String line) {
        LineReading reading = QuickLine.read(line, Shelves.bench());

        assertThat(reading.unknown()).isEmpty();
        assertThat(reading.complaint().map(Complaint::brief)).isNotEqualTo(java.util.Optional.of("more than one"));
    }

    @Test
    void everyFormIsNamedOnceAndShown() {
        List<FormHelp> forms = QuickLine.forms();

        assertThat(forms).extracting(FormHelp::name).doesNotHaveDuplicates().doesNotContain("");
        assertThat(forms).allSatisfy(form -> {
            assertThat(form.says()).endsWith(".");
            assertThat(form.examples()).isNotEmpty();
        });
    }

    @Test
    void noKeywordLeadsToTwoForms() {
        assertThat(Forms.ALL.stream().flatMap(form -> form.keywords().stream())).doesNotHaveDuplicates();
    }
}
