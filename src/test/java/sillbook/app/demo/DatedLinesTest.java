// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import sillbook.app.demo.DatedLines.Dated;

class DatedLinesTest {
    @Test
    void eachLineHasItsDayItsNumberAndItsText() {
        String text = """
                # A winter

                2026-10-14  6 x Marrow Lane x5
                2026-10-14 T1 moist
                """;

        assertThat(DatedLines.parse("w.txt", text).lines())
                .containsExactly(
                        new Dated(3, LocalDate.of(2026, 10, 14), "6 x Marrow Lane x5"),
                        new Dated(4, LocalDate.of(2026, 10, 14), "T1 moist"));
    }

    @Test
    void aLineWithoutADayIsNamed() {
        assertThatThrownBy(() -> DatedLines.parse("w.txt", "# x\nT1 moist\n"))
                .hasMessage("w.txt, line 2 does not begin with a day, as 2026-10-14");
    }

    @Test
    void timeDoesNotRunBackwards() {
        assertThatThrownBy(() -> DatedLines.parse("w.txt", "2026-10-14 T1 moist\n2026-10-13 T1 moist\n"))
                .hasMessage("w.txt, line 2: 2026-10-13 comes after 2026-10-14");
    }
}
