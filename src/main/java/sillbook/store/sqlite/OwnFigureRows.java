// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
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
                .optionalReal(figure.range().map(Range::low))
                .optionalReal(figure.range().map(Range::typical))
                .optionalReal(figure.range().map(Range::high))
                .text(figure.note());
    }

    private static Optional<Range> range(Optional<Double> low, Optional<Double> typical, Optional<Double> high) {
        return low.flatMap(least -> typical.flatMap(usual -> high.map(most -> new Range(least, usual, most))));
    }

    @Override
    public OwnFigure read(Row row) throws SQLException {
        return new OwnFigure(
                row.id(),
                new Scope(row.optionalId(), row.optionalKind()),
                row.text(),
                range(row.optionalReal(), row.optionalReal(), row.optionalReal()),
                row.text());
    }
}
