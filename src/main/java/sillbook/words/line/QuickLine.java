// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.words.Complaint;
import sillbook.words.Heard;

/** Reads a line as the grower writes it. Never throws, whatever the line holds. */
public final class QuickLine {
    private static final LineReading NOTHING =
            new LineReading(Optional.empty(), List.of(), List.of(), List.of(), Optional.empty(), List.of(), List.of());

    /** In UTF-16 units; nobody types as much at one time, and reading takes the longer for every word. */
    private static final int LONGEST = 1000;

    private static final LineReading TOO_LONG = new LineReading(
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            Optional.of(new Complaint(
                    "too long", "The line is too long: it may have " + LONGEST + " letters. Write it as several.")),
            List.of(),
            List.of());

    private static final Complaint EMPTY = new Complaint("nothing", "It says nothing.");

    private QuickLine() {}

    /** Every form a line can have, for help and docs. */
    public static List<FormHelp> forms() {
        return Forms.ALL.stream().map(Form::help).toList();
    }

    /** What a line that is written to its end would do, or why it does nothing: for many lines one after the other. */
    public static Heard<Change> heard(String line, Bench bench) {
        Written written = Written.of(line);
        if (line.length() > LONGEST || written.size() == 0) {
            Complaint why = line.length() > LONGEST ? TOO_LONG.complaint().orElseThrow() : EMPTY;
            return Heard.not(why.brief(), why.sentence());
        }
        Attempt best = best(written, bench);
        Draft draft = new Draft(bench);
        best.form.draw(best.filled, draft);
        return draft.heard(best.complaint(bench), best.filled.doubt());
    }

    /** A line that is written to its end. */
    public static LineReading read(String line, Bench bench) {
        return read(line, line.length(), bench);
    }

    /**
     * A line while it is written.
     *
     * @param caret where typing goes on, in UTF-16 units
     */
    public static LineReading read(String line, int caret, Bench bench) {
        if (line.length() > LONGEST) {
            return TOO_LONG;
        }
        Written written = Written.of(line);
        if (written.size() == 0) {
            return NOTHING;
        }
        Attempt best = best(written, bench);
        Draft draft = new Draft(bench);
        best.form.draw(best.filled, draft);
        return draft.reading(
                best.complaint(bench),
                best.filled.doubt(),
                best.filled.unknown(),
                Completions.at(caret, best.form, best.filled, bench));
    }

    /** The attempt that leaves least unread; where one leaves nothing, no later one could be better. */
    private static Attempt best(Written written, Bench bench) {
        Reader reader = new Reader(written, bench);
        List<Attempt> attempts = new ArrayList<>();
        for (Form form : forms(written)) {
            int start = Keywords.end(form, written).orElse(0);
            Attempt attempt = new Attempt(form, reader.read(form, start));
            if (attempt.left() == 0 && attempt.wanting() == 0) {
                return attempt;
            }
            attempts.add(attempt);
        }
        return attempts.stream()
                .min(Comparator.comparingInt(Attempt::left).thenComparingInt(Attempt::wanting))
                .orElseThrow();
    }

    /** Those that the line may have: those whose keyword it begins with, or those that have none. */
    private static List<Form> forms(Written written) {
        List<Form> led = Forms.ALL.stream()
                .filter(form -> !form.keywords().isEmpty())
                .filter(form -> Keywords.end(form, written).isPresent())
                .toList();
        return led.isEmpty()
                ? Forms.ALL.stream().filter(form -> form.keywords().isEmpty()).toList()
                : led;
    }

    /** A line read as one form. */
    private record Attempt(Form form, Filled filled) {
        int left() {
            return filled.notUnderstood();
        }

        int wanting() {
            return form.wanting(filled);
        }

        Optional<Complaint> complaint(Bench bench) {
            return filled.complaint().or(() -> Unknown.complaint(form, filled, bench));
        }
    }
}
