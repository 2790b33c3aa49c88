// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Variety;
import sillbook.model.Variety.BloomSeason;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;

/** The varieties. */
final class VarietyRows implements Mapping<Variety> {
    private static final Table TABLE = Table.of(
            "variety",
            "id",
            "name",
            "packet_name",
            "kind",
            "kind_group",
            "height",
            "height_written",
            "bloom_season",
            "colour",
            "scent",
            "packet_forcing",
            "for_pots",
            "note");

    @Override
    public Class<Variety> type() {
        return Variety.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Variety variety, Values row) {
        row.id(variety.id())
                .text(variety.name())
                .text(variety.packetName())
                .kind(variety.kind())
                .optionalLength(variety.height())
                .word(variety.bloomSeason())
                .text(variety.colour())
                .word(variety.scent())
                .word(variety.packetForcing())
                .word(variety.forPots())
                .text(variety.note());
    }

    @Override
    public Variety read(Row row) throws SQLException {
        return new Variety(
                row.id(),
                row.text(),
                row.text(),
                row.kind(),
                row.optionalLength(),
                row.word(BloomSeason.class),
                row.text(),
                row.word(Scent.class),
                row.word(PacketForcing.class),
                row.word(ForPots.class),
                row.text());
    }
}
