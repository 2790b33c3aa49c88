// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import sillbook.model.Journal;
import sillbook.plan.OrderDue;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;

/** What is to be ordered for a plan, as it is said on a day. */
public record OrderWords(Journal journal, LocalDate day) {

    /** {@code 5 'Chalk Lane'}. */
    public String what(OrderDue due) {
        return due.bulbs() + " " + new PotNames(journal).variety(due.variety());
    }

    /** {@code order for plan C}. */
    public String job(OrderDue due) {
        return "order for plan " + due.plan().name();
    }

    /** {@code by Wed 9 Dec}; {@code 2 days late}. */
    public String when(OrderDue due) {
        return due.isLate(day)
                ? Counts.of(ChronoUnit.DAYS.between(due.orderBy(), day), "day") + " late"
                : "by " + Days.day(due.orderBy());
    }

    /** {@code order 5 'Chalk Lane' for plan C, by Wed 9 Dec}. */
    public String line(OrderDue due) {
        return "order " + what(due) + " for plan " + due.plan().name() + ", " + when(due);
    }

    /** When they are to be potted, and what coming late means for that. */
    public String why(OrderDue due) {
        String from = "The first are to be potted on " + Days.day(due.potBy());
        return due.isLate(day)
                ? from + "; ordered now, they may come later."
                : from + ", and an order takes about two weeks.";
    }
}
