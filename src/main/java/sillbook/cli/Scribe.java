// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import sillbook.app.Bookshelf;
import sillbook.app.Page;
import sillbook.change.Change;
import sillbook.exchange.StepsJson.Line;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.words.Complaint;
import sillbook.words.Provisos;
import sillbook.words.Stick;
import sillbook.words.Sticks;
import sillbook.words.line.Bench;
import sillbook.words.line.LineReading;
import sillbook.words.line.QuickLine;

/** Writes lines on a page, and remembers those that were done. */
final class Scribe {
    private final Page page;
    private final List<Line> done = new ArrayList<>();
    private Journal beforeLast;

    Scribe(Page page) {
        this.page = page;
        this.beforeLast = page.readAll();
    }

    /**
     * Reads a line and does what it says.
     *
     * @throws CouldNot when it is not understood, or cannot be; the page is then as it was
     */
    Line write(String text) {
        LineReading reading = QuickLine.read(text, bench());
        Change change = reading.change().orElseThrow(() -> new CouldNot(complaint(reading)));
        Journal before = page.readAll();
        Line line = new Line(text, Kept.step(page.carryOut(change)), reading);
        done.add(line);
        beforeLast = before;
        return line;
    }

    /** What to pencil on the sticks of the pots that the last line potted. */
    List<Stick> sticks() {
        Journal now = page.readAll();
        return new Sticks(now, Outlook.of(now, Handbook.standard(), page.today())).pottedSince(beforeLast);
    }

    private Bench bench() {
        Journal journal = page.readAll();
        Handbook handbook = Handbook.standard();
        return new Bench(journal, Outlook.of(journal, handbook, page.today()), handbook, Bookshelf.randomIds());
    }

    private static String complaint(LineReading reading) {
        return reading.complaint().map(Complaint::sentence).orElse("The line is empty. Write one, as: T1-T6 cool room");
    }

    List<Line> done() {
        return List.copyOf(done);
    }

    /** What to know of the lines that were done. */
    Provisos provisos() {
        return new Provisos(
                done.stream().flatMap(line -> line.reading().remarks().stream()).toList(), List.of());
    }
}
