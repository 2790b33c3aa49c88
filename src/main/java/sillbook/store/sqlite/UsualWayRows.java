// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;
import sillbook.model.UsualWay;

/** The usual ways of filling pots. */
final class UsualWayRows implements Mapping<UsualWay> {
    private static final Table TABLE = Table.of(
            "usual_way",
            "id",
            "name",
            "container",
            "across",
            "across_written",
            "potting_mix",
            "holes",
            "depth",
            "topping",
            "note");

    @Override
    public Class<UsualWay> type() {
        return UsualWay.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(UsualWay way, Values row) {
        row.id(way.id())
                .text(way.name())
                .optionalId(way.container())
                .optionalLength(way.across())
                .optionalId(way.pottingMix())
                .word(way.holes())
                .word(way.depth())
                .text(way.topping())
                .text(way.note());
    }

    @Override
    public UsualWay read(Row row) throws SQLException {
        return new UsualWay(
                row.id(),
                row.text(),
                row.optionalId(),
                row.optionalLength(),
                row.optionalId(),
                row.word(Holes.class),
                row.word(Depth.class),
                row.text(),
                row.text());
    }
}
