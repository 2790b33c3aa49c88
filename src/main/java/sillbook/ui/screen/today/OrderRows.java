// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.plan.OrderDue;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.words.plan.OrderWords;

/** What is to be ordered for adopted plans, a line each. */
record OrderRows(State state) {

    List<Row> rows() {
        return state.almanac().orders().stream().map(this::row).toList();
    }

    private static Thing named(OrderDue due) {
        return new Thing.Named("order " + due.plan().id() + " " + due.variety());
    }

    private LocalDate today() {
        return state.shown().today();
    }

    private OrderWords words() {
        return new OrderWords(state.journal(), today());
    }

    private Row row(OrderDue due) {
        Sign sign = due.isLate(today()) ? Sign.LATE : due.orderBy().equals(today()) ? Sign.NOW : Sign.SOON;
        JobLine line = new JobLine(
                sign, style(sign), false, words().what(due), "", words().job(due), due.supplier(), words().when(due));
        return Row.of(named(due), line).foundBy(line.label(), line.what(), line.where());
    }

    private static Style style(Sign sign) {
        return sign == Sign.LATE ? Style.RUST : sign == Sign.NOW ? Style.BOLD : Style.PENCIL;
    }

    /** What is said of the line that the cursor stands on, where it is one of these. */
    Optional<Aside> aside(Thing thing) {
        return state.almanac().orders().stream()
                .filter(due -> named(due).equals(thing))
                .findFirst()
                .map(due -> Aside.of(
                        "",
                        words().why(due),
                        "L writes down what you bought; I on screen 5 shows all that the plan takes."));
    }
}
