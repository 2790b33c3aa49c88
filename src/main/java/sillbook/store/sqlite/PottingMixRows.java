// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.PottingMix;
import sillbook.model.PottingMix.Part;

/** The potting mixes, with their parts. */
final class PottingMixRows implements Mapping<PottingMix> {
    private static final Table TABLE = Table.of("potting_mix", "id", "name", "note");
    private static final Parts<PottingMix, Part> PARTS = new Parts<>(
            Table.of("potting_mix_part", "potting_mix", "position", "parts", "material"),
            PottingMix::parts,
            (part, row) -> row.real(part.parts()).text(part.material()),
            row -> new Part(row.real(), row.text()));

    @Override
    public Class<PottingMix> type() {
        return PottingMix.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public Optional<Parts<PottingMix, ?>> parts() {
        return Optional.of(PARTS);
    }

    @Override
    public void write(PottingMix mix, Values row) {
        row.id(mix.id()).text(mix.name()).text(mix.note());
    }

    @Override
    public PottingMix read(Row row) throws SQLException {
        Id<PottingMix> id = row.id();
        return new PottingMix(id, row.text(), row.parts(id), row.text());
    }
}
