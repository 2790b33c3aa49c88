// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.model.Trench;
import sillbook.model.Trench.Air;
import sillbook.model.Trench.Cover;
import sillbook.model.Trench.Means;
import sillbook.model.Trench.Read;
import sillbook.model.Trench.Soil;

/** How pots stand buried, with the mean temperatures of the months. */
final class TrenchRows implements Mapping<Trench> {
    private static final Table TABLE = Table.of(
            "trench",
            "id",
            "place",
            "depth",
            "depth_written",
            "soil",
            "cover",
            "thickness",
            "thickness_written",
            "conductivity",
            "air",
            "spells");
    private static final Parts<Trench, Temperature> PARTS = new Parts<>(
            Table.of("trench_month", "trench", "position", "mean", "mean_written"),
            trench -> trench.air().fold(new Months()),
            (mean, row) -> row.temperature(mean),
            Row::temperature);

    @Override
    public Class<Trench> type() {
        return Trench.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public Optional<Parts<Trench, ?>> parts() {
        return Optional.of(PARTS);
    }

    @Override
    public void write(Trench trench, Values row) {
        row.id(trench.id())
                .id(trench.place())
                .optionalLength(Optional.of(trench.depth()))
                .word(trench.soil())
                .optionalWord(trench.cover().map(Cover::material))
                .optionalLength(trench.cover().map(Cover::thickness))
                .optionalReal(trench.cover().flatMap(Cover::conductivity))
                .optionalId(trench.outdoors())
                .optionalReal(trench.spells());
    }

    @Override
    public Trench read(Row row) throws SQLException {
        Id<Trench> id = row.id();
        return new Trench(
                id,
                row.id(),
                row.optionalLength().orElseThrow(),
                row.word(Soil.class),
                cover(row.optionalWord(Cover.Material.class), row.optionalLength(), row.optionalReal()),
                air(row.optionalId(), row.parts(id)),
                row.optionalReal());
    }

    private static Optional<Cover> cover(
            Optional<Cover.Material> material, Optional<Length> thickness, Optional<Double> conductivity) {
        return material.flatMap(of -> thickness.map(thick -> new Cover(of, thick, conductivity)));
    }

    private static Air air(Optional<Id<Place>> thermometer, List<Temperature> months) {
        return thermometer.<Air>map(Read::new).orElseGet(() -> new Means(months));
    }

    /** The months as they are written. */
    private static final class Months implements Air.Cases<List<Temperature>> {
        @Override
        public List<Temperature> means(Means air) {
            return air.months();
        }

        @Override
        public List<Temperature> read(Read air) {
            return List.of();
        }
    }
}
