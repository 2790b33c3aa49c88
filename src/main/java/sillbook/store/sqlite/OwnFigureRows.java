// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.OwnFigure;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;

/** The grower's own figures. */
final class OwnFigureRows implements Mapping<OwnFigure> {
    private static final Table TABLE =
            Table.of("own_figure", "id", "variety", "kind", "kind_group", "figure", "low", "typical", "high", "note");

    @Override
    public Class<OwnFigure> type() {
        return OwnFigure.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(OwnFigure figure, Values row) {
        row.id(figure.id())
                .optionalId(figure.scope().variety())
                .optionalKind(figure.scope().kind())
                .text(figure.figure())
                .real(figure.range().low())
                .real(figure.range().typical())
                .real(figure.range().high())
                .text(figure.note());
    }

    @Override
    public OwnFigure read(Row row) throws SQLException {
        return new OwnFigure(
                row.id(),
                new Scope(row.optionalId(), row.optionalKind()),
                row.text(),
                new Range(row.real(), row.real(), row.real()),
                row.text());
    }
}
