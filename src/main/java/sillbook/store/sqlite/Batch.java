// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Rows of whole numbers on their way into a table, many with one statement. Whoever adds some flushes in the end. */
final class Batch implements AutoCloseable {
    private static final int ROWS = 200;

    private final Connection connection;
    private final String insert;
    private final long[] shared;
    private final int columns;
    private final long[] waiting;
    private final PreparedStatement full;
    private int count;

    /**
     * @param insert up to and without its {@code VALUES}
     * @param shared the values of its first columns, the same in each row
     * @param columns how many more each row has
     */
    Batch(Connection connection, String insert, long[] shared, int columns) throws SQLException {
        this.connection = connection;
        this.insert = insert;
        this.shared = shared.clone();
        this.columns = columns;
        this.waiting = new long[ROWS * columns];
        this.full = connection.prepareStatement(statement(ROWS));
    }

    private String statement(int rows) {
        return IntStream.range(0, rows).mapToObj(this::row).collect(Collectors.joining(", ", insert + " VALUES ", ""));
    }

    private String row(int row) {
        IntStream first = IntStream.range(0, shared.length);
        IntStream own = IntStream.range(0, columns).map(column -> shared.length + row * columns + column);
        return IntStream.concat(first, own)
                .mapToObj(index -> "?" + (index + 1))
                .collect(Collectors.joining(", ", "(", ")"));
    }

    void add(long... row) throws SQLException {
        System.arraycopy(row, 0, waiting, count * columns, columns);
        count++;
        if (count == ROWS) {
            write(full);
        }
    }

    void flush() throws SQLException {
        if (count > 0) {
            try (PreparedStatement rest = connection.prepareStatement(statement(count))) {
                write(rest);
            }
        }
    }

    private void write(PreparedStatement statement) throws SQLException {
        for (int index = 0; index < shared.length; index++) {
            statement.setLong(index + 1, shared[index]);
        }
        for (int index = 0; index < count * columns; index++) {
            statement.setLong(shared.length + index + 1, waiting[index]);
        }
        statement.executeUpdate();
        count = 0;
    }

    @Override
    public void close() throws SQLException {
        full.close();
    }
}
