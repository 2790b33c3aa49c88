// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.ReadingSource;
import sillbook.store.Steps;

/**
 * The steps. With each lies what it takes to go over it: for every entry it touched, the entry as it is on the other
 * side of the step. Taking back and putting back are the same exchange of the two sides.
 */
final class StepLog {
    private static final String ADD = "INSERT INTO step (number, name, written_at, taken_back) VALUES (?, ?, ?, 0)";
    private static final String NEXT_NUMBER = "SELECT coalesce(max(number), 0) + 1 FROM step";
    private static final String LAST_IN_FORCE =
            "SELECT number, name FROM step WHERE NOT taken_back ORDER BY number DESC LIMIT 1";
    private static final String FIRST_TAKEN_BACK =
            "SELECT number, name FROM step WHERE taken_back ORDER BY number LIMIT 1";
    private static final String TURN = "UPDATE step SET taken_back = NOT taken_back WHERE number = ?";
    private static final String STRETCH =
            "SELECT name, written_at, taken_back FROM step ORDER BY number DESC LIMIT ? OFFSET ?";
    private static final String ADD_ROW = Sql.file("queries/add-step-row.sql");
    private static final String ROWS = Sql.file("queries/step-rows.sql");
    private static final String TURN_ROW = Sql.file("queries/turn-step-row.sql");

    private final Database database;
    private final Content content;
    private final WrongSums wrong;

    /** One that notes there which readings a step takes away or brings back. */
    StepLog(Database database, Content content, WrongSums wrong) {
        this.database = database;
        this.content = content;
        this.wrong = wrong;
    }

    /** A step in the log. */
    private record Numbered(long number, String name) {
        static Numbered read(Row row) throws SQLException {
            return new Numbered(row.large(), row.text());
        }
    }

    /** An entry that a step touched, and how it is on the other side. */
    private record Touched(int position, Key key, Image other) {
        static Touched read(Row row) throws SQLException {
            return new Touched(
                    row.number(),
                    new Key(Mappings.ofTable(row.text()), row.text()),
                    new Image(row.optionalText(), row.optionalText()));
        }
    }

    /** Does the edits and logs them as the last step, whose number it gives. */
    long add(Step step, Instant now) {
        long number = next();
        database.update(ADD, number, step.name(), now.toEpochMilli());
        log(number, carryOut(step.edits(), now));
        if (step.edits().stream().anyMatch(StepLog::takesOut)) {
            goOverReadings(number);
        }
        return number;
    }

    /** With a source go the readings it brought. */
    private static boolean takesOut(Edit edit) {
        return edit instanceof Edit.Remove && edit.entity() instanceof ReadingSource;
    }

    private void goOverReadings(long step) {
        new StepReadings(database).goOver(step).forEach(wrong::readings);
    }

    /** The number that the next step will have. What was taken back is gone for good. */
    long next() {
        database.update("DELETE FROM step WHERE taken_back");
        return database.number(NEXT_NUMBER);
    }

    /** Gives what was there before, of each entry that an edit names. */
    private Map<Key, Image> carryOut(List<Edit> edits, Instant now) {
        Map<Key, Image> before = new LinkedHashMap<>();
        for (Edit edit : edits) {
            Key key = Key.of(edit.entity());
            before.computeIfAbsent(key, content::image);
            if (edit instanceof Edit.Put) {
                content.put(edit.entity());
            } else {
                content.remove(key, now);
            }
        }
        return before;
    }

    private void log(long step, Map<Key, Image> before) {
        int position = 0;
        for (Map.Entry<Key, Image> entry : before.entrySet()) {
            Key key = entry.getKey();
            Image other = entry.getValue();
            if (!other.equals(content.image(key))) {
                database.update(
                        ADD_ROW,
                        step,
                        position++,
                        key.table().name(),
                        key.id(),
                        other.row().orElse(null),
                        other.parts().orElse(null));
            }
        }
    }

    /** Goes back over the last step in force; gives its name and the edits that leads to. */
    Optional<Step> takeBack(Instant now) {
        return database.first(LAST_IN_FORCE, Numbered::read).map(step -> {
            List<Touched> touched = new ArrayList<>(touchedBy(step));
            Collections.reverse(touched);
            return goOver(step, touched, now);
        });
    }

    /** Goes forward again over the step that was taken back last. */
    Optional<Step> putBack(Instant now) {
        return database.first(FIRST_TAKEN_BACK, Numbered::read).map(step -> goOver(step, touchedBy(step), now));
    }

    private List<Touched> touchedBy(Numbered step) {
        return database.list(ROWS, Touched::read, step.number());
    }

    private Step goOver(Numbered step, List<Touched> touched, Instant now) {
        database.update(TURN, step.number());
        goOverReadings(step.number());
        List<Edit> edits = touched.stream().map(one -> exchange(step, one, now)).toList();
        return new Step(step.name(), edits);
    }

    private Edit exchange(Numbered step, Touched touched, Instant now) {
        Optional<Entity<?>> before = content.find(touched.key());
        Image here = content.image(touched.key());
        content.restore(touched.key(), touched.other(), now);
        database.update(
                TURN_ROW, here.row().orElse(null), here.parts().orElse(null), step.number(), touched.position());
        return content.find(touched.key())
                .<Edit>map(Edit.Put::new)
                .orElseGet(() -> new Edit.Remove(before.orElseThrow()));
    }

    Steps stretch(int from, int howMany) {
        return new Steps(
                database.list(STRETCH, row -> new Steps.Listed(row.text(), row.instant(), row.flag()), howMany, from),
                (int) database.number("SELECT count(*) FROM step"),
                (int) database.number("SELECT count(*) FROM step WHERE taken_back"));
    }
}
