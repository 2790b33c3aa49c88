// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.File;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import sillbook.store.StoreException;

/** One connection to a file. What goes wrong is told as a {@link StoreException}. */
final class Database implements AutoCloseable {
    private static final int WAIT_FOR_OTHERS_MILLIS = 5_000;
    private static final String SETTINGS = Sql.file("connection.sql");

    private final Path file;
    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    private Database(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    /** The file must be there. */
    static Database open(Path file, Access access) {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(WAIT_FOR_OTHERS_MILLIS);
        // Keys that were generated would be asked for by a statement that stays open, and nobody needs them.
        config.setGetGeneratedKeys(false);
        try {
            Database database = new Database(file, config.createConnection("jdbc:sqlite:" + address(file, access)));
            return database.setUp();
        } catch (SQLException e) {
            throw Failures.of(file, e);
        }
    }

    private Database setUp() {
        try {
            run(SETTINGS);
            return this;
        } catch (StoreException failure) {
            close();
            throw failure;
        }
    }

    /** The file as an address (RFC 8089), in which three signs mean something else than themselves. */
    private static String address(Path file, Access access) {
        String path = file.toAbsolutePath().toString();
        String plain =
                path.replace("%", "%25").replace("?", "%3f").replace("#", "%23").replace(File.separatorChar, '/');
        return "file:" + (plain.startsWith("/") ? plain : "/" + plain) + "?" + access.parameter();
    }

    Path file() {
        return file;
    }

    /** Runs statements that have no values. */
    void run(String script) {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        } catch (SQLException e) {
            throw Failures.of(file, e);
        }
    }

    /** Runs a statement, and gives the number of rows it changed. */
    int update(String sql, @Nullable Object... values) {
        try {
            return bound(sql, values).executeUpdate();
        } catch (SQLException e) {
            throw failed(sql, e);
        }
    }

    <T> List<T> list(String sql, Row.Reading<T> reading, @Nullable Object... values) {
        List<T> rows = new ArrayList<>();
        each(sql, result -> rows.add(reading.of(new Row(result))), values);
        return rows;
    }

    <T> Optional<T> first(String sql, Row.Reading<T> reading, @Nullable Object... values) {
        return list(sql, reading, values).stream().findFirst();
    }

    /** The first column of the only row. */
    long number(String sql, @Nullable Object... values) {
        return first(sql, Row::large, values).orElseThrow(() -> new IllegalStateException("no row: " + sql));
    }

    /** What is done with a result while it stands on a row. */
    @FunctionalInterface
    interface Taking {
        void take(ResultSet result) throws SQLException;
    }

    void each(String sql, Taking taking, @Nullable Object... values) {
        try (ResultSet result = bound(sql, values).executeQuery()) {
            while (result.next()) {
                taking.take(result);
            }
        } catch (SQLException e) {
            throw failed(sql, e);
        }
    }

    /** The driver ends some statements that fail, and leaves others half done; so none of them is used again. */
    private StoreException failed(String sql, SQLException failure) {
        PreparedStatement spoilt = prepared.remove(sql);
        try {
            if (spoilt != null) {
                spoilt.close();
            }
        } catch (SQLException alsoFailed) {
            failure.addSuppressed(alsoFailed);
        }
        return Failures.of(file, failure);
    }

    private PreparedStatement bound(String sql, @Nullable Object... values) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        for (int index = 0; index < values.length; index++) {
            statement.setObject(index + 1, values[index]);
        }
        return statement;
    }

    /** What is done with a batch while it is open. */
    @FunctionalInterface
    interface Filling {
        void fill(Batch batch) throws SQLException;
    }

    /** Puts many rows of whole numbers into a table, the first columns the same in all; the statement is given without its values. */
    void fill(String insert, long[] shared, int columns, Filling filling) {
        try (Batch batch = new Batch(connection, insert, shared, columns)) {
            filling.fill(batch);
            batch.flush();
        } catch (SQLException e) {
            throw Failures.of(file, e);
        }
    }

    /** Reads several things as they are at one moment. */
    <T> T atOneMoment(Supplier<T> reading) {
        return within("BEGIN", "COMMIT", reading);
    }

    /** Writes all or nothing. References between entries need only hold in the end. */
    <T> T transaction(Supplier<T> writing) {
        return writing("COMMIT", writing);
    }

    /** Writes, and takes all of it back. */
    <T> T rehearsal(Supplier<T> writing) {
        return writing("ROLLBACK", writing);
    }

    private <T> T writing(String end, Supplier<T> writing) {
        return within("BEGIN IMMEDIATE", end, () -> {
            run("PRAGMA defer_foreign_keys = ON");
            return writing.get();
        });
    }

    private <T> T within(String begin, String end, Supplier<T> work) {
        run(begin);
        try {
            T result = work.get();
            run(end);
            return result;
        } catch (RuntimeException | Error failure) {
            rollBack(failure);
            throw failure;
        }
    }

    /** The database may have rolled back by itself; what is told is why, not that there was nothing left to do. */
    private void rollBack(Throwable why) {
        try {
            run("ROLLBACK");
        } catch (StoreException nothingLeft) {
            why.addSuppressed(nothingLeft);
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw Failures.of(file, e);
        }
    }
}
