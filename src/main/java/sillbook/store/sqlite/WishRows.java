// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.FlowerStage;
import sillbook.model.WishedFor.Manner;

/** The wishes, with the pots meant to meet them. */
final class WishRows implements Mapping<Wish> {
    private static final Table TABLE = Table.of(
            "wish",
            "id",
            "season",
            "wished",
            "wished_to",
            "feast",
            "manner",
            "pots",
            "stage",
            "kind",
            "kind_group",
            "colour",
            "scented",
            "tallest",
            "tallest_written",
            "room",
            "note");
    private static final Parts<Wish, Id<Pot>> PARTS = new Parts<>(
            Table.of("wish_pot", "wish", "position", "pot"),
            wish -> List.copyOf(wish.pots()),
            (pot, row) -> row.id(pot),
            Row::id);

    @Override
    public Class<Wish> type() {
        return Wish.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public Optional<Parts<Wish, ?>> parts() {
        return Optional.of(PARTS);
    }

    @Override
    public void write(Wish wish, Values row) {
        row.id(wish.id())
                .season(wish.season())
                .date(wish.from())
                .date(wish.to())
                .text(wish.feast())
                .word(wish.asks().manner())
                .number(wish.asks().pots())
                .optionalWord(wish.asks().stage())
                .optionalKind(wish.kind())
                .text(wish.asks().colour())
                .flag(wish.asks().scented())
                .optionalLength(wish.asks().tallest())
                .optionalId(wish.asks().room())
                .text(wish.note());
    }

    @Override
    public Wish read(Row row) throws SQLException {
        Id<Wish> id = row.id();
        return new Wish(
                id,
                row.season(),
                row.date(),
                row.date(),
                row.text(),
                asks(row),
                Set.copyOf(row.<Id<Pot>>parts(id)),
                row.text());
    }

    private static WishedFor asks(Row row) throws SQLException {
        return new WishedFor(
                row.word(Manner.class),
                row.number(),
                row.optionalWord(FlowerStage.class),
                row.optionalKind(),
                row.text(),
                row.flag(),
                row.optionalLength(),
                row.optionalId());
    }
}
