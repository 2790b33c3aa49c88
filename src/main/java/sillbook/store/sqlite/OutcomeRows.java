// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Impression;
import sillbook.model.Impression.Evenness;
import sillbook.model.Outcome;
import sillbook.model.Outcome.Again;
import sillbook.model.Variety.Scent;

/** How pots did. */
final class OutcomeRows implements Mapping<Outcome> {
    private static final Table TABLE = Table.of(
            "outcome",
            "id",
            "pot",
            "variety",
            "day",
            "day_earliest",
            "day_latest",
            "score",
            "flowers",
            "height",
            "height_written",
            "first_good",
            "last_good",
            "signs",
            "roots",
            "cut_bud",
            "cause",
            "evenness",
            "scent",
            "again",
            "how",
            "note");

    @Override
    public Class<Outcome> type() {
        return Outcome.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Outcome outcome, Values row) {
        row.id(outcome.id())
                .id(outcome.pot())
                .optionalId(outcome.variety())
                .day(outcome.day())
                .optionalNumber(outcome.score())
                .optionalNumber(outcome.flowers())
                .optionalLength(outcome.height())
                .optionalDate(outcome.firstGood())
                .optionalDate(outcome.lastGood())
                .words(outcome.failure().signs())
                .optionalWord(outcome.failure().roots())
                .text(outcome.failure().cutBud())
                .optionalWord(outcome.failure().cause())
                .word(outcome.impression().evenness())
                .word(outcome.impression().scent())
                .word(outcome.impression().again())
                .text(outcome.impression().how())
                .text(outcome.note());
    }

    @Override
    public Outcome read(Row row) throws SQLException {
        return new Outcome(
                row.id(),
                row.id(),
                row.optionalId(),
                row.day(),
                row.optionalNumber(),
                row.optionalNumber(),
                row.optionalLength(),
                row.optionalDate(),
                row.optionalDate(),
                new Failure(
                        row.words(Failure.Sign.class),
                        row.optionalWord(Failure.Roots.class),
                        row.text(),
                        row.optionalWord(Cause.class)),
                new Impression(row.word(Evenness.class), row.word(Scent.class), row.word(Again.class), row.text()),
                row.text());
    }
}
