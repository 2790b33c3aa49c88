// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.handbook.Figure;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Kind;

/** The numbers of the page that explains Today are the handbook's, each with who published it. */
class TodayNumbersTest {
    private static final Page PAGE = Page.of(Path.of("docs/explanation/how-today-decides.md"));

    static Stream<List<String>> rows() {
        return Blocks.table(PAGE, "the numbers: compared with the handbook by a test").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void areTheHandbooks(List<String> row) {
        Figure figure = figure(Kind.of(row.get(1)), plain(row.get(2)));

        assertThat(number(row.get(3))).hasValue(figure.low());
        assertThat(number(row.get(4))).isEqualTo(figure.typical());
        assertThat(number(row.get(5))).hasValue(figure.high());
        assertThat(List.of(plain(row.get(6)).split(", ", -1))).isEqualTo(figure.sources());
    }

    private static Figure figure(Kind kind, String key) {
        FigureName name = Stream.of(FigureName.values())
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
        return Handbook.standard().figure(kind, name).orElseThrow();
    }

    private static Optional<Double> number(String cell) {
        return cell.equals("-") ? Optional.empty() : Optional.of(Double.valueOf(cell));
    }

    private static String plain(String cell) {
        return cell.replace("`", "");
    }
}
