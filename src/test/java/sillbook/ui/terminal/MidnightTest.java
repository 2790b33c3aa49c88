// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class MidnightTest {
    @Test
    void eachNewDayIsToldOnce() {
        AtomicReference<LocalDate> today = new AtomicReference<>(LocalDate.of(2027, 1, 12));
        List<LocalDate> told = new ArrayList<>();
        try (Midnight midnight = Midnight.watch(today::get, told::add)) {
            midnight.look();
            today.set(LocalDate.of(2027, 1, 13));
            midnight.look();
            midnight.look();
            today.set(LocalDate.of(2027, 1, 20));
            midnight.look();
        }
        assertThat(told).containsExactly(LocalDate.of(2027, 1, 13), LocalDate.of(2027, 1, 20));
    }
}
