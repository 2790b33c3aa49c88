// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Pot.Way;
import sillbook.model.Potting;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;

/** The pots, with what is planted in them. */
final class PotRows implements Mapping<Pot> {
    private static final Table TABLE = Table.of(
            "pot",
            "id",
            "season",
            "label",
            "way",
            "container",
            "across",
            "across_written",
            "potting_mix",
            "usual_way",
            "holes",
            "depth",
            "topping",
            "batch",
            "parent",
            "note");
    private static final Parts<Pot, Planting> PARTS = new Parts<>(
            Table.of("planting", "pot", "position", "variety", "bulbs", "purchase"),
            Pot::plantings,
            (planting, row) ->
                    row.id(planting.variety()).number(planting.count()).optionalId(planting.purchase()),
            row -> new Planting(row.id(), row.number(), row.optionalId()));

    @Override
    public Class<Pot> type() {
        return Pot.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public Optional<Parts<Pot, ?>> parts() {
        return Optional.of(PARTS);
    }

    @Override
    public void write(Pot pot, Values row) {
        row.id(pot.id())
                .season(pot.season())
                .text(pot.label())
                .word(pot.way())
                .optionalId(pot.container())
                .optionalLength(pot.across())
                .optionalId(pot.pottingMix())
                .text(pot.potting().usualWay())
                .word(pot.potting().holes())
                .word(pot.potting().depth())
                .text(pot.potting().topping())
                .optionalId(pot.batch())
                .optionalId(pot.parent())
                .text(pot.note());
    }

    @Override
    public Pot read(Row row) throws SQLException {
        Id<Pot> id = row.id();
        return new Pot(
                id,
                row.season(),
                row.text(),
                row.parts(id),
                row.word(Way.class),
                row.optionalId(),
                row.optionalLength(),
                row.optionalId(),
                new Potting(row.text(), row.word(Holes.class), row.word(Depth.class), row.text()),
                row.optionalId(),
                row.optionalId(),
                row.text());
    }
}
