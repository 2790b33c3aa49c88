// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Change;
import sillbook.words.Heard;
import sillbook.words.Shelves;

class QuickLineTest {
    static Stream<Named<LineTable.Row>> lines() {
        return Stream.of(
                        "lines-pots.txt",
                        "lines-potting.txt",
                        "lines-book.txt",
                        "lines-lived.txt",
                        "lines-choosing.txt",
                        "lines-marks.txt",
                        "lines-order.txt",
                        "lines-ways.txt",
                        "lines-twins.txt",
                        "lines-batches.txt",
                        "lines-dry.txt",
                        "lines-water.txt",
                        "lines-row.txt",
                        "lines-ground.txt",
                        "lines-read.txt",
                        "lines-wishes.txt",
                        "lines-plans.txt",
                        "lines-waiting.txt",
                        "lines-adopting.txt",
                        "lines-now.txt",
                        "lines-bought.txt")
                .flatMap(LineTable::rows);
    }

    @ParameterizedTest
    @MethodSource("lines")
    void aLineMeansWhatTheTableSays(LineTable.Row row) {
        Bench bench = Shelves.after(row.before());
        LineReading reading = QuickLine.read(row.line(), bench);

        assertThat(LineTable.shows(reading, row.line(), bench)).isEqualTo(row.shows());
    }

    @ParameterizedTest
    @MethodSource("lines")
    void whatItDoesIsHeardTheSameWithoutWhatFollows(LineTable.Row row) {
        LineReading reading = QuickLine.read(row.line(), Shelves.after(row.before()));
        Heard<Change> heard = QuickLine.heard(row.line(), Shelves.after(row.before()));

        boolean isRefusedOnlyWhenCarriedOut = reading.complaint()
                .filter(why -> why.brief().equals("cannot be"))
                .isPresent();
        assertThat(heard.value().isPresent()).isEqualTo(reading.change().isPresent() || isRefusedOnlyWhenCarriedOut);
        assertThat(heard.complaint()).isEqualTo(isRefusedOnlyWhenCarriedOut ? Optional.empty() : reading.complaint());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 2000})
    void nothingAndTooMuchDoNothing(int letters) {
        assertThat(QuickLine.heard("x".repeat(letters), Shelves.after(List.of()))
                        .value())
                .isEmpty();
    }
}
