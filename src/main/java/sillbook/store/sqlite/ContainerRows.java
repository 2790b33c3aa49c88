// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Container;
import sillbook.model.Container.Shape;

/** The containers. */
final class ContainerRows implements Mapping<Container> {
    private static final Table TABLE = Table.of(
            "container",
            "id",
            "name",
            "shape",
            "across",
            "across_written",
            "height",
            "height_written",
            "stock",
            "unwashed",
            "note");

    @Override
    public Class<Container> type() {
        return Container.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Container container, Values row) {
        row.id(container.id())
                .text(container.name())
                .word(container.shape())
                .optionalLength(container.across())
                .optionalLength(container.height())
                .number(container.stock())
                .number(container.unwashed())
                .text(container.note());
    }

    @Override
    public Container read(Row row) throws SQLException {
        return new Container(
                row.id(),
                row.text(),
                row.word(Shape.class),
                row.optionalLength(),
                row.optionalLength(),
                row.number(),
                row.number(),
                row.text());
    }
}
