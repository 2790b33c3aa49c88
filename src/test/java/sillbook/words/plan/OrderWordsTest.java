// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import sillbook.plan.OrderDue;

class OrderWordsTest {
    private static final LocalDate LAST = LocalDate.of(2026, 12, 6);

    private String said(LocalDate day, BiFunction<OrderWords, OrderDue, String> says) {
        AugustHouse adopted = AugustHouse.usual();
        adopted.put(adopted.plan()).write("adopt plan A");
        OrderDue due = OrderDue.on(day, adopted.journal()).get(0);
        return says.apply(new OrderWords(adopted.journal(), day), due);
    }

    @Test
    void beforeTheLastDayItIsNamed() {
        assertThat(said(LAST, OrderWords::line)).isEqualTo("order 14 'Linen Parade' for plan A, by Sun 6 Dec");
        assertThat(said(LAST, OrderWords::why))
                .isEqualTo("The first are to be potted on Sun 20 Dec, and an order takes about two weeks.");
    }

    @Test
    void afterItTheDaysAreCounted() {
        assertThat(said(LAST.plusDays(1), OrderWords::line))
                .isEqualTo("order 14 'Linen Parade' for plan A, 1 day late");
        assertThat(said(LAST.plusDays(3), OrderWords::line)).endsWith(", 3 days late");
        assertThat(said(LAST.plusDays(3), OrderWords::why))
                .isEqualTo("The first are to be potted on Sun 20 Dec; ordered now, they may come later.");
    }
}
