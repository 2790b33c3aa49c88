// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
    private static final List<String> COLUMNS = List.of("kind", "weeks");

    @Test
    void remarks_and_empty_lines_say_nothing() {
        assertThat(Table.read("weeks.tsv", "# ours\nkind\tweeks\n\n# the hardy ones\ntulip\t13\nsquill\n", COLUMNS))
                .extracting(row -> row.cell(0) + ":" + row.cell(1))
                .containsExactly("tulip:13", "squill:");
    }

    @Test
    void other_columns_are_refused() {
        assertThatThrownBy(() -> Table.read("weeks.tsv", "# ours\nkind\tdays\n", COLUMNS))
                .hasMessageContaining("weeks.tsv")
                .hasMessageContaining("days");
    }

    @Test
    void a_line_with_too_many_cells_is_named() {
        assertThatThrownBy(() -> Table.read("weeks.tsv", "kind\tweeks\n\ntulip\t13\t14\n", COLUMNS))
                .hasMessageContaining("weeks.tsv, line 3");
    }
}
