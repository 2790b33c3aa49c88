// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.DiaryJson;
import sillbook.model.Journal;
import sillbook.words.Diary;
import sillbook.words.DiaryEntry;

/** Says what was written down. */
@Command(
        name = "diary",
        description = {
            "Say everything that was written down, the newest day first.",
            "TEXT is words in any order, without regard to accents and capitals; a label is meant whole.",
            "-WORD leaves out what has that word; since DAY leaves out what is earlier."
        })
final class DiaryCommand extends View {
    @Option(names = "--find", paramLabel = "TEXT", description = "Only what has these words: --find 'H4 mould'.")
    private Optional<String> sought = Optional.empty();

    DiaryCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Diary diary = Diary.of(journal);
        List<DiaryEntry> entries =
                sought.map(text -> diary.find(text, book.today())).orElseGet(diary::entries);
        DiaryText text = new DiaryText(journal);
        return new Sight(
                () -> DiaryJson.write(journal, entries),
                () -> entries.stream().map(text::line).toList(),
                List.of(),
                diary.entries().isEmpty() ? "Nothing is written yet." : "Nothing has all of these words.");
    }
}
