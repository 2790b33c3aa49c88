// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
                        "lines-row.txt")
                .flatMap(LineTable::rows);
    }

    @ParameterizedTest
    @MethodSource("lines")
    void aLineMeansWhatTheTableSays(LineTable.Row row) {
        Bench bench = Shelves.after(row.before());
        LineReading reading = QuickLine.read(row.line(), bench);

        assertThat(LineTable.shows(reading, row.line(), bench)).isEqualTo(row.shows());
    }
}
