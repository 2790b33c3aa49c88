// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.TodayJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.plan.OrderDue;
import sillbook.season.Outlook;
import sillbook.season.Today;
import sillbook.words.Provisos;

/** Says what a day asks for. */
@Command(name = "today", description = "Say what is late, ready and due, what to check, and what comes next.")
final class TodayCommand extends View {
    @Option(names = "--on", paramLabel = "DAY", description = "Another day than today: 2027-01-12, fri, +7.")
    private Optional<String> on = Optional.empty();

    TodayCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        LocalDate day = on.map(text -> Given.dayAhead(text, book.today())).orElseGet(book::today);
        return sight(book.readAll(), day);
    }

    static Sight sight(Journal journal, LocalDate day) {
        Outlook outlook = Outlook.of(journal, Handbook.standard(), day);
        Today today = outlook.today();
        List<OrderDue> orders = OrderDue.on(day, journal);
        Provisos provisos = Provisos.of(journal, outlook.pots(today.season()));
        return new Sight(
                () -> TodayJson.write(journal, today, orders, provisos),
                () -> TodayText.of(journal, today, orders),
                provisos.warnings(),
                "");
    }
}
