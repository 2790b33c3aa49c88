// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.model.Kind;

class PagesTest {
    private static final String FIGURES = "kind\tclass\tfigure\tlow\ttypical\thigh\tunit\tsource\tsureness\tnote\n";

    private static List<Figure> figures(String line) {
        return Pages.figures("figures.tsv", FIGURES + line.replace(" | ", "\t"));
    }

    @Test
    void a_line_becomes_a_figure() {
        assertThat(figures("tulip | Triumph | cold | 12 | 14.5 | 16 | weeks | a,b | good | so it is\n"))
                .containsExactly(new Figure(
                        new Kind("tulip", "Triumph"),
                        FigureName.COLD,
                        12,
                        Optional.of(14.5),
                        16,
                        List.of("a", "b"),
                        Sureness.GOOD,
                        "so it is"));
    }

    @Test
    void cells_at_the_end_may_be_left_out_and_the_last_line_needs_no_end() {
        Figure figure =
                figures("tulip |  | height | 20 |  | 40 | cm | a | weak").get(0);

        assertThat(figure.note()).isEmpty();
        assertThat(figure.typical()).isEmpty();
        assertThat(figure.kind()).isEqualTo(Kind.of("tulip"));
    }

    @Test
    void empty_lines_are_passed_over_but_counted() {
        assertThat(figures("\n\ntulip |  | height | 20 |  | 40 | cm | a | weak\n\n"))
                .hasSize(1);
        assertThatThrownBy(() -> figures("\ntulip |  | width"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("figures.tsv, line 3: 'width' is no figure");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "tulip | | width | 1 | 2 | 3 | cm | a | good; 'width' is no figure",
                "tulip | | cold | 1 | 2 | 3 | days | a | good; 'days' is no unit",
                "tulip | | cold | one | 2 | 3 | weeks | a | good; 'one' is no low",
                "tulip | | cold | 1 | two | 3 | weeks | a | good; 'two' is no typical",
                "tulip | | cold | 1 | 2 | | weeks | a | good; '' is no high",
                "tulip | | cold | 1 | 2 | 3 | weeks | a | certain; 'certain' is no sureness"
            })
    void a_cell_that_is_not_understood_is_named_with_its_file_and_line(String line, String says) {
        assertThatThrownBy(() -> figures(line.replace("| |", "|  |")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("figures.tsv, line 2: " + says);
    }

    @Test
    void figures_out_of_order_or_without_a_source_are_refused() {
        assertThatThrownBy(() -> figures("tulip |  | cold | 3 | 2 | 4 | weeks | a | good"))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> figures("tulip |  | cold | 1 | 5 | 4 | weeks | a | good"))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> figures("tulip |  | cold | 5 |  | 4 | weeks | a | good"))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> figures("tulip |  | cold | NaN | 2 | 4 | weeks | a | good"))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> figures("tulip |  | cold | 1 | NaN | 4 | weeks | a | good"))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> figures("tulip |  | cold | 1 | 2 | NaN | weeks | a | good"))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> figures("tulip |  | cold | 1 | 2 | 4 | weeks |  | good"))
                .hasMessageContaining("without a source");
    }

    @Test
    void a_line_with_too_many_cells_and_a_wrong_heading_are_refused() {
        assertThatThrownBy(() -> figures("tulip |  | cold | 1 | 2 | 3 | weeks | a | good | note | more"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("figures.tsv, line 2: 11 cells, where 10 belong");
        assertThatThrownBy(() -> Pages.figures("figures.tsv", "kind\tclass\n"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("figures.tsv should have the columns");
    }

    @ParameterizedTest
    @EnumSource
    void every_sureness_is_written_in_small_letters(Sureness sureness) {
        String written = sureness.name().toLowerCase(java.util.Locale.ROOT);

        assertThat(figures("tulip |  | cold | 1 | 2 | 3 | weeks | a | " + written)
                        .get(0)
                        .sureness())
                .isEqualTo(sureness);
    }

    @Test
    void a_line_in_words_becomes_a_remark() {
        String line = "crocus\t\tdepth\t\t\t\twords\ta\tfair\tCovered.";

        assertThat(Pages.remarks("remarks.tsv", FIGURES + line))
                .containsExactly(new Remark(Kind.of("crocus"), Topic.DEPTH, "Covered.", List.of("a"), Sureness.FAIR));
        assertThatThrownBy(() -> Pages.remarks("remarks.tsv", FIGURES + line.replace("words", "cm")))
                .hasMessage("remarks.tsv, line 2: 'cm' is no unit");
        assertThatThrownBy(() -> Pages.remarks("remarks.tsv", FIGURES + line.replace("depth", "deep")))
                .hasMessage("remarks.tsv, line 2: 'deep' is no figure");
        assertThatThrownBy(() -> Pages.remarks("remarks.tsv", FIGURES + line.replace("\ta\t", "\t\t")))
                .hasMessageContaining("without a source");
    }

    @Test
    void kinds_say_yes_or_no_to_cold() {
        String heading = "kind\tplural\tletter\tcold\tothers\tsource\tsuits\n";

        assertThat(Pages.kinds("kinds.tsv", heading + "crocus\tcrocuses\tC\tyes\ta,b\tc\twell"))
                .containsExactly(new KindEntry(
                        Kind.of("crocus"), "crocuses", "C", true, List.of("a", "b"), List.of("c"), Suits.WELL));
        assertThatThrownBy(() -> Pages.kinds("kinds.tsv", heading + "crocus\tcrocuses\tC\tperhaps"))
                .hasMessage("kinds.tsv, line 2: 'perhaps' is no cold");
    }

    @Test
    void classes_suit_pots_well_or_are_tall_or_have_no_word() {
        String heading = "kind\tclass\tname\tsuits\tsource\tnote\n";

        assertThat(Pages.groups("classes.tsv", heading + "tulip\tA\ta\twell\ntulip\tB\tb\ttall\ntulip\tC\tc\n"))
                .extracting(GroupEntry::suits)
                .containsExactly(Suits.WELL, Suits.TALL, Suits.NO_WORD);
        assertThatThrownBy(() -> Pages.groups("classes.tsv", heading + "tulip\tA\ta\tbadly"))
                .hasMessage("classes.tsv, line 2: 'badly' is no suits");
    }

    @Test
    void sources_are_graded() {
        String heading = "key\tinstitution\ttitle\tlocator\tgrade\n";

        assertThat(Pages.sources(
                        "sources.tsv", heading + "a\t\t\t\tA\nb\t\t\t\tB\nc\t\t\t\tC\nd\t\t\t\tcommon practice\n"))
                .extracting(Source::grade)
                .containsExactly(Source.Grade.values());
        assertThatThrownBy(() -> Pages.sources("sources.tsv", heading + "a\t\t\t\tD"))
                .hasMessage("sources.tsv, line 2: 'D' is no grade");
    }
}
