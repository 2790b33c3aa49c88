// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

/** Bulbs that an adopted plan still lacks stand on Today, before and after the last day to order them. */
class OrdersOnTodayTest {
    private final Desk desk = Desk.over(ComingWinter.wished())
            .press("5", "k")
            .kept()
            .press("t", "Enter")
            .kept();

    /** The irises of the plan were given up on. */
    private Desk on(LocalDate day) {
        Journal journal = desk.state().journal();
        Purchase irises = journal.purchases().all().stream()
                .filter(one -> journal.varieties().get(one.variety()).name().equals("Blue Postcard"))
                .findFirst()
                .orElseThrow();
        Journal without = journal.with(List.of(new Edit.Put(irises.rejected())));
        return desk.tell(new Message.Changed(new Snapshot(without, day, 0, 0))).press("1");
    }

    @Test
    void twoWeeksAheadTheyAreComing() {
        assertThat(on(LocalDate.of(2027, 9, 6)).lines()).noneMatch(line -> line.contains("To order"));
        assertThat(on(LocalDate.of(2027, 9, 7)).line(4)).isEqualTo(" To order");
        assertThat(desk.line(5))
                .startsWith("▸ › 10 'Blue Postcard'       order for plan A       Harbour Seeds by Tue 21 Sep");
        assertThat(desk.line(22)).contains("The first are to be potted on Tue 5 Oct");
        assertThat(desk.line(23)).contains("I on screen 5 shows all that the plan takes.");
    }

    @Test
    void onTheLastDayTheyAreDueAndAfterItLate() {
        assertThat(on(LocalDate.of(2027, 9, 21)).line(5)).startsWith("▸ » ").endsWith("by Tue 21 Sep");
        assertThat(on(LocalDate.of(2027, 9, 22)).line(5)).startsWith("▸ ! ").endsWith("1 day late");
    }

    @Test
    void theyAreFoundByTheirNamesAndNothingElseIsDoneThere() {
        assertThat(on(LocalDate.of(2027, 9, 22))
                        .press("f")
                        .type("postcard")
                        .press("Enter")
                        .line(6))
                .contains("10 'Blue Postcard'");
        assertThat(desk.press("Enter").effects()).isEmpty();
    }
}
