// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sums that a page works out by hand, added up with nothing but a calendar. */
class SumsTest {
    private final Page page = Page.of(Path.of("docs/explanation/how-dates-are-reckoned.md"));

    @ParameterizedTest
    @ValueSource(strings = {"the sum", "the other sum"})
    void itComesToThat(String sum) {
        List<List<String>> rows = Blocks.table(page, sum + ": added up by a test");

        assertThat(rows)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(LocalDate.parse(row.get(0)).plusWeeks(Long.parseLong(row.get(1))))
                        .isEqualTo(LocalDate.parse(row.get(2))));
    }
}
