// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.words.list.Column;
import sillbook.words.list.ListReading;
import sillbook.words.list.ListSort;

/** The page of columns lists what the program reads. */
class ColumnsPageTest {
    private static final Path PAGE = Path.of("docs/reference/columns.md");

    @ParameterizedTest
    @EnumSource
    void everyColumnStandsThere(ListSort sort) {
        Page page = Page.of(PAGE);
        String remark = "columns of " + sort.word() + ": by a test";
        List<String> table = new ArrayList<>(Blocks.heading(page, remark));
        sort.columns().forEach(column -> table.add(row(column)));
        List<String> lines = Blocks.retabled(page, remark, table);

        assertThat(page.rewritten(lines).lines()).isEqualTo(lines);
    }

    private static String row(Column<?, ?> column) {
        String name = "`" + column.name() + "`";
        String also = column.also().stream().map(word -> "`" + word + "`").collect(joining(", "));
        return Blocks.row(List.of(column.isNeeded() ? "**" + name + "**" : name, also, column.holds()));
    }

    @Test
    void aListEndsWhereThePageSays() {
        assertThat(Page.of(PAGE).text()).contains("At most 2 000 rows");
        assertThat(ListReading.MOST_ROWS).isEqualTo(2000);
    }
}
