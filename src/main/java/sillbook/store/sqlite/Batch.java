// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Collections;

/** Rows of whole numbers on their way into a table, many with one statement. Whoever adds some flushes in the end. */
final class Batch implements AutoCloseable {
    private static final int ROWS = 200;

    private final Connection connection;
    private final String insert;
    private final int columns;
    private final long[] waiting;
    private int count;
    private final PreparedStatement full;

    /**
     * @param insert up to and without its {@code VALUES}
     * @param columns how many each row has
     */
    Batch(Connection connection, String insert, int columns) throws SQLException {
        this.connection = connection;
        this.insert = insert;
        this.columns = columns;
        this.waiting = new long[ROWS * columns];
        this.full = connection.prepareStatement(statement(ROWS));
    }

    private String statement(int rows) {
        String row = "(" + String.join(", ", Collections.nCopies(columns, "?")) + ")";
        return insert + " VALUES " + String.join(", ", Collections.nCopies(rows, row));
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
        for (int index = 0; index < count * columns; index++) {
            statement.setLong(index + 1, waiting[index]);
        }
        statement.executeUpdate();
        count = 0;
    }

    @Override
    public void close() throws SQLException {
        full.close();
    }
}
