// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.SetAside;
import sillbook.model.Choice.Undecided;
import sillbook.model.Id;
import sillbook.model.Season;
import sillbook.model.Variety;

/** What is chosen for a season and what is not. */
final class ChoiceRows implements Mapping<Choice> {
    private static final Table TABLE = Table.of("choice", "id", "variety", "season", "mark", "bulbs", "reason");

    /** The marks as the file names them, each with the reading of its column. */
    private enum Sort {
        CHOSEN {
            @Override
            Mark read(Row row) throws SQLException {
                return new Chosen(row.at(TABLE, "bulbs").number());
            }
        },
        SET_ASIDE {
            @Override
            Mark read(Row row) throws SQLException {
                return new SetAside(row.at(TABLE, "reason").text());
            }
        },
        UNDECIDED {
            @Override
            Mark read(Row row) {
                return new Undecided();
            }
        };

        abstract Mark read(Row row) throws SQLException;
    }

    @Override
    public Class<Choice> type() {
        return Choice.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Choice choice, Values row) {
        row.id(choice.id()).id(choice.variety()).season(choice.season());
        choice.mark()
                .fold(
                        chosen -> row.word(Sort.CHOSEN).at("bulbs").number(chosen.bulbs()),
                        setAside -> row.word(Sort.SET_ASIDE).at("reason").text(setAside.reason()),
                        () -> row.word(Sort.UNDECIDED));
    }

    @Override
    public Choice read(Row row) throws SQLException {
        Id<Choice> id = row.id();
        Id<Variety> variety = row.id();
        Season season = row.season();
        return new Choice(id, variety, season, row.word(Sort.class).read(row));
    }
}
